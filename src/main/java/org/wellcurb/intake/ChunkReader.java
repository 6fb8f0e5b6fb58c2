package org.wellcurb.intake;

import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellStyle;

/** Reads chunks of any input. One per worker: it fills the same record again and again. */
public final class ChunkReader {
  private final RowsReader rows;
  private final ObjectsReader objects;
  private final JoinRowsReader joined;

  public ChunkReader(Catalogue catalogue) {
    this(catalogue, CellStyle.PLAIN);
  }

  /**
   * @param objectStyle how the values of objects are written, where whoever wrote them shows more
   *     than the text itself tells
   */
  public ChunkReader(Catalogue catalogue, CellStyle objectStyle) {
    rows = new RowsReader(catalogue);
    objects = new ObjectsReader(catalogue, objectStyle);
    joined = new JoinRowsReader(catalogue);
  }

  /**
   * Reads a chunk to its end.
   *
   * @param sink gets its records and the rows set aside, in order
   * @return what was met
   */
  public ChunkTally read(Chunk chunk, RecordSink sink) {
    if (chunk instanceof JsonChunk json) {
      return objects.read(json, sink);
    }
    if (chunk instanceof JoinChunk join) {
      return joined.read(join, sink);
    }
    RowsChunk table = (RowsChunk) chunk;
    try {
      return rows.read(table, sink);
    } finally {
      table.source().progress().read();
    }
  }
}
