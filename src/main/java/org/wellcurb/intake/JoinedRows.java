package org.wellcurb.intake;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordFiller;

/** Adds the rows of other tables to a record. One per worker and table. */
final class JoinedRows {
  private final JoinTable table;
  private final CellsReader cells;
  private final RowView view;
  private final RecordFiller scratch;
  private final ChunkTally uncounted;

  /** By target: its column, and whether a row of the id at hand says something else. */
  private final int[] columns;

  private final boolean[] differs;

  JoinedRows(JoinTable table, CellsReader cells, Catalogue catalogue) {
    this.table = table;
    this.cells = cells;
    this.view = new RowView(table.plan().columns);
    this.scratch = new RecordFiller(catalogue);
    this.uncounted = new ChunkTally(table.plan().columns);
    ColumnPlan plan = table.plan();
    this.columns = plan.targets.stream().mapToInt(t -> plan.column(t.entry().index())).toArray();
    this.differs = new boolean[columns.length];
  }

  /**
   * Adds the rows of an id.
   *
   * @param except the line of a row that is the record itself; 0 for none
   * @param tally where the columns of these rows are counted; null where they are not
   * @return how many were added
   */
  int add(
      String id,
      long except,
      RecordFiller into,
      RowListsReader lists,
      UnitSystem system,
      @Nullable ChunkTally tally) {
    int added = 0;
    ColumnPlan plan = table.plan();
    Arrays.fill(differs, false);
    for (int row : table.rows(id)) {
      if (table.line(row) == except) {
        continue;
      }
      table.show(row, view);
      if (!plan.takes(view)) {
        continue;
      }
      scratch.clear("", 0);
      cells.rest(plan, view, scratch, system, uncounted);
      for (int i = 0; i < columns.length; i++) {
        differs[i] |= Merging.take(plan.targets.get(i), into, scratch.record());
      }
      lists.read(plan, view, into, system);
      table.take(row);
      added++;
    }
    for (int i = 0; tally != null && i < columns.length; i++) {
      if (differs[i] && columns[i] >= 0) {
        tally.rowsDiffer(columns[i]);
      }
    }
    return added;
  }

  /** True if a row of this line is the first of its id. */
  boolean isFirst(String id, long line) {
    int[] rows = table.rows(id);
    return rows.length == 0 || table.line(rows[0]) == line;
  }
}
