package org.wellcurb.intake;

import java.io.Closeable;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/**
 * An opened input, cut into chunks by one thread; chunks may be read by any number of {@link
 * ChunkReader}s.
 */
public sealed interface RecordSource extends Closeable
    permits TableSource, JsonSource, JoinSource, UnusableSource {
  /** The input, as outputs name it. */
  String file();

  /** The next chunk; null at the end. Rows that a source finds unusable itself come in a chunk. */
  @Nullable Chunk next() throws IOException;

  /** Why the file as a whole cannot be read; null if it can. It then has no chunks. */
  @Nullable SetAside unusable();

  /** How rows that are set aside are written so that the file made of them can be read again. */
  RawFrame rawFrame();
}
