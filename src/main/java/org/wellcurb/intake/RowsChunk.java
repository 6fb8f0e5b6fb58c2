package org.wellcurb.intake;

/** Whole rows of a table, cut but not yet read. */
final class RowsChunk implements Chunk {
  private final TableSource source;
  private final long number;
  final byte[] bytes;
  final long firstLine;
  final RowMarks rows;

  /**
   * @param firstLine the physical line of the file that line 0 of the marks is
   */
  RowsChunk(TableSource source, long number, byte[] bytes, long firstLine, RowMarks rows) {
    this.source = source;
    this.number = number;
    this.bytes = bytes;
    this.firstLine = firstLine;
    this.rows = rows;
  }

  @Override
  public TableSource source() {
    return source;
  }

  @Override
  public long number() {
    return number;
  }

  @Override
  public int size() {
    return bytes.length;
  }

  /** The physical line on which row {@code i} starts. */
  long line(int i) {
    return firstLine + rows.line(i);
  }
}
