package org.wellcurb.intake;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A table whose header is known, cut into chunks of rows. */
public final class TableSource implements RecordSource {
  private final String file;
  private final ColumnPlan plan;
  private final Rows rows;
  private final @Nullable JoinTable ownRows;
  private final List<Joined> joins;
  private final Progress progress;

  /** Gives its rows, cut. */
  interface Rows extends Closeable {
    @Nullable CutRows next() throws IOException;
  }

  /**
   * A table that belongs to it.
   *
   * @param table the other table
   * @param matches the column here that holds its ids; -1 for that of {@code record.id}
   */
  record Joined(JoinTable table, int matches) {
    /**
     * What the ids of the joined table are laid beside.
     *
     * @param id the id of a row here
     * @param view the row; empty where the table has no column for it
     */
    String key(String id, RowView view) {
      return switch (matches) {
        case Joins.BY_ID -> id;
        case Joins.LACKING -> "";
        default -> view.trimmed(matches);
      };
    }
  }

  TableSource(String file, ColumnPlan plan, Rows rows) {
    this(file, plan, rows, null, List.of(), new Progress());
  }

  /**
   * @param ownRows its rows by id, where those of one id make one record; null where each is one
   * @param progress is told of each chunk
   */
  TableSource(
      String file,
      ColumnPlan plan,
      Rows rows,
      @Nullable JoinTable ownRows,
      List<Joined> joins,
      Progress progress) {
    this.file = file;
    this.plan = plan;
    this.rows = rows;
    this.ownRows = ownRows;
    this.joins = List.copyOf(joins);
    this.progress = progress;
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

  @Nullable JoinTable ownRows() {
    return ownRows;
  }

  List<Joined> joins() {
    return joins;
  }

  /** Is told when a chunk has been read. */
  Progress progress() {
    return progress;
  }

  @Override
  public @Nullable Chunk next() throws IOException {
    CutRows cut = rows.next();
    if (cut == null) {
      return null;
    }
    progress.given();
    return new RowsChunk(this, cut);
  }

  @Override
  public @Nullable SetAside unusable() {
    return null;
  }

  @Override
  public RawFrame rawFrame() {
    return rawFrame(file, plan);
  }

  static RawFrame rawFrame(String file, ColumnPlan plan) {
    return new RawFrame(RawFrame.nameOf(file, ".csv"), plan.layout.frame(), "\n", "\n");
  }

  @Override
  public void close() throws IOException {
    rows.close();
  }
}
