package org.wellcurb.crosscheck;

import java.util.Arrays;

/** Middle and spread that a few wild values do not move. */
public final class Spread {
  /** Makes the median absolute deviation of a normal sample its standard deviation. */
  public static final double NORMAL = 1.4826;

  private Spread() {}

  /** The median: the middle one, or the mean of the two in the middle; NaN of none. */
  public static double median(double[] values, int count) {
    if (count == 0) {
      return Double.NaN;
    }
    double[] sorted = Arrays.copyOf(values, count);
    Arrays.sort(sorted);
    int middle = count / 2;
    return count % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }

  /** The upper of the middle ones, in place: the values are sorted. 0 of none. */
  static float middle(float[] values, int count) {
    Arrays.sort(values, 0, count);
    return count == 0 ? 0 : values[count / 2];
  }

  /**
   * The median of the distances from the median, made comparable with a standard deviation.
   *
   * <p>Source: B. Iglewicz and D. Hoaglin, How to Detect and Handle Outliers (1993), section 3.3
   * (from memory; checked in the tests).
   */
  public static double of(double[] values, int count) {
    double median = median(values, count);
    double[] away = new double[count];
    for (int i = 0; i < count; i++) {
      away[i] = Math.abs(values[i] - median);
    }
    return NORMAL * median(away, count);
  }
}
