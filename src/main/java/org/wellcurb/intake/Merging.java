package org.wellcurb.intake;

import java.util.Objects;
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
   * @return true if the row says something else than the record and is not taken, as the first row
   *     counts
   */
  static boolean take(Target target, RecordFiller into, WellRecord row) {
    int entry = target.entry().index();
    WellRecord before = into.record();
    if (row.written(entry).isEmpty()) {
      return false;
    }
    boolean amounts = target.entry().kind().isAmount();
    if (!before.isGiven(entry) || !row.isGiven(entry)) {
      if (!before.isGiven(entry) && (row.isGiven(entry) || before.written(entry).isEmpty())) {
        into.take(entry, row);
      }
      return false;
    }
    switch (target.ofSeveral()) {
      case FIRST -> {
        return differ(before, row, entry);
      }
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
    return false;
  }

  /** True if two given values are not the same, as far as they are written. */
  private static boolean differ(WellRecord one, WellRecord other, int entry) {
    double written = one.halfPlace(entry) + other.halfPlace(entry);
    return isApart(one.lo(entry), other.lo(entry), written)
        || isApart(one.hi(entry), other.hi(entry), written)
        || !Objects.equals(one.text(entry), other.text(entry));
  }

  private static boolean isApart(double a, double b, double written) {
    return a != b && Math.abs(a - b) > written;
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
