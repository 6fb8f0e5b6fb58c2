package org.wellcurb.crosscheck;

import java.util.Arrays;

/**
 * What is kept of the habits of one contractor in a zone: what the tests need, and no more, since
 * all contractors are known before the first is tested.
 */
final class Compared {
  /** Code of the contractor. */
  final int contractor;

  /** Code of the zone. */
  final int zone;

  /** Figures of its own that are compared. */
  final int size;

  /** Figures of all others, as {@link Habits} has it. */
  final double worth;

  /** Its distinct figures, in ascending order. */
  final float[] figures;

  /** How often each of them stands there. */
  final int[] counts;

  /** The share of each among the figures of all others. */
  final double[] othersShares;

  /** The longest row of equal figures. */
  final LongestRow row;

  /** The share of the figure of it, of all others and of its own that count. */
  final double ofRow;

  /** Figures that are multiples of fifty. */
  final int round;

  /** The share of such among those of all others. */
  final double othersRound;

  final LastDigits digits;

  Compared(int contractor, int zone, Habits habits) {
    this.contractor = contractor;
    this.zone = zone;
    size = habits.size;
    worth = habits.worth;
    int count = habits.own.size();
    figures = new float[count];
    counts = new int[count];
    othersShares = new double[count];
    for (int i = 0; i < count; i++) {
      figures[i] = habits.own.figure(i);
      counts[i] = (int) habits.own.count(i);
      othersShares[i] = habits.othersShare(figures[i]);
    }
    row = habits.row();
    int at = Arrays.binarySearch(figures, row.figure());
    ofRow =
        at < 0 ? 1 : Math.max(row.nearby(), Math.max(othersShares[at], (double) counts[at] / size));
    round = habits.ownRound(Copying.ROUND);
    othersRound = habits.othersRound(Copying.ROUND);
    digits = new LastDigits(habits);
  }

  /** How much wider the variance is because others' share is only known from so many figures. */
  double widened(double spread) {
    return spread * (1 + size / worth);
  }
}
