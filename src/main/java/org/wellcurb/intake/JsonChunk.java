package org.wellcurb.intake;

/**
 * Objects of a JSON input.
 *
 * @param source the input
 * @param rows its objects, cut but not yet read
 */
record JsonChunk(JsonSource source, CutRows rows) implements Chunk {
  @Override
  public long number() {
    return rows.number;
  }

  @Override
  public int size() {
    return rows.bytes.length;
  }
}
