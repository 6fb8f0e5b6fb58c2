package org.wellcurb.formula;

/**
 * An amount compiled for records side by side: an interval in SI for each. What was worked out is
 * kept until other records are taken. Belongs to one worker.
 */
abstract class AmountLanes {
  final double[] lo = new double[Lanes.MOST];
  final double[] hi = new double[Lanes.MOST];
  private long load;
  private long done;
  private long isVoid;

  /** Works it out for these records, as far as it is not known yet. */
  final void need(Lanes lanes, long mask) {
    if (load != lanes.load()) {
      load = lanes.load();
      done = 0;
      isVoid = 0;
    }
    long left = mask & ~done;
    if (left != 0) {
      done |= left;
      compute(lanes, left);
    }
  }

  /** Fills {@link #lo} and {@link #hi} of these records, and says which are void. */
  abstract void compute(Lanes lanes, long mask);

  final void putVoid(long areVoid) {
    isVoid |= areVoid;
  }

  /** Records of which it is void. */
  final long isVoid() {
    return isVoid;
  }
}
