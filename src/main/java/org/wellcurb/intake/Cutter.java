package org.wellcurb.intake;

/**
 * Finds where one row after another ends. Only one thread uses it, from the first row to the last.
 */
interface Cutter {
  /** The row may go on past what was given. */
  int MORE = -1;

  /**
   * Looks at the row that begins at {@code start}.
   *
   * @param limit past the last byte that is there
   * @param atEnd true if nothing comes after {@code limit}
   * @return a status of {@link RowMarks}, or {@link #MORE}, and then nothing else is known
   */
  int scan(byte[] bytes, int start, int limit, boolean atEnd);

  /** Its first byte. */
  int from();

  /** Past its last byte, the line end not counted; {@link #from} where there is no row. */
  int to();

  /** Where the next row begins; {@link #MORE} where that is after a line end not yet seen. */
  int next();

  /** How far the count of rows (or physical lines) has gone on. */
  int lines();

  /** The bytes have moved towards the front by {@code by}. */
  void shift(int by);

  /** What comes next is not what was looked at before. */
  void forget();

  /** Why it is wrong that nothing more comes; empty if it is not. */
  default String missing() {
    return "";
  }
}
