package org.wellcurb.intake;

import java.io.IOException;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;

/** A table whose header is known, cut into chunks of rows. */
public final class TableSource implements RecordSource {
  private final String file;
  private final ColumnPlan plan;
  private final InputStream rows;
  private final RowSplitter splitter;

  TableSource(String file, ColumnPlan plan, InputStream rows, long firstLine, int chunkSize) {
    this.file = file;
    this.plan = plan;
    this.rows = rows;
    this.splitter = new RowSplitter(rows, new RowScanner(plan.delimiter), firstLine, chunkSize);
  }

  @Override
  public String file() {
    return file;
  }

  /** How it is laid out. */
  public TableLayout layout() {
    return plan.layout;
  }

  /** What is done with each cell. */
  ColumnPlan plan() {
    return plan;
  }

  @Override
  public @Nullable Chunk next() throws IOException {
    CutRows cut = splitter.next();
    return cut == null ? null : new RowsChunk(this, cut);
  }

  @Override
  public @Nullable SetAside unusable() {
    return null;
  }

  @Override
  public RawFrame rawFrame() {
    return new RawFrame(RawFrame.nameOf(file, ".csv"), plan.layout.header() + "\n", "\n", "\n");
  }

  @Override
  public void close() throws IOException {
    rows.close();
  }
}
