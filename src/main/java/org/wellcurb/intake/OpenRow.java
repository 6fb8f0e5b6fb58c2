package org.wellcurb.intake;

import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/** A row that is being read: its cells, and the record that they fill. Used again and again. */
final class OpenRow {
  final RowView view;
  final RecordFiller filler;

  /** The units of its bare numbers. */
  UnitSystem system = UnitSystem.US;

  /** The line on which it stands, and its place in the chunk. */
  long line;

  int place;

  OpenRow(RowView view, RecordFiller filler) {
    this.view = view;
    this.filler = filler;
  }

  WellRecord record() {
    return filler.record();
  }
}
