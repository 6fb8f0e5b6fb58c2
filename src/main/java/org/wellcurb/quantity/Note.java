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
  FLOWING;

  private static final Note[] ALL = values();

  /** The note with this ordinal, without copying the array of values. */
  public static Note at(int ordinal) {
    return ALL[ordinal];
  }
}
