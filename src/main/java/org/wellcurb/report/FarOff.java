package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;

/** What lies outside the range that real wells stay in. */
final class FarOff {
  private FarOff() {}

  /** True if an amount is given, and no part of it is within the range of its entry. */
  static boolean is(WellRecord record, Entry entry) {
    Interval plausible = entry.plausible();
    int i = entry.index();
    return record.isGiven(i)
        && entry.kind().isAmount()
        && entry.kind() != Kind.DATE
        && (record.lo(i) > plausible.hi() || record.hi(i) < plausible.lo());
  }

  /** Such entries of a record, in the order of the catalogue. */
  static List<Entry> of(WellRecord record) {
    List<Entry> far = new ArrayList<>();
    for (Entry entry : record.catalogue().entries()) {
      if (is(record, entry)) {
        far.add(entry);
      }
    }
    return far;
  }
}
