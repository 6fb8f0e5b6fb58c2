package org.wellcurb.batch;

import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.Chunk;
import org.wellcurb.intake.RecordSource;

/**
 * A part of a batch: a chunk of an input, or the mark that an input has ended.
 *
 * @param number its place in the batch, from 0
 * @param input place of its input
 * @param source its input, opened
 * @param chunk what is to be screened; null at the end of an input
 */
record Part(long number, int input, RecordSource source, @Nullable Chunk chunk) {
  boolean isEnd() {
    return chunk == null;
  }
}
