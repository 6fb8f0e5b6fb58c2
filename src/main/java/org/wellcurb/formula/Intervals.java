package org.wellcurb.formula;

/**
 * Arithmetic of intervals in the slots of a frame. 0 x infinity is 0; an end that would be infinity
 * less infinity, or infinity over infinity, is unbounded on that side; nothing is ever NaN.
 */
final class Intervals {
  /** Share of an operand below which what a sum leaves is rounding. */
  private static final double NOTHING = 1e-12;

  private Intervals() {}

  /** Puts {@code a + b} into slot {@code a}. */
  static void add(Frame f, int a, int b) {
    set(f, a, sum(f.lo[a], f.lo[b]), sum(f.hi[a], f.hi[b]));
  }

  /** Puts {@code a - b} into slot {@code a}. */
  static void subtract(Frame f, int a, int b) {
    set(f, a, sum(f.lo[a], -f.hi[b]), sum(f.hi[a], -f.lo[b]));
  }

  /** The sum; what binary digits leave of 13.2 in less 1.1 ft is nothing. */
  static double sum(double a, double b) {
    double sum = a + b;
    double left = Math.abs(sum);
    return left <= NOTHING * Math.abs(a) && left < Double.POSITIVE_INFINITY ? 0 : sum;
  }

  /** Puts {@code a * b} into slot {@code a}. */
  static void multiply(Frame f, int a, int b) {
    product(f, a, f.lo[b], f.hi[b]);
  }

  /** Puts {@code a / b} into slot {@code a}; a divisor that holds 0 leaves that side unbounded. */
  static void divide(Frame f, int a, int b) {
    double lo = f.lo[b];
    double hi = f.hi[b];
    if ((lo < 0 && hi > 0) || (lo == 0 && hi == 0)) {
      set(f, a, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
      return;
    }
    double least = hi == 0 ? Double.NEGATIVE_INFINITY : 1 / hi;
    double greatest = lo == 0 ? Double.POSITIVE_INFINITY : 1 / lo;
    if (f.lo[a] == f.hi[a] && lo == hi) {
      // Exact operands divide exactly; the reciprocal would round twice.
      set(f, a, f.lo[a] / lo, f.lo[a] / lo);
    } else {
      product(f, a, least, greatest);
    }
  }

  private static void product(Frame f, int a, double lo, double hi) {
    double p = times(f.lo[a], lo);
    double q = times(f.lo[a], hi);
    double r = times(f.hi[a], lo);
    double s = times(f.hi[a], hi);
    set(f, a, Math.min(Math.min(p, q), Math.min(r, s)), Math.max(Math.max(p, q), Math.max(r, s)));
  }

  private static double times(double a, double b) {
    return a == 0 || b == 0 ? 0 : a * b;
  }

  static void set(Frame f, int at, double lo, double hi) {
    f.lo[at] = Double.isNaN(lo) ? Double.NEGATIVE_INFINITY : lo;
    f.hi[at] = Double.isNaN(hi) ? Double.POSITIVE_INFINITY : hi;
  }

  /** Rounds to a step, half away from zero. */
  static double round(double x, double step) {
    if (Double.isInfinite(x)) {
      return x;
    }
    // The tolerance of comparison holds here too: 2.5 ft reached by a sum is 2.5 ft.
    return Math.signum(x) * Math.floor(Math.abs(x) / step * (1 + 1e-12) + 0.5) * step;
  }
}
