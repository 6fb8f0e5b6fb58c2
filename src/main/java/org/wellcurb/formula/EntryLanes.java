package org.wellcurb.formula;

import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;

/** What the records side by side hold of one entry, gathered as far as it is asked for. */
final class EntryLanes extends LaneWork {
  private final int entry;

  /** Values in SI as written, not brought to ground. */
  final double[] lo = new double[Lanes.MOST];

  final double[] hi = new double[Lanes.MOST];

  private long given;
  private long notApplicable;
  private long us;
  private long metric;

  EntryLanes(Entry entry) {
    this.entry = entry.index();
  }

  @Override
  void compute(Lanes lanes, long mask) {
    for (long left = mask; left != 0; left &= left - 1) {
      int lane = Long.numberOfTrailingZeros(left);
      gather(lanes.frame(lane), lane);
    }
  }

  @Override
  void forget() {
    given = 0;
    notApplicable = 0;
    us = 0;
    metric = 0;
  }

  private void gather(Frame frame, int lane) {
    WellRecord record = frame.record();
    long bit = 1L << lane;
    byte state = frame.state(entry);
    lo[lane] = record.lo(entry);
    hi[lane] = record.hi(entry);
    if (state == WellRecord.GIVEN) {
      given |= bit;
      UnitSystem system = record.system(entry);
      if (system == UnitSystem.US) {
        us |= bit;
      } else if (system == UnitSystem.METRIC) {
        metric |= bit;
      }
    } else if (state == WellRecord.NOT_APPLICABLE) {
      notApplicable |= bit;
    }
  }

  /** Records that give it. */
  long given() {
    return given;
  }

  /** Records on which it counts as n/a. */
  long notApplicable() {
    return notApplicable;
  }

  /** Records that give it in a unit of this system. */
  long writtenIn(UnitSystem system) {
    return system == UnitSystem.US ? us : system == UnitSystem.METRIC ? metric : 0;
  }
}
