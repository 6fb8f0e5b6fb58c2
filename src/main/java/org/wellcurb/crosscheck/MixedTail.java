package org.wellcurb.crosscheck;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * How likely so many of a group are, where groups differ anyway: each has a share of its own, whose
 * log odds lie around those of all others as a normal distribution has it. So a large group, of
 * which chance explains little, is allowed as much as a small one.
 */
final class MixedTail {
  /** Where the normal distribution is looked at, in standard deviations. */
  private static final double STEP = 0.25;

  private static final int STEPS = 20;

  /** A p above this needs no closer look: nothing is said of it. */
  private static final double NEEDLESS = 0.05;

  /** The median of the square of a standard normal. */
  private static final double MEDIAN_OF_SQUARE = 0.45494;

  private static final int HALVINGS = 16;

  private MixedTail() {}

  /**
   * How likely as many as {@code hits} are, or more; never less than by chance alone, nor than by a
   * normal tail of as great a variance.
   *
   * @param share share of all others
   * @param between standard deviation of log odds between groups
   */
  static double of(int hits, int of, double share, double between) {
    double spread = 1 + of * share * (1 - share) * between * between;
    double p = Copying.tail(hits, of, share, spread);
    return between == 0 || p > NEEDLESS ? p : Math.max(p, mixed(hits, of, share, between));
  }

  private static double mixed(int hits, int of, double share, double between) {
    double odds = Math.log(share / (1 - share));
    double sum = 0;
    double weights = 0;
    for (int i = -STEPS; i <= STEPS; i++) {
      double z = i * STEP;
      double weight = Math.exp(-z * z / 2);
      double own = 1 / (1 + Math.exp(-odds - between * z));
      sum += weight * BinomialDistribution.of(of, own).survivalProbability(hits - 1);
      weights += weight;
    }
    return sum / weights;
  }

  /**
   * The standard deviation of log odds between groups at which the middle one is as far from all
   * others as chance and it together have it; 0 where chance alone is enough.
   *
   * @param shares by group, the share of all others
   * @param most the greatest that is believed
   */
  static double between(int[] hits, int[] of, double[] shares, int count, double most) {
    double[] squares = new double[count];
    if (middle(hits, of, shares, squares, 0) <= MEDIAN_OF_SQUARE) {
      return 0;
    }
    double low = 0;
    double high = most;
    for (int i = 0; i < HALVINGS; i++) {
      double half = (low + high) / 2;
      if (middle(hits, of, shares, squares, half) > MEDIAN_OF_SQUARE) {
        low = half;
      } else {
        high = half;
      }
    }
    return high;
  }

  private static double middle(
      int[] hits, int[] of, double[] shares, double[] squares, double between) {
    for (int i = 0; i < squares.length; i++) {
      double variance = of[i] * shares[i] * (1 - shares[i]);
      double away = hits[i] - of[i] * shares[i];
      squares[i] = away * away / (variance * (1 + variance * between * between));
    }
    return Spread.median(squares, squares.length);
  }
}
