package org.wellcurb.formula;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;

/** A comparison of two amounts over records side by side, as {@link CompareNode} does for one. */
final class CompareLanes extends TruthLanes {
  private final Relation relation;
  private final AmountLanes a;
  private final AmountLanes b;
  private final int @Nullable [] amounts;
  private final CompareNode alone;

  /** What comes of the comparison at hand, before it is put among what is known. */
  private long holding;

  private long failing;

  /**
   * @param amounts entries that pick the side of a dual limit; null if none of the limits is dual
   * @param alone the same comparison for one record, for the slack of rounding
   */
  CompareLanes(
      Relation relation,
      AmountLanes a,
      AmountLanes b,
      int @Nullable [] amounts,
      CompareNode alone) {
    this.relation = relation;
    this.a = a;
    this.b = b;
    this.amounts = amounts;
    this.alone = alone;
  }

  @Override
  void compute(Lanes lanes, long mask) {
    if (amounts == null) {
      compare(lanes, mask);
      return;
    }
    write(lanes, mask, amounts);
    compare(lanes, mask);
    for (long left = mask; left != 0; left &= left - 1) {
      lanes.frame(Long.numberOfTrailingZeros(left)).written = null;
    }
  }

  /** Says of each record which unit system picks the side of dual limits. */
  private static void write(Lanes lanes, long mask, int[] amounts) {
    long us = 0;
    long metric = 0;
    for (int amount : amounts) {
      EntryLanes of = lanes.entry(amount);
      us |= of.writtenIn(UnitSystem.US);
      metric |= of.writtenIn(UnitSystem.METRIC);
    }
    for (long left = mask; left != 0; left &= left - 1) {
      int lane = Long.numberOfTrailingZeros(left);
      boolean isUs = (us >>> lane & 1) != 0;
      boolean isMetric = (metric >>> lane & 1) != 0;
      lanes.frame(lane).written =
          isUs == isMetric ? null : isUs ? UnitSystem.US : UnitSystem.METRIC;
    }
  }

  private void compare(Lanes lanes, long mask) {
    a.need(lanes, mask);
    b.need(lanes, mask);
    long isVoid = mask & (a.isVoid() | b.isVoid());
    long left = mask & ~isVoid;
    holding = 0;
    failing = 0;
    switch (relation) {
      case AT_LEAST -> atLeast(a, b, left);
      case AT_MOST -> atLeast(b, a, left);
      case LESS -> less(a, b, left);
      case MORE -> less(b, a, left);
      default -> each(left);
    }
    turn(lanes);
    put(holding, failing, isVoid);
  }

  /** The loop that most comparisons end in: {@link Relation#holds} without its choices. */
  private void atLeast(AmountLanes more, AmountLanes less, long mask) {
    long areTrue = 0;
    long areFalse = 0;
    for (long left = mask; left != 0; left &= left - 1) {
      int lane = Long.numberOfTrailingZeros(left);
      if (!Near.less(more.lo[lane], less.hi[lane])) {
        areTrue |= 1L << lane;
      } else if (Near.less(more.hi[lane], less.lo[lane])) {
        areFalse |= 1L << lane;
      }
    }
    holding = areTrue;
    failing = areFalse;
  }

  private void less(AmountLanes one, AmountLanes other, long mask) {
    atLeast(one, other, mask);
    long turned = holding;
    holding = failing;
    failing = turned;
  }

  private void each(long mask) {
    for (long left = mask; left != 0; left &= left - 1) {
      int lane = Long.numberOfTrailingZeros(left);
      int truth = relation.holds(a.lo[lane], a.hi[lane], b.lo[lane], b.hi[lane]);
      holding |= (truth == Truth.TRUE ? 1L : 0) << lane;
      failing |= (truth == Truth.FALSE ? 1L : 0) << lane;
    }
  }

  /** Looks whether the slack of rounding helps those that are false as written. */
  private void turn(Lanes lanes) {
    for (long left = failing; left != 0; left &= left - 1) {
      int lane = Long.numberOfTrailingZeros(left);
      int truth = alone.turned(lanes.frame(lane), a.lo[lane], a.hi[lane], b.lo[lane], b.hi[lane]);
      if (truth != Truth.FALSE) {
        failing &= ~(1L << lane);
        holding |= (truth == Truth.TRUE ? 1L : 0) << lane;
      }
    }
  }
}
