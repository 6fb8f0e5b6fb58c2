package org.wellcurb.intake;

/**
 * Rows of a table.
 *
 * @param source the table
 * @param rows its rows, cut but not yet read
 */
record RowsChunk(TableSource source, CutRows rows) implements Chunk {
  @Override
  public long number() {
    return rows.number;
  }

  @Override
  public int size() {
    return rows.bytes.length;
  }
}
