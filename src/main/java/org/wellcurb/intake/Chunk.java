package org.wellcurb.intake;

/**
 * Whole rows of one input: any worker may read it, in any order. Order is kept by {@link #number}.
 */
public sealed interface Chunk permits RowsChunk, JsonChunk, JoinChunk {
  /** The input that it came from. */
  RecordSource source();

  /** Its place among the chunks of its input, from 0. */
  long number();

  /** Bytes that it holds on to, for whoever bounds how many chunks are about. */
  int size();
}
