package org.wellcurb.crosscheck;

import java.util.Arrays;

/**
 * The figures of one field over a batch, by area. Wells of one street are alike: the same figure of
 * one contractor at one place counts once.
 */
final class FiguresByArea {
  /** Area in the upper half, bits of the figure in the lower. */
  private final long[] keys;

  private final int[] starts;

  /**
   * @param written by record; those that do not count become NaN
   */
  FiguresByArea(float[] written, int[] contractor, Areas areas) {
    countOnce(written, contractor, areas);
    int size = 0;
    for (float figure : written) {
      size += Float.isNaN(figure) ? 0 : 1;
    }
    keys = new long[size];
    starts = new int[areas.count() + 1];
    int at = 0;
    for (int i = 0; i < written.length; i++) {
      if (!Float.isNaN(written[i])) {
        keys[at++] =
            ((long) areas.area(i) << 32) | (Float.floatToIntBits(written[i]) & 0xFFFFFFFFL);
        starts[areas.area(i) + 1]++;
      }
    }
    Arrays.sort(keys);
    for (int i = 1; i < starts.length; i++) {
      starts[i] += starts[i - 1];
    }
  }

  private static void countOnce(float[] written, int[] contractor, Areas areas) {
    long[] seen = new long[Integer.highestOneBit(Math.max(8, written.length * 4 / 3)) * 2];
    int mask = seen.length - 1;
    for (int i = 0; i < written.length; i++) {
      if (written[i] <= 0) {
        written[i] = Float.NaN;
      }
      if (Float.isNaN(written[i]) || areas.place(i) == 0) {
        continue;
      }
      long who = Areas.mixed(((long) contractor[i] << 32) | (areas.place(i) & 0xFFFFFFFFL));
      long key = Areas.mixed(who + Float.floatToIntBits(written[i])) | 1;
      int at = (int) key & mask;
      while (seen[at] != 0 && seen[at] != key) {
        at = (at + 1) & mask;
      }
      if (seen[at] == key) {
        written[i] = Float.NaN;
      }
      seen[at] = key;
    }
  }

  /** What is done with a figure of an area and how often it stands there. */
  interface Each {
    void figure(float figure, int count);
  }

  /** Figures of an area. */
  int size(int area) {
    return starts[area + 1] - starts[area];
  }

  /** Goes through the figures of an area. */
  void each(int area, Each each) {
    for (int at = starts[area]; at < starts[area + 1]; ) {
      int end = at + 1;
      while (end < starts[area + 1] && keys[end] == keys[at]) {
        end++;
      }
      each.figure(Float.intBitsToFloat((int) keys[at]), end - at);
      at = end;
    }
  }
}
