package org.wellcurb.crosscheck;

/**
 * The figures of one field over a batch, by area. Wells of one street are alike: the same figure of
 * one contractor at one place counts once. Figures are named by their rank among all distinct ones.
 */
final class FiguresByArea {
  private final Distinct figures;

  /** How many figures each area has. */
  private final int[] sizes;

  /** Where the distinct figures of each area begin. */
  private final int[] starts;

  private final int[] ranks;
  private final int[] counts;

  /** Says who wrote the figure of a record, and in which zone: a code. */
  interface Contractor {
    int of(int record);
  }

  /**
   * @param written by record; those that do not count become NaN
   */
  FiguresByArea(float[] written, Contractor contractor, Areas areas) {
    countOnce(written, contractor, areas);
    int size = 0;
    for (float figure : written) {
      size += Float.isNaN(figure) ? 0 : 1;
    }
    long[] keys = new long[size];
    for (int i = 0, at = 0; i < written.length; i++) {
      if (!Float.isNaN(written[i])) {
        keys[at++] = Float.floatToIntBits(written[i]);
      }
    }
    figures = new Distinct(keys);
    sizes = new int[areas.count()];
    for (int i = 0, at = 0; i < written.length; i++) {
      if (!Float.isNaN(written[i])) {
        keys[at++] = ((long) areas.area(i) << 32) | rank(written[i]);
        sizes[areas.area(i)]++;
      }
    }
    KeySort.sort(keys, size);
    starts = new int[areas.count() + 1];
    int runs = 0;
    for (int at = 0; at < size; at++) {
      runs += at == 0 || keys[at] != keys[at - 1] ? 1 : 0;
    }
    ranks = new int[runs];
    counts = new int[runs];
    int run = -1;
    for (int at = 0; at < size; at++) {
      if (at == 0 || keys[at] != keys[at - 1]) {
        ranks[++run] = (int) keys[at];
        starts[(int) (keys[at] >>> 32) + 1]++;
      }
      counts[run]++;
    }
    for (int i = 1; i < starts.length; i++) {
      starts[i] += starts[i - 1];
    }
  }

  private static void countOnce(float[] written, Contractor contractor, Areas areas) {
    long[] seen = new long[Integer.highestOneBit(Math.max(8, written.length * 4 / 3)) * 2];
    int mask = seen.length - 1;
    for (int i = 0; i < written.length; i++) {
      if (written[i] <= 0) {
        written[i] = Float.NaN;
      }
      if (Float.isNaN(written[i])) {
        continue;
      }
      long who = Areas.mixed(((long) contractor.of(i) << 32) | (areas.place(i) & 0xFFFFFFFFL));
      long key = Areas.mixed(who + Float.floatToIntBits(written[i])) | 1;
      int at = (int) (key >>> 32) & mask;
      while (seen[at] != 0 && seen[at] != key) {
        at = (at + 1) & mask;
      }
      if (seen[at] == key) {
        written[i] = Float.NaN;
      }
      seen[at] = key;
    }
  }

  /** How many distinct figures there are. */
  int distinct() {
    return figures.count();
  }

  /** The rank of a figure that counts; greater figures have greater ranks, for all are above 0. */
  int rank(float figure) {
    return figures.code(Float.floatToIntBits(figure));
  }

  /** The figure of a rank. */
  float figure(int rank) {
    return Float.intBitsToFloat((int) figures.key(rank));
  }

  /** Figures of an area. */
  int size(int area) {
    return sizes[area];
  }

  /** The first of the distinct figures of an area; those of the next area follow its last. */
  int start(int area) {
    return starts[area];
  }

  /** The rank of one of the distinct figures of an area. */
  int rankAt(int at) {
    return ranks[at];
  }

  /** How often that stands in the area. */
  int countAt(int at) {
    return counts[at];
  }
}
