package org.wellcurb.formula;

import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.WellRecord;

/**
 * What the records side by side hold of one entry, as a column. It is filled when the first rule
 * asks for it: no rule reads every entry of the catalogue.
 */
final class EntryLanes {
  private final int entry;

  /** Values in SI as written, not brought to ground. */
  final double[] lo = new double[Lanes.MOST];

  final double[] hi = new double[Lanes.MOST];

  private long given;
  private long exact;
  private long notApplicable;
  private long us;
  private long metric;

  /** The load that it was filled from, and the records of it that were there. */
  private long load = -1;

  private long filled;

  EntryLanes(int entry) {
    this.entry = entry;
  }

  /** Fills it with what records of a load hold that it does not have yet. */
  void need(Frame[] frames, long ofLoad, long taken) {
    if (load == ofLoad && filled == taken) {
      return;
    }
    if (load != ofLoad) {
      load = ofLoad;
      filled = 0;
      given = 0;
      exact = 0;
      notApplicable = 0;
      us = 0;
      metric = 0;
    }
    for (long left = taken & ~filled; left != 0; left &= left - 1) {
      int lane = Long.numberOfTrailingZeros(left);
      take(frames[lane], frames[lane].record(), lane);
    }
    filled = taken;
  }

  /** Takes what the record of a frame holds, which counts as the frame says. */
  private void take(Frame frame, WellRecord record, int lane) {
    byte state = frame.state(entry);
    double least = record.lo(entry);
    double most = record.hi(entry);
    lo[lane] = least;
    hi[lane] = most;
    if (state == WellRecord.GIVEN) {
      long bit = 1L << lane;
      given |= bit;
      exact |= least == most ? bit : 0;
      UnitSystem system = record.system(entry);
      us |= system == UnitSystem.US ? bit : 0;
      metric |= system == UnitSystem.METRIC ? bit : 0;
    } else if (state == WellRecord.NOT_APPLICABLE) {
      notApplicable |= 1L << lane;
    }
  }

  /** Records that give it. */
  long given() {
    return given;
  }

  /** Records that give it, and not as a range. */
  long exact() {
    return exact;
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
