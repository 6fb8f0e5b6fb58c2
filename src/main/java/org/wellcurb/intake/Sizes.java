package org.wellcurb.intake;

import java.util.Arrays;

/**
 * How large the figures of a column are, from its first row to its last: the mean of their
 * logarithms over stretches of equally many figures. When there are too many stretches, each two
 * neighbours become one.
 */
final class Sizes {
  private static final int MOST = 64;
  private static final int SHORTEST = 8;

  /** Feet in a metre, as powers of two, and how far from it a change may be. */
  private static final double FACTOR = Math.log(1 / 0.3048) / Math.log(2);

  private static final double SLACK = 0.35;

  private final double[] sums = new double[MOST];
  private final long[] counts = new long[MOST];
  private int last;
  private long full = SHORTEST;

  /** The stretch at hand. */
  private double sum;

  private long count;

  /** Adds a figure above zero. Its logarithm is taken from its bits, to within 0.09. */
  void add(double figure) {
    long bits = Double.doubleToRawLongBits(figure);
    put((bits >> 52) - 1023 + (bits & 0xFFFFFFFFFFFFFL) * 0x1p-52, 1);
  }

  private void put(double more, long figures) {
    sum += more;
    count += figures;
    if (count >= full) {
      sums[last] = sum;
      counts[last] = count;
      sum = 0;
      count = 0;
      if (++last == MOST) {
        halve();
      }
    }
  }

  /** Adds the figures of later rows. */
  void add(Sizes later) {
    for (int i = 0; i < later.last; i++) {
      put(later.sums[i], later.counts[i]);
    }
    if (later.count > 0) {
      put(later.sum, later.count);
    }
  }

  private void halve() {
    for (int i = 0; i < MOST / 2; i++) {
      sums[i] = sums[2 * i] + sums[2 * i + 1];
      counts[i] = counts[2 * i] + counts[2 * i + 1];
    }
    Arrays.fill(sums, MOST / 2, MOST, 0);
    Arrays.fill(counts, MOST / 2, MOST, 0);
    last = MOST / 2;
    full *= 2;
  }

  /**
   * True if from one stretch on all figures lie about a factor of 3.28 from all before: what is
   * left of the step and what is right of it keep apart, and differ less among themselves.
   */
  boolean changeByFeet() {
    int n = count > SHORTEST / 2 ? last + 1 : last;
    double[] means = new double[n];
    for (int i = 0; i < last; i++) {
      means[i] = sums[i] / counts[i];
    }
    if (n > last) {
      means[last] = sum / count;
    }
    for (int at = 2; at <= n - 2; at++) {
      if (isStep(means, at)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isStep(double[] means, int at) {
    double left = Arrays.stream(means, 0, at).average().orElse(0);
    double right = Arrays.stream(means, at, means.length).average().orElse(0);
    double step = right - left;
    if (Math.abs(Math.abs(step) - FACTOR) > SLACK) {
      return false;
    }
    double middle = (left + right) / 2;
    int beyond = 0;
    for (int i = 0; i < means.length; i++) {
      beyond += (means[i] > middle) == (i < at) == (step > 0) ? 1 : 0;
    }
    double before = (means[at - 1] + means[at - 2]) / 2;
    double after = (means[at] + means[at + 1]) / 2;
    return beyond <= means.length / 16 && Math.abs(after - before) > FACTOR / 2;
  }
}
