package org.wellcurb.intake;

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

  JoinedRows(JoinTable table, CellsReader cells, Catalogue catalogue) {
    this.table = table;
    this.cells = cells;
    this.view = new RowView(table.plan().columns);
    this.scratch = new RecordFiller(catalogue);
    this.uncounted = new ChunkTally(table.plan().columns);
  }

  /**
   * Adds the rows of an id.
   *
   * @param except the line of a row that is the record itself; 0 for none
   * @return how many were added
   */
  int add(String id, long except, RecordFiller into, RowListsReader lists, UnitSystem system) {
    int added = 0;
    ColumnPlan plan = table.plan();
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
      for (Target target : plan.targets) {
        Merging.take(target, into, scratch.record());
      }
      lists.read(plan, view, into, system);
      table.take(row);
      added++;
    }
    return added;
  }

  /** True if a row of this line is the first of its id. */
  boolean isFirst(String id, long line) {
    int[] rows = table.rows(id);
    return rows.length == 0 || table.line(rows[0]) == line;
  }
}
