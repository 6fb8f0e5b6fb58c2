package org.wellcurb.intake;

import org.wellcurb.record.Catalogue;

/** Reads chunks of any input. One per worker: it fills the same record again and again. */
public final class ChunkReader {
  private final RowsReader rows;

  public ChunkReader(Catalogue catalogue) {
    rows = new RowsReader(catalogue);
  }

  /**
   * Reads a chunk to its end.
   *
   * @param sink gets its records and the rows set aside, in order
   * @return what was met
   */
  public ChunkTally read(Chunk chunk, RecordSink sink) {
    return rows.read((RowsChunk) chunk, sink);
  }
}
