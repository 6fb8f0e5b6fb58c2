package org.wellcurb.crosscheck;

import java.nio.FloatBuffer;
import java.util.Arrays;

/** Middle and spread that a few wild values do not move. */
public final class Spread {
  /** Makes the median absolute deviation of a normal sample its standard deviation. */
  public static final double NORMAL = 1.4826;

  /** How many values half the bits of a float can have. */
  private static final int HALF = 1 << 16;

  /** Of so many values and fewer, sorting one into another is quickest. */
  private static final int FEW = 24;

  private Spread() {}

  /** The median: the middle one, or the mean of the two in the middle; NaN of none. */
  public static double median(double[] values, int count) {
    if (count == 0) {
      return Double.NaN;
    }
    double[] sorted = Arrays.copyOf(values, count);
    sort(sorted);
    int middle = count / 2;
    return count % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }

  private static void sort(double[] values) {
    if (values.length > FEW) {
      Arrays.sort(values);
      return;
    }
    for (int i = 1; i < values.length; i++) {
      double value = values[i];
      int at = i - 1;
      while (at >= 0 && values[at] > value) {
        values[at + 1] = values[at];
        at--;
      }
      values[at + 1] = value;
    }
  }

  /** The upper of the middle ones, of values that are all numbers; 0 of none. Linear in time. */
  static float middle(FloatBuffer values, int count) {
    if (count == 0) {
      return 0;
    }
    // First the upper half of its bits is found by counting, then the lower among those alike.
    int[] counts = new int[HALF];
    for (int i = 0; i < count; i++) {
      counts[ordered(values.get(i)) >>> 16]++;
    }
    int left = count / 2;
    int upper = 0;
    while (left >= counts[upper]) {
      left -= counts[upper++];
    }
    Arrays.fill(counts, 0);
    for (int i = 0; i < count; i++) {
      int bits = ordered(values.get(i));
      counts[bits & (HALF - 1)] += bits >>> 16 == upper ? 1 : 0;
    }
    int lower = 0;
    while (left >= counts[lower]) {
      left -= counts[lower++];
    }
    return value((upper << 16) | lower);
  }

  /** The value of such bits. */
  static float value(int ordered) {
    return Float.intBitsToFloat(ordered < 0 ? ordered ^ Integer.MIN_VALUE : ~ordered);
  }

  /** Bits that stand in the order of the values, if taken without a sign. */
  static int ordered(float value) {
    int bits = Float.floatToRawIntBits(value);
    return bits < 0 ? ~bits : bits | Integer.MIN_VALUE;
  }

  /**
   * The median of the distances from the median, made comparable with a standard deviation.
   *
   * <p>Source: B. Iglewicz and D. Hoaglin, How to Detect and Handle Outliers (1993), section 3.3
   * (from memory; checked in the tests).
   */
  public static double of(double[] values, int count) {
    return of(values, count, median(values, count));
  }

  /** The same, where the median is known. */
  static double of(double[] values, int count, double median) {
    double[] away = new double[count];
    for (int i = 0; i < count; i++) {
      away[i] = Math.abs(values[i] - median);
    }
    return NORMAL * median(away, count);
  }
}
