package org.wellcurb.intake;

import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/** Brings the values that several rows give for one entry to a single one. */
final class Merging {
  private Merging() {}

  /**
   * Takes over what a further row says of an entry, if it counts.
   *
   * @param into the record so far
   * @param row what the row alone says
   */
  static void take(Target target, RecordFiller into, WellRecord row) {
    int entry = target.entry().index();
    WellRecord before = into.record();
    if (row.written(entry).isEmpty()) {
      return;
    }
    boolean amounts = target.entry().kind().isAmount();
    if (!before.isGiven(entry) || !row.isGiven(entry)) {
      if (!before.isGiven(entry) && (row.isGiven(entry) || before.written(entry).isEmpty())) {
        into.take(entry, row);
      }
      return;
    }
    switch (target.ofSeveral()) {
      case FIRST -> {}
      case LAST -> into.take(entry, row);
      case LEAST -> {
        if (amounts && row.lo(entry) < before.lo(entry)) {
          into.take(entry, row);
        }
      }
      case MOST -> {
        if (amounts && row.hi(entry) > before.hi(entry)) {
          into.take(entry, row);
        }
      }
      case RANGE -> {
        if (amounts) {
          hull(target.entry(), into, row);
        }
      }
    }
  }

  private static void hull(Entry entry, RecordFiller into, WellRecord row) {
    int i = entry.index();
    WellRecord before = into.record();
    double lo = Math.min(before.lo(i), row.lo(i));
    double hi = Math.max(before.hi(i), row.hi(i));
    if (lo == before.lo(i) && hi == before.hi(i)) {
      return;
    }
    String written = before.written(i) + "; " + row.written(i);
    Unit unit = before.unit(i);
    if (unit == null) {
      into.date(i, lo, hi, Note.NONE);
    } else {
      into.amount(i, lo, hi, 0, unit, Note.NONE);
    }
    into.written(i, written);
  }
}
