package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.LongBuffer;

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

  /** The rank of the figure of each record; of those that do not count, none. */
  private final IntBuffer ofRecord;

  private final IntBuffer ranks;
  private final IntBuffer counts;

  /** Says who wrote the figure of a record, and in which zone: a code. */
  interface Contractor {
    int of(int record);
  }

  /**
   * @param written by record; those that do not count become NaN
   * @param columns where room is made
   */
  FiguresByArea(FloatBuffer written, Contractor contractor, Areas areas, Columns columns)
      throws IOException {
    countOnce(written, contractor, areas, columns);
    int size = 0;
    for (int i = 0; i < written.capacity(); i++) {
      size += Float.isNaN(written.get(i)) ? 0 : 1;
    }
    LongBuffer all = columns.longs(size);
    for (int i = 0, at = 0; i < written.capacity(); i++) {
      if (!Float.isNaN(written.get(i))) {
        all.put(at++, Float.floatToIntBits(written.get(i)));
      }
    }
    LongBuffer spare = columns.longs(size);
    figures = new Distinct(all, spare);
    LongBuffer keys = columns.longs(size);
    ofRecord = columns.ints(written.capacity());
    sizes = new int[areas.count()];
    for (int i = 0, at = 0; i < written.capacity(); i++) {
      if (!Float.isNaN(written.get(i))) {
        int rank = figures.code(Float.floatToIntBits(written.get(i)));
        ofRecord.put(i, rank);
        keys.put(at++, ((long) areas.area(i) << 32) | rank);
        sizes[areas.area(i)]++;
      }
    }
    KeySort.sort(keys, size, spare);
    starts = new int[areas.count() + 1];
    int runs = 0;
    for (int at = 0; at < size; at++) {
      runs += at == 0 || keys.get(at) != keys.get(at - 1) ? 1 : 0;
    }
    ranks = columns.ints(runs);
    counts = columns.ints(runs);
    int run = -1;
    for (int at = 0; at < size; at++) {
      if (at == 0 || keys.get(at) != keys.get(at - 1)) {
        ranks.put(++run, (int) keys.get(at));
        starts[(int) (keys.get(at) >>> 32) + 1]++;
      }
      counts.put(run, counts.get(run) + 1);
    }
    for (int i = 1; i < starts.length; i++) {
      starts[i] += starts[i - 1];
    }
  }

  private static void countOnce(
      FloatBuffer written, Contractor contractor, Areas areas, Columns columns) throws IOException {
    int room = (int) Math.max(8, written.capacity() * 4L / 3);
    LongBuffer seen = columns.longs(Integer.highestOneBit(room) * 2);
    int mask = seen.capacity() - 1;
    for (int i = 0; i < written.capacity(); i++) {
      float figure = written.get(i);
      if (!(figure > 0)) {
        written.put(i, Float.NaN);
        continue;
      }
      long who = Areas.mixed(((long) contractor.of(i) << 32) | (areas.place(i) & 0xFFFFFFFFL));
      long key = Areas.mixed(who + Float.floatToIntBits(figure)) | 1;
      int at = (int) (key >>> 32) & mask;
      while (seen.get(at) != 0 && seen.get(at) != key) {
        at = (at + 1) & mask;
      }
      if (seen.get(at) == key) {
        written.put(i, Float.NaN);
      }
      seen.put(at, key);
    }
  }

  /** How many distinct figures there are. */
  int distinct() {
    return figures.count();
  }

  /** The rank of a record's figure that counts; greater figures have greater ranks. */
  int rank(int record) {
    return ofRecord.get(record);
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
    return ranks.get(at);
  }

  /** How often that stands in the area. */
  int countAt(int at) {
    return counts.get(at);
  }
}
