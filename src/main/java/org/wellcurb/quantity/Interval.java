package org.wellcurb.quantity;

/**
 * A closed interval of an amount in SI units; an end may be infinite, neither is NaN.
 *
 * @param lo least value
 * @param hi greatest value
 */
public record Interval(double lo, double hi) {
  /** What is known of an amount of which nothing is known. */
  public static final Interval ALL =
      new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  /** What is above zero, by however little: water that flows, how fast nobody says. */
  public static final Interval MORE_THAN_NOTHING =
      new Interval(Double.MIN_VALUE, Double.POSITIVE_INFINITY);

  public Interval {
    if (!(lo <= hi)) {
      throw new IllegalArgumentException("not an interval: " + lo + " to " + hi);
    }
  }

  /** The interval that holds one value. */
  public static Interval point(double value) {
    return new Interval(value, value);
  }

  public boolean isPoint() {
    return lo == hi;
  }

  /** True if nothing at all is known. */
  public boolean isAll() {
    return lo == Double.NEGATIVE_INFINITY && hi == Double.POSITIVE_INFINITY;
  }

  /** The lower end, or the upper where there is none. */
  public double leastKnown() {
    return Double.isInfinite(lo) ? hi : lo;
  }

  /** The upper end, or the lower where there is none. */
  public double greatestKnown() {
    return Double.isInfinite(hi) ? lo : hi;
  }

  public boolean contains(double value) {
    return lo <= value && value <= hi;
  }
}
