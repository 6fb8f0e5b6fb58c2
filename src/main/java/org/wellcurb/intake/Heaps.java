package org.wellcurb.intake;

/**
 * Whether the figures of a column lie in two heaps, the upper about 3.28 times the lower: feet in
 * some rows and metres in others. Figures are counted by eighths of a doubling.
 */
final class Heaps {
  private static final int EIGHTHS = 8;

  /** From 2^-16 to 2^16. */
  private static final int OFFSET = 16 * EIGHTHS;

  private static final int BINS = 2 * OFFSET;

  /** So few figures are too few to see heaps. */
  private static final long LEAST = 40;

  /** Share of all, one in so many, up to which a place counts as empty. */
  private static final long EMPTY_ONE_IN = 500;

  /** Each heap has at least one in so many. */
  private static final long HEAP_ONE_IN = 10;

  /** Empty eighths between heaps, the fewest that a heap covers, and the most. */
  private static final int GAP = 4;

  private static final int NARROWEST = 3;
  private static final int WIDEST = 12;

  /** Eighths between feet and metres, and how far from it two heaps may lie. */
  private static final double APART = EIGHTHS * Math.log(1 / 0.3048) / Math.log(2);

  private static final double SLACK = 2;

  private final long[] bins = new long[BINS];

  /** Adds a figure above zero. */
  void add(double figure) {
    long bits = Double.doubleToRawLongBits(figure);
    long eighth = (bits >> 49) - EIGHTHS * 1023L + OFFSET;
    bins[(int) Math.max(0, Math.min(BINS - 1, eighth))]++;
  }

  void add(Heaps later) {
    for (int i = 0; i < BINS; i++) {
      bins[i] += later.bins[i];
    }
  }

  /** True if there are two heaps, and only they, as far apart as feet and metres. */
  boolean areFeetAndMetres() {
    long all = 0;
    for (long bin : bins) {
      all += bin;
    }
    if (all < LEAST) {
      return false;
    }
    int heaps = 0;
    double[] means = new double[2];
    int at = 0;
    while (at < BINS) {
      if (isEmpty(at, all)) {
        at++;
        continue;
      }
      int end = end(at, all);
      if (heaps == 2 || !isHeap(at, end, all)) {
        return false;
      }
      means[heaps++] = mean(at, end);
      at = end;
    }
    return heaps == 2 && Math.abs(means[1] - means[0] - APART) <= SLACK;
  }

  private boolean isEmpty(int bin, long all) {
    return bins[bin] <= all / EMPTY_ONE_IN;
  }

  /** Where the heap that begins here ends: after it {@link #GAP} places are empty, or all. */
  private int end(int from, long all) {
    int end = from + 1;
    for (int i = end; i < BINS && i < end + GAP; i++) {
      end = isEmpty(i, all) ? end : i + 1;
    }
    return end;
  }

  private boolean isHeap(int from, int end, long all) {
    long figures = 0;
    int covered = 0;
    for (int i = from; i < end; i++) {
      figures += bins[i];
      covered += bins[i] > 0 ? 1 : 0;
    }
    return figures * HEAP_ONE_IN >= all && covered >= NARROWEST && end - from <= WIDEST;
  }

  private double mean(int from, int end) {
    double sum = 0;
    double figures = 0;
    for (int i = from; i < end; i++) {
      sum += (double) i * bins[i];
      figures += bins[i];
    }
    return sum / figures;
  }
}
