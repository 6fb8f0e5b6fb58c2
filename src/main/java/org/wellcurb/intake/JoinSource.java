package org.wellcurb.intake;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/**
 * What is to be said of a table that was joined to others, after those have been read: rows that
 * belong to no record are set aside.
 */
public final class JoinSource implements RecordSource {
  private final JoinTable table;
  private final Join join;
  private final Progress progress;
  private boolean given;

  JoinSource(JoinTable table, Join join, Progress progress) {
    this.table = table;
    this.join = join;
    this.progress = progress;
  }

  @Override
  public String file() {
    return table.file();
  }

  /** How it is laid out. */
  public TableLayout layout() {
    return table.plan().layout;
  }

  JoinTable table() {
    return table;
  }

  /** What must be read before it is known which rows belong to a record. */
  Progress progress() {
    return progress;
  }

  @Override
  public @Nullable Chunk next() throws IOException {
    if (given || table.rows() == 0) {
      return null;
    }
    given = true;
    return new JoinChunk(this);
  }

  @Override
  public @Nullable SetAside unusable() {
    return null;
  }

  @Override
  public RawFrame rawFrame() {
    // Under the name that the map has for it, so that the map finds it when it is read again.
    return TableSource.rawFrame(join.setAsideName(), table.plan());
  }

  @Override
  public void close() {}
}
