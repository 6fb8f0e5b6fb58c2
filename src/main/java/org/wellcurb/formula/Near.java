package org.wellcurb.formula;

/**
 * Comparison of numbers with the one tolerance of the rule language: two amounts that differ by
 * less than 1e-9 of the larger are equal, so that 0.010 mg/L is 10 ug/L and 12.2 ft + 0.8 ft is 13
 * ft.
 */
public final class Near {
  private static final double RELATIVE = 1e-9;

  private Near() {}

  /** True if the two count as equal. */
  public static boolean equal(double a, double b) {
    return a == b || Math.abs(a - b) < RELATIVE * Math.max(Math.abs(a), Math.abs(b));
  }

  /** True if {@code a} is less than {@code b} and does not count as equal to it. */
  public static boolean less(double a, double b) {
    return a < b && !equal(a, b);
  }
}
