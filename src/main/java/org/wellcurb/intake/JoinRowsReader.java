package org.wellcurb.intake;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.RecordFiller;

/** Counts the rows of a joined table, and sets aside those that belong to no record. */
final class JoinRowsReader {
  private final RecordFiller filler;
  private final CellsReader cells;

  JoinRowsReader(Catalogue catalogue) {
    filler = new RecordFiller(catalogue);
    cells = new CellsReader(new CellReader(catalogue));
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
    for (int row = 0; row < table.rows(); row++) {
      @Nullable Fault fault = table.fault(row);
      if (fault == null) {
        table.show(row, view);
        if (!plan.takes(view)) {
          tally.leftOut();
          continue;
        }
        filler.clear("", 0);
        cells.rest(plan, view, filler, UnitSystem.US, tally);
        fault = table.isTaken(row) ? null : Fault.row(RowFault.NO_RECORD);
      }
      if (fault == null) {
        tally.joined();
      } else {
        tally.asideRow();
        sink.setAside(
            new SetAside(
                table.file(), table.line(row), fault.column(), fault.reason(), table.raw(row)));
      }
    }
    return tally;
  }
}
