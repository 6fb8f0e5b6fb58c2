package org.wellcurb.quantity;

/** The proleptic ISO calendar as counts of days since 1970-01-01, without zones. */
final class CalendarDays {
  /** Years outside these are slips of the pen, not dates of wells. */
  static final int FIRST_YEAR = 1800;

  static final int LAST_YEAR = 2200;

  private CalendarDays() {}

  static boolean isYear(int year) {
    return year >= FIRST_YEAR && year <= LAST_YEAR;
  }

  static boolean isDate(int year, int month, int day) {
    return month >= 1 && month <= 12 && day >= 1 && day <= length(year, month);
  }

  static int length(int year, int month) {
    return switch (month) {
      case 2 -> year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) ? 29 : 28;
      case 4, 6, 9, 11 -> 30;
      default -> 31;
    };
  }

  /** Days since 1970-01-01: whole 400-year cycles, then years that start in March. */
  static long day(int year, int month, int day) {
    long y = month <= 2 ? year - 1L : year;
    long cycle = Math.floorDiv(y, 400);
    long yearOfCycle = y - cycle * 400;
    long dayOfYear = (153L * (month > 2 ? month - 3 : month + 9) + 2) / 5 + day - 1;
    long dayOfCycle = yearOfCycle * 365 + yearOfCycle / 4 - yearOfCycle / 100 + dayOfYear;
    return cycle * 146_097 + dayOfCycle - 719_468;
  }
}
