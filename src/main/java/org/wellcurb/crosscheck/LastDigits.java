package org.wellcurb.crosscheck;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Last digits of whole figures that no honest rounding makes: no multiples of five, and of no rod.
 * Nobody measures sevens more than threes; who makes figures up often does.
 */
final class LastDigits {
  /** Fewest such figures of a contractor. */
  static final int LEAST = 40;

  /** Fewest of a digit that are expected, for the approximation to hold. */
  private static final double LEAST_EXPECTED = 2;

  /** Digits that are left: all but 0 and 5. */
  private static final int DIGITS = 8;

  private static final float ROD = 21;

  final int[] own = new int[10];
  private final double[] others = new double[10];
  int size;
  private double othersSize;
  private final double worth;

  LastDigits(Habits habits) {
    // Rods make last digits: of 6 metres, in feet, mostly 7, 8 and 9.
    for (int i = 0; i < habits.own.size() && !habits.isOfRods(); i++) {
      int digit = digit(habits.own.figure(i));
      if (digit > 0) {
        own[digit] += (int) habits.own.count(i);
        size += (int) habits.own.count(i);
      }
    }
    for (int i = 0; i < habits.others.size(); i++) {
      int digit = digit(habits.others.figure(i));
      if (digit > 0) {
        others[digit] += habits.others.count(i);
        othersSize += habits.others.count(i);
      }
    }
    worth = habits.size == 0 ? 0 : othersSize / habits.size * habits.worth;
  }

  /** The last digit; 0 where rounding may have made it. */
  static int digit(float figure) {
    boolean isMade =
        figure != Math.rint(figure)
            || Habits.isMultiple(figure, 5)
            || Habits.isMultiple(figure, ROD);
    return isMade ? 0 : (int) (figure % 10);
  }

  /** Share of a digit among all others' such figures; even shares count for one figure a digit. */
  double share(int digit) {
    return (others[digit] / Math.max(othersSize, 1e-9) * worth + 1) / (worth + DIGITS);
  }

  boolean isAble() {
    if (size < LEAST || worth < LEAST) {
      return false;
    }
    for (int digit = 1; digit < 10; digit++) {
      if (digit != 5 && size * share(digit) < LEAST_EXPECTED) {
        return false;
      }
    }
    return true;
  }

  /** Chi-square of the contractor's digits, less what others' being a sample adds. */
  double statistic() {
    double sum = 0;
    for (int digit = 1; digit < 10; digit++) {
      if (digit != 5) {
        double expected = size * share(digit);
        sum += (own[digit] - expected) * (own[digit] - expected) / expected;
      }
    }
    return sum / (1 + size / worth);
  }

  /** The digit that is preferred most beside all others. */
  int preferred() {
    int preferred = 1;
    for (int digit = 2; digit < 10; digit++) {
      if (digit != 5
          && own[digit] - size * share(digit) > own[preferred] - size * share(preferred)) {
        preferred = digit;
      }
    }
    return preferred;
  }

  /** How likely a statistic as great is, with the variance so much wider. */
  static double p(double statistic, double spread) {
    return ChiSquaredDistribution.of(DIGITS - 1).survivalProbability(statistic / spread);
  }
}
