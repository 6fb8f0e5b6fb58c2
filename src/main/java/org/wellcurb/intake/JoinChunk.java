package org.wellcurb.intake;

/**
 * The rows of a table that was joined to others.
 *
 * @param source the table
 */
record JoinChunk(JoinSource source) implements Chunk {
  @Override
  public long number() {
    return 0;
  }

  @Override
  public int size() {
    return 0;
  }
}
