package org.wellcurb.quantity;

/** Whether a bare number in a column of dates is a spreadsheet's count of days. */
public enum DayNumbers {
  /** It is not: a number of four digits is a year, of eight a date. */
  NONE,
  /** Day 1 is 1900-01-01; there is a day 60 that never was (1900-02-29), which is not read. */
  FROM_1900,
  /** Day 0 is 1904-01-01. */
  FROM_1904;

  /** The least number that is taken for a day: 1927. Less may be a year, or a figure. */
  static final int FIRST = 10_000;

  /** The greatest: 2119. */
  static final int LAST = 80_000;

  /** True of a number that may be a spreadsheet's for a day. */
  public static boolean mayBe(double number) {
    return number >= FIRST && number <= LAST && number == Math.rint(number);
  }
}
