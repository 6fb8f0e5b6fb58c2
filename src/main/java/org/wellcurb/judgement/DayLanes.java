package org.wellcurb.judgement;

import org.wellcurb.formula.Lanes;

/** The first and last day that a judging day may be, for records side by side. */
final class DayLanes {
  private final JudgedBy day;
  final double[] first = new double[Lanes.MOST];
  final double[] last = new double[Lanes.MOST];
  private long done;

  DayLanes(JudgedBy day) {
    this.day = day;
  }

  /** Forgets the days of other records. */
  void clear() {
    done = 0;
  }

  /** Works out the days of these records, as far as they are not known yet. */
  void need(Judge[] judges, long mask) {
    for (long left = mask & ~done; left != 0; left &= left - 1) {
      int lane = Long.numberOfTrailingZeros(left);
      first[lane] = judges[lane].first(day);
      last[lane] = judges[lane].last(day);
    }
    done |= mask;
  }
}
