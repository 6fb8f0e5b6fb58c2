package org.wellcurb.crosscheck;

/**
 * A share of a count with its 95 % interval by Wilson's score (E. B. Wilson, 1927, from memory;
 * checked in the tests against published figures).
 *
 * @param hits how many
 * @param of of how many
 * @param share hits over of; NaN where there are none
 * @param lo lower end of the interval
 * @param hi upper end of the interval
 */
public record Share(long hits, long of, double share, double lo, double hi) {
  /** Normal quantile of 0.975. */
  private static final double Z = 1.959963984540054;

  /** The share of so many of so many. */
  public static Share of(long hits, long of) {
    if (of == 0) {
      return new Share(0, 0, Double.NaN, 0, 1);
    }
    double n = of;
    double share = hits / n;
    double middle = (share + Z * Z / (2 * n)) / (1 + Z * Z / n);
    double half = Z / (1 + Z * Z / n) * Math.sqrt(share * (1 - share) / n + Z * Z / (4 * n * n));
    double lo = hits == 0 ? 0 : Math.max(0, middle - half);
    double hi = hits == of ? 1 : Math.min(1, middle + half);
    return new Share(hits, of, share, lo, hi);
  }
}
