package org.wellcurb.intake;

/** How the cells of several columns make one text, which is then read as any cell. */
public enum Combine {
  /** There is only one column. */
  ONE("one"),
  /** Feet, then inches: {@code 5} and {@code 6} are {@code 5 ft 6 in}. */
  FEET_AND_INCHES("feet and inches"),
  /** Degrees, minutes, perhaps seconds, perhaps the letter of the quarter. */
  DEGREES("degrees"),
  /** Year, month, day: what is blank at the end leaves a month or a year. */
  DATE("year, month, day"),
  /** Least and greatest: {@code 10 to 15}. */
  RANGE("range"),
  /** A number and its unit. */
  NUMBER_AND_UNIT("number and unit"),
  /** Texts one after another. */
  TEXT("text"),
  /** The first that is not blank. */
  FIRST("first");

  private final String label;

  Combine(String label) {
    this.label = label;
  }

  /** How a header map writes it. */
  public String label() {
    return label;
  }
}
