package org.wellcurb.intake;

/** Whole rows, cut but not yet read. */
final class CutRows {
  final long number;
  final byte[] bytes;
  final RowMarks marks;
  private final long firstLine;

  /**
   * @param number place of the chunk in its input, from 0
   * @param firstLine the line of the input (or the place in its array) that line 0 of the marks is
   */
  CutRows(long number, byte[] bytes, long firstLine, RowMarks marks) {
    this.number = number;
    this.bytes = bytes;
    this.firstLine = firstLine;
    this.marks = marks;
  }

  /** The line on which row {@code i} starts, or its place in the array. */
  long line(int i) {
    return firstLine + marks.line(i);
  }
}
