package org.wellcurb.formula;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Datum;
import org.wellcurb.record.WellRecord;

/**
 * Where formulas are evaluated: one record as it counts (parts not covered and entries that must
 * apply taken into account), the shift that brings each datum to ground level, and room for what is
 * being computed. One per worker; never shared.
 */
public final class Frame {
  private final byte[] state;
  private final int layers;
  private WellRecord record;

  /** Shift of each {@link Datum}, in metres: depth below ground is the depth written less this. */
  final double[] shift = new double[Datum.values().length];

  /** Results by slot: least, greatest, and whether it is void. */
  final double[] lo;

  final double[] hi;
  final boolean[] isVoid;

  /**
   * Unit system that all amounts of the comparison at hand were written in; null if they were not.
   */
  @Nullable UnitSystem written;

  /** As-of date of the run, in days since 1970-01-01; NaN where none is set. */
  private double asOf = Double.NaN;

  private final Scratch scratch;

  public Frame(Catalogue catalogue) {
    this(catalogue, new Slots(), new Scratch());
  }

  /** A frame that shares its room with others of the same worker: one evaluates at a time. */
  Frame(Catalogue catalogue, Slots slots, Scratch scratch) {
    lo = slots.lo;
    hi = slots.hi;
    isVoid = slots.isVoid;
    this.scratch = scratch;
    state = new byte[catalogue.size()];
    layers = catalogue.index("layers");
    record = new org.wellcurb.record.RecordFiller(catalogue).record();
  }

  /** Takes a record: states are copied, so that the judge may change how an entry counts. */
  public void take(WellRecord record) {
    this.record = record;
    record.statesInto(state);
    if (!record.layers().isEmpty()) {
      state[layers] = WellRecord.GIVEN;
    }
    Arrays.fill(shift, 0);
    written = null;
  }

  /** The record at hand. */
  public WellRecord record() {
    return record;
  }

  /** Lets an entry count as in another state than it was written in. */
  public void countAs(int entry, byte counted) {
    state[entry] = counted;
  }

  /** The state that an entry counts in. */
  public byte state(int entry) {
    return state[entry];
  }

  /** Sets how far the zero of this datum lies above ground, in metres. */
  public void shift(Datum datum, double metres) {
    shift[datum.ordinal()] = metres;
  }

  /** Sets the as-of date of the run, in days since 1970-01-01. */
  public void asOf(double day) {
    asOf = day;
  }

  double asOf() {
    return asOf;
  }

  /** How far the zero of this datum lies above ground, in metres. */
  public double shift(Datum datum) {
    return shift[datum.ordinal()];
  }

  Scratch scratch() {
    return scratch;
  }
}
