package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Counts, for each group, the wells that are off by the factor and the places where the middle one
 * of its wells is, and tests the places: wells of one place have the same neighbours, so that many
 * of them tell no more than one.
 */
final class SlipTests {
  private static final int WAYS = 2;

  private final int[] sizes;
  private final int[] places;

  /** By way and group, wells and places that are off. */
  private final int[][] wells;

  private final int[][] off;
  private final double[] middle;
  private final long[] allOff = new long[WAYS];
  private long allPlaces;

  /** Groups that were found off, and are no measure of others. */
  private final boolean[] isFound;

  /**
   * @param own group of each well, by place in the grid; less than 0 for none
   * @param ratios logarithm of its depth over that of its neighbours; NaN where it is not known
   * @param columns where room is made
   */
  SlipTests(
      Neighbourhood all, IntBuffer own, FloatBuffer ratios, boolean[] isFound, Columns columns)
      throws IOException {
    int groups = isFound.length;
    this.isFound = isFound;
    sizes = new int[groups];
    places = new int[groups];
    wells = new int[WAYS][groups];
    off = new int[WAYS][groups];
    middle = new double[groups];
    int[] ends = new int[groups + 1];
    for (int at = 0; at < all.size(); at++) {
      if (!Float.isNaN(ratios.get(at))) {
        ends[own.get(at) + 1]++;
        sizes[own.get(at)]++;
      }
    }
    for (int group = 0; group < groups; group++) {
      ends[group + 1] += ends[group];
    }
    LongBuffer keys = columns.longs(ends[groups]);
    LongBuffer spare = columns.longs(ends[groups]);
    int[] next = ends.clone();
    for (int at = 0; at < all.size(); at++) {
      if (!Float.isNaN(ratios.get(at))) {
        keys.put(next[own.get(at)]++, ((long) all.cell(at) << Integer.SIZE) | at);
      }
    }
    for (int group = 0; group < groups; group++) {
      KeySort.sort(keys, ends[group], ends[group + 1], spare);
      count(keys, ends[group], ends[group + 1], ratios, group);
      middle[group] = middle(keys, ends[group], ends[group + 1], ratios, spare);
      if (!isFound[group]) {
        allPlaces += places[group];
        for (int way = 0; way < WAYS; way++) {
          allOff[way] += off[way][group];
        }
      }
    }
  }

  private void count(LongBuffer keys, int from, int to, FloatBuffer ratios, int group) {
    double[] here = new double[16];
    for (int start = from; start < to; ) {
      int end = start;
      int count = 0;
      while (end < to && keys.get(end) >> Integer.SIZE == keys.get(start) >> Integer.SIZE) {
        here = count == here.length ? Arrays.copyOf(here, 2 * count) : here;
        here[count++] = ratios.get((int) keys.get(end++));
        add(wells, here[count - 1], group);
      }
      add(off, Spread.median(here, count), group);
      places[group]++;
      start = end;
    }
  }

  /** The median ratio of a group. Its keys are used up. */
  private static double middle(
      LongBuffer keys, int from, int to, FloatBuffer ratios, LongBuffer spare) {
    if (from == to) {
      return Double.NaN;
    }
    for (int at = from; at < to; at++) {
      keys.put(at, Spread.ordered(ratios.get((int) keys.get(at))) & 0xFFFFFFFFL);
    }
    KeySort.sort(keys, from, to, spare);
    float upper = Spread.value((int) keys.get(from + (to - from) / 2));
    return (to - from) % 2 == 1
        ? upper
        : ((double) Spread.value((int) keys.get(from + (to - from) / 2 - 1)) + upper) / 2;
  }

  private static void add(int[][] counts, double ratio, int group) {
    byte way = UnitSlips.way(ratio);
    if (way != 0) {
      counts[way - UnitSlips.SHALLOW][group]++;
    }
  }

  private boolean isAble(int group) {
    return sizes[group] >= UnitSlips.LEAST && places[group] >= UnitSlips.LEAST_PLACES;
  }

  /** All tests, by group. */
  List<UnitSlips.Tried> all() {
    double[] spreads = new double[WAYS];
    for (int way = 0; way < WAYS; way++) {
      spreads[way] = spread(way);
    }
    List<UnitSlips.Tried> tried = new ArrayList<>();
    for (int group = 0; group < sizes.length; group++) {
      for (int way = 0; way < WAYS && isAble(group); way++) {
        double others = others(way, group);
        double p = Copying.tail(off[way][group], places[group], others, spreads[way]);
        boolean isMarked =
            Math.abs(Math.abs(middle[group]) - UnitSlips.FACTOR) <= UnitSlips.NEAR_MIDDLE
                && wells[way][group] >= UnitSlips.LEAST_SHARE * sizes[group]
                && off[way][group] >= UnitSlips.LEAST_SHARE * places[group];
        tried.add(
            new UnitSlips.Tried(
                group,
                wells[way][group],
                sizes[group],
                places[group],
                off[way][group],
                way == 0,
                Math.exp(middle[group]),
                others,
                p,
                isMarked));
      }
    }
    return tried;
  }

  /** Share of places that are off, of all other groups that were not found off. */
  private double others(int way, int group) {
    long own = isFound[group] ? 0 : 1;
    long hits = allOff[way] - own * off[way][group];
    return (hits + 0.5) / (allPlaces - own * places[group] + 1.0);
  }

  /** How much more than by chance groups differ anyway. */
  private double spread(int way) {
    double[] squares = new double[sizes.length];
    int count = 0;
    for (int group = 0; group < sizes.length; group++) {
      if (isAble(group) && !isFound[group]) {
        squares[count++] = Copying.square(off[way][group], places[group], others(way, group));
      }
    }
    return Math.min(Rates.MOST_SPREAD, Copying.spread(squares, count));
  }
}
