package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Extra;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

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
  private final List<Extra> differing = new ArrayList<>();
  private String id = "";
  private long except;

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
   * @param tally where the columns of these rows are counted; null to count them with their table
   */
  void add(
      String id,
      long except,
      RecordFiller into,
      RowListsReader lists,
      UnitSystem system,
      @Nullable ChunkTally tally) {
    this.id = id;
    this.except = except;
    differing.clear();
    Arrays.fill(differs, false);
    if (table.isShared(id)) {
      this.id = "";
      return;
    }
    ColumnPlan plan = table.plan();
    boolean saysUnits = CellsReader.saysUnits(into.record());
    for (int row : table.rows(id)) {
      if (!shows(row)) {
        continue;
      }
      scratch.clear("", 0);
      cells.rest(plan, view, scratch, system, uncounted);
      for (int i = 0; i < columns.length; i++) {
        Target target = plan.targets.get(i);
        if (Merging.take(target, into, scratch.record())) {
          differs[i] = true;
          differing.add(said(row, columns[i], target, scratch.record()));
        }
      }
      lists.read(plan, view, into, system, null);
      table.take(row, system, saysUnits);
    }
    for (int i = 0; i < columns.length; i++) {
      if (differs[i] && columns[i] >= 0) {
        if (tally == null) {
          table.differs(columns[i]);
        } else {
          tally.rowsDiffer(columns[i]);
        }
      }
    }
  }

  /** Moves the view to a row of the id at hand; false if it is not wanted. */
  private boolean shows(int row) {
    if (table.line(row) == except) {
      return false;
    }
    table.show(row, view);
    return table.plan().takes(view);
  }

  private Extra said(int row, int column, Target target, WellRecord record) {
    int entry = target.entry().index();
    String name = column < 0 ? target.entry().key() : table.plan().name(column);
    return new Extra(name + where(row), record.written(entry));
  }

  private String where(int row) {
    return " (" + table.file() + " " + table.line(row) + ")";
  }

  /**
   * What the rows added last hold that is no part of the record: what the first row says otherwise,
   * and the cells of columns that nothing takes.
   */
  List<Extra> extras() {
    List<Extra> all = new ArrayList<>(differing);
    ColumnPlan plan = table.plan();
    for (int row : plan.unknown.length == 0 ? new int[0] : table.rows(id)) {
      if (shows(row)) {
        all.addAll(Kept.of(plan, view, where(row)));
      }
    }
    return all;
  }

  /** True if a row of this line is the first of its id. */
  boolean isFirst(String id, long line) {
    int[] rows = table.rows(id);
    return rows.length == 0 || table.line(rows[0]) == line;
  }
}
