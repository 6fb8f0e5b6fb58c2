package org.wellcurb.formula;

/**
 * What is worked out for records side by side, once for each: it is kept until other records are
 * taken.
 */
abstract class LaneWork {
  private long load;
  private long done;

  /** Works it out for these records, as far as it is not known yet. */
  public final void need(Lanes lanes, long mask) {
    if (load != lanes.load()) {
      load = lanes.load();
      done = 0;
      forget();
    }
    long left = mask & ~done;
    if (left != 0) {
      done |= left;
      compute(lanes, left);
    }
  }

  /** Works it out for these records, none of which is known yet. */
  abstract void compute(Lanes lanes, long mask);

  /** Empties what is kept in sets of records. */
  abstract void forget();
}
