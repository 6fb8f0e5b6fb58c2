package org.wellcurb.formula;

/**
 * An amount compiled for records side by side: an interval in SI for each. {@link #compute} fills
 * {@link #lo} and {@link #hi} and says which are void. Belongs to one worker.
 */
abstract class AmountLanes extends LaneWork {
  final double[] lo = new double[Lanes.MOST];
  final double[] hi = new double[Lanes.MOST];
  private long isVoid;

  @Override
  final void forget() {
    isVoid = 0;
  }

  final void putVoid(long areVoid) {
    isVoid |= areVoid;
  }

  /** Records of which it is void. */
  final long isVoid() {
    return isVoid;
  }
}
