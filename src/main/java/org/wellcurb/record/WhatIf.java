package org.wellcurb.record;

import org.wellcurb.quantity.Unit;

/**
 * A copy of a record in which values can be tried and put back, without touching the record. Its
 * extras are left out: nothing is tried on them, and their texts would be made for each record.
 */
public final class WhatIf {
  private final WellRecord trial;
  private WellRecord original;

  public WhatIf(Catalogue catalogue) {
    trial = new WellRecord(catalogue);
    original = trial;
  }

  /** Starts from this record. */
  public void from(WellRecord record) {
    original = record;
    trial.takeValues(record);
  }

  /** The record with what is being tried. */
  public WellRecord record() {
    return trial;
  }

  /** Tries one value, in SI, as if written in this unit. */
  public void set(int entry, double si, Unit unit) {
    trial.state[entry] = WellRecord.GIVEN;
    trial.lo[entry] = si;
    trial.hi[entry] = si;
    trial.unit[entry] = (byte) unit.id();
  }

  /** Tries that the entry were blank. */
  public void blank(int entry) {
    trial.state[entry] = WellRecord.UNKNOWN;
    trial.lo[entry] = Double.NEGATIVE_INFINITY;
    trial.hi[entry] = Double.POSITIVE_INFINITY;
  }

  /** Puts the entry back as it is in the record. */
  public void restore(int entry) {
    trial.state[entry] = original.state[entry];
    trial.lo[entry] = original.lo[entry];
    trial.hi[entry] = original.hi[entry];
    trial.unit[entry] = original.unit[entry];
  }
}
