package org.wellcurb.intake;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.Entry;
import org.wellcurb.record.RecordFiller;

/** Counts the rows of a joined table, and sets aside those that belong to no record. */
final class JoinRowsReader {
  private final RecordFiller filler;
  private final CellsReader cells;
  private final RowListsReader lists;
  private final int units;
  private final int metric;

  JoinRowsReader(Catalogue catalogue) {
    filler = new RecordFiller(catalogue);
    CellReader reader = new CellReader(catalogue);
    cells = new CellsReader(reader);
    lists = new RowListsReader(catalogue, reader);
    Entry of = catalogue.entry(catalogue.index("record.units"));
    units = of.index();
    metric = of.choice("metric");
  }

  ChunkTally read(JoinChunk chunk, RecordSink sink) {
    try {
      chunk.source().progress().await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
    JoinTable table = chunk.source().table();
    ColumnPlan plan = table.plan();
    RowView view = new RowView(plan.columns);
    ChunkTally tally = new ChunkTally(plan.columns);
    table.countLost(tally);
    for (int row = 0; row < table.rows(); row++) {
      @Nullable Fault fault = table.fault(row);
      if (fault == null) {
        table.show(row, view);
        if (plan.isBeyond(view.cells())) {
          tally.endedBeyond();
        }
        if (!plan.takes(view) || (table.isLeftOut(row) && !table.isTaken(row))) {
          tally.leftOut();
          continue;
        }
        fault =
            table.isShared(view)
                ? Fault.row(RowFault.severalRecords(table.id(view)))
                : table.isTaken(row) ? null : Fault.row(RowFault.NO_RECORD);
      }
      if (fault == null) {
        count(table, row, plan, view, tally);
        tally.joined();
      } else {
        tally.asideRow();
        sink.setAside(
            new SetAside(
                table.file(), table.line(row), fault.column(), fault.reason(), table.raw(row)));
      }
    }
    for (int column = 0; column < plan.columns; column++) {
      tally.rowsDiffer(column, table.differing(column));
    }
    return tally;
  }

  private void count(JoinTable table, int row, ColumnPlan plan, RowView view, ChunkTally tally) {
    UnitSystem system = table.system(row);
    boolean saysUnits = table.saysUnits(row);
    filler.clear("", 0);
    if (saysUnits) {
      filler.choice(units, system == UnitSystem.METRIC ? metric : 1 - metric);
    }
    cells.rest(plan, view, filler, system, tally);
    Kept.count(plan, view, tally);
    lists.clear();
    lists.read(plan, view, filler, system, tally);
  }
}
