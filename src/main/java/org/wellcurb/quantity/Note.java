package org.wellcurb.quantity;

/** What is to be said about how a cell was read. The words are the report's. */
public enum Note {
  NONE,
  /** {@code ~40}, {@code est. 40}: taken as 40. */
  APPROXIMATE,
  /** The unit is of another dimension than the entry. */
  WRONG_DIMENSION,
  /** A unit that is not known. */
  UNKNOWN_UNIT,
  /** Not a number, or not one that can be read. */
  NOT_A_NUMBER,
  /** Not one of the choices of the entry. */
  NOT_A_CHOICE,
  /** Not a date. */
  NOT_A_DATE,
  /** A date whose order of day and month is not declared. */
  AMBIGUOUS_DATE,
  /** A comma that may be a decimal point or a separator of thousands. */
  AMBIGUOUS_COMMA,
  /** The value is given twice, in two units, and they differ. */
  UNITS_DISAGREE,
  /** Outside what the kind can be, such as a negative flow. */
  IMPOSSIBLE,
  /** A value that the header map names as one that means unknown. */
  SENTINEL,
  /** {@code flowing} written as a level. */
  FLOWING,
  /** Words in brackets stand after the value, {@code 52.0 (landowner)}: the value was taken. */
  COMMENT,
  /** The meter showed more than it can measure: {@code OL}. */
  OVER_RANGE,
  /** The laboratory found none and names no limit: {@code ND}. */
  NOT_DETECTED,
  /** {@code dry} in place of a level or a yield. */
  DRY,
  /** {@code 12/2}: taken as the gauge and the number of conductors of a cable. */
  CABLE,
  /** A range whose first end is the larger. */
  REVERSED,
  /** A count that is not a whole number. */
  NOT_WHOLE,
  /** Several values in one cell, {@code 120 and 140}: taken as the range that holds them. */
  SEVERAL,
  /** A plus sign before a water level, which may mean above or below the datum. */
  AMBIGUOUS_SIGN,
  /** A blank between digits that may separate thousands or two values. */
  AMBIGUOUS_BLANK,
  /** Not a list that can be written in one cell. */
  NOT_A_LIST,
  /** The date is given twice, and they differ. */
  DATES_DISAGREE,
  /** A bare 0 where a real well hardly has one: most stand for a blank. */
  DOUBTED_ZERO,
  /** A layer that ends where it begins. */
  NO_THICKNESS,
  /** One number where both ends of a layer should stand. */
  ONE_END,
  /** {@code yes} in place of an amount: a box that was ticked. */
  BOX,
  /** A date with a year of two digits, of which nothing says the hundred. */
  SHORT_YEAR,
  /** Minutes of 60 or more, inches of 12 or more behind a larger unit. */
  PART_TOO_LARGE,
  /** A cell that does not hold as many parts as the header map takes from it. */
  PARTS_MISSING,
  /** A cell that states its unit in a column that the header map scales. */
  SCALE_AND_UNIT,
  /** A formula of a workbook that stores no result of it. */
  NO_RESULT;

  private static final Note[] ALL = values();

  /** True of a text that may be read in two ways: it is taken for unknown, and never guessed. */
  public boolean isUnsure() {
    return switch (this) {
      case AMBIGUOUS_DATE, SHORT_YEAR, AMBIGUOUS_COMMA, AMBIGUOUS_BLANK, AMBIGUOUS_SIGN -> true;
      default -> false;
    };
  }

  /** The note with this ordinal, without copying the array of values. */
  public static Note at(int ordinal) {
    return ALL[ordinal];
  }
}
