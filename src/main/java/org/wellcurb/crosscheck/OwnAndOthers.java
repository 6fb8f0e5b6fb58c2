package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Gathers what one contractor after the other writes in a zone, and what all others write in the
 * same areas. Counts stand by rank of the figure, and are 0 again after each.
 */
final class OwnAndOthers {
  /** Fewest figures of others in an area for it to be compared. */
  private static final int LEAST_IN_AREA = 15;

  private final FloatBuffer written;
  private final Areas areas;
  private final FiguresByArea all;
  private final Columns columns;
  private final int[] own;
  private final int[] ownHere;
  private final double[] others;

  /**
   * @param written by record, NaN where it does not count
   * @param all the same, by area
   * @param columns where room is made
   */
  OwnAndOthers(FloatBuffer written, Areas areas, FiguresByArea all, Columns columns) {
    this.columns = columns;
    this.written = written;
    this.areas = areas;
    this.all = all;
    own = new int[all.distinct()];
    ownHere = new int[all.distinct()];
    others = new double[all.distinct()];
  }

  /**
   * The habits of the contractor who wrote some records.
   *
   * @param records in input order, from one place to another
   * @param begins places at which a row of equal figures begins, whatever else is left out between
   */
  Habits of(IntBuffer records, int from, int to, BitSet begins) throws IOException {
    int count = to - from;
    LongBuffer keys = columns.longs(count);
    for (int at = 0; at < count; at++) {
      int record = records.get(from + at);
      keys.put(at, ((long) areas.area(record) << 32) | all.rank(record));
    }
    KeySort.sort(keys, count, columns);
    int size = 0;
    double squares = 0;
    int least = all.distinct();
    int most = -1;
    for (int at = 0; at < count; ) {
      int area = (int) (keys.get(at) >>> 32);
      int end = at + 1;
      while (end < count && (int) (keys.get(end) >>> 32) == area) {
        end++;
      }
      int here = end - at;
      int rest = all.size(area) - here;
      if (rest >= LEAST_IN_AREA) {
        double weight = (double) here / rest;
        size += here;
        squares += weight * here;
        add(keys, at, end, area, weight);
        least = Math.min(least, all.rankAt(all.start(area)));
        most = Math.max(most, all.rankAt(all.start(area + 1) - 1));
      }
      at = end;
    }
    double worth = size == 0 ? 0 : (double) size * size / squares;
    Habits habits = new Habits(size, worth, ownFigures(least, most), othersFigures(least, most));
    row(habits, records, from, to, begins);
    return habits;
  }

  private void row(Habits habits, IntBuffer records, int from, int to, BitSet begins) {
    Map<Integer, Integer> own = new HashMap<>();
    for (int at = from; at < to; at++) {
      own.merge(areas.area(records.get(at)), 1, Integer::sum);
    }
    LongestRow row = habits.row();
    boolean isNew = true;
    for (int at = from; at < to; at++) {
      int area = areas.area(records.get(at));
      isNew |= begins.get(at);
      // What is not compared lengthens no row: its share is not known.
      if (all.size(area) - own.getOrDefault(area, 0) >= LEAST_IN_AREA) {
        row.add(at, written.get(records.get(at)), isNew);
        isNew = false;
      }
    }
    float reach = habits.reach(row.figure());
    Set<Integer> through = new HashSet<>();
    for (int at = row.last(), left = row.length(); left > 0; at--) {
      int area = areas.area(records.get(at));
      int others = all.size(area) - own.getOrDefault(area, 0);
      left -= others >= LEAST_IN_AREA ? 1 : 0;
      if (others >= LEAST_IN_AREA && through.add(area)) {
        int same = around(area, row.figure(), reach);
        for (int each = from; each < to; each++) {
          float figure = written.get(records.get(each));
          boolean isSame = Math.abs(figure - row.figure()) <= reach;
          same -= areas.area(records.get(each)) == area && isSame ? 1 : 0;
        }
        row.isNearby((same + 0.5) / (others + 1.0));
      }
    }
  }

  /** Figures of an area that are so near to one. */
  private int around(int area, float figure, float reach) {
    int sum = 0;
    for (int at = all.start(area); at < all.start(area + 1); at++) {
      sum += Math.abs(all.figure(all.rankAt(at)) - figure) <= reach ? all.countAt(at) : 0;
    }
    return sum;
  }

  private void add(LongBuffer keys, int from, int to, int area, double weight) {
    for (int at = from; at < to; at++) {
      own[(int) keys.get(at)]++;
      ownHere[(int) keys.get(at)]++;
    }
    for (int at = all.start(area); at < all.start(area + 1); at++) {
      int rank = all.rankAt(at);
      // Where all are its own, 0 is added: such a figure is not one of the others'.
      others[rank] += weight * (all.countAt(at) - ownHere[rank]);
    }
    for (int at = from; at < to; at++) {
      ownHere[(int) keys.get(at)] = 0;
    }
  }

  private Figures ownFigures(int least, int most) {
    Figures figures = new Figures();
    for (int rank = least; rank <= most; rank++) {
      if (own[rank] != 0) {
        figures.add(all.figure(rank), own[rank]);
        own[rank] = 0;
      }
    }
    return figures;
  }

  private Figures othersFigures(int least, int most) {
    Figures figures = new Figures();
    for (int rank = least; rank <= most; rank++) {
      if (others[rank] != 0) {
        figures.add(all.figure(rank), others[rank]);
        others[rank] = 0;
      }
    }
    return figures;
  }
}
