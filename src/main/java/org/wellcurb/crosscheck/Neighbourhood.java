package org.wellcurb.crosscheck;

import java.util.Arrays;

/**
 * Wells in the order of a grid over latitude and longitude, row by row, and the nearest wells of
 * each on a sphere: exact enough for a few kilometres. Who asks for one well after the other in
 * this order gets each answer from what lies next to the last one in memory.
 */
final class Neighbourhood {
  /** Metres of one degree of latitude on a sphere of the Earth's mean size. */
  private static final double DEGREE = 111_195;

  /** Degrees of a cell, both ways. */
  private static final double CELL = 0.01;

  /** Degrees beyond which a latitude or longitude is none; swapped ones are within. */
  private static final float MOST_DEGREES = 180;

  /** Cells from -180 degrees to 180, both ways. */
  private static final int CELLS = 36_001;

  private static final int ROW_OF_ZERO = 18_000;

  /** Bits of a key for the row. */
  private static final int ROW_BITS = 16;

  /** Bits of a key for the column, before it is split. */
  private static final int COLUMN_BITS = 16;

  /** By so many bits columns are split at most, so that wells stand nearly in order within a row. */
  private static final int MOST_SPLIT = 8;

  /** Beyond 80 degrees of latitude degrees of longitude are taken as wide as there. */
  private static final double FLATTEST = 0.1736;

  /** Records of a cell that may be neighbours: a place that thousands share tells no more. */
  private static final int MOST_IN_CELL = 2000;

  /** Metres by which bounds are widened, since a position has 24 binary places. */
  private static final double SLACK = 2;

  /** Row, split column and record, so that their order is that of the grid. */
  private final long[] keys;

  /** Bits of a key for the record. */
  private final int recordBits;

  private final int split;

  private final float[] latitude;
  private final float[] longitude;

  /** How many of them may be neighbours; those that are too many in their cells stand behind. */
  private final int candidates;

  /** Where the candidates of each row begin. */
  private final int[] starts = new int[CELLS + 1];

  /**
   * @param latitude by record, in degrees
   * @param longitude by record, in degrees
   * @param usable which records take part, if they have a position
   */
  Neighbourhood(float[] latitude, float[] longitude, boolean[] usable) {
    recordBits = Integer.SIZE - Integer.numberOfLeadingZeros(usable.length);
    split = Math.min(MOST_SPLIT, Long.SIZE - 1 - ROW_BITS - COLUMN_BITS - recordBits);
    keys = sorted(latitude, longitude, usable);
    candidates = crowdedLast();
    for (int at = 0; at < candidates; at++) {
      starts[row(keys[at]) + 1]++;
    }
    for (int row = 0; row < CELLS; row++) {
      starts[row + 1] += starts[row];
    }
    this.latitude = inOrder(latitude);
    this.longitude = inOrder(longitude);
  }

  private long[] sorted(float[] latitude, float[] longitude, boolean[] usable) {
    long[] keys = new long[usable.length];
    int count = 0;
    for (int i = 0; i < usable.length; i++) {
      if (usable[i] && isPosition(latitude[i]) && isPosition(longitude[i])) {
        long row = (long) Math.floor((latitude[i] + 90) / CELL) + ROW_OF_ZERO / 2;
        long column = (long) Math.floor((longitude[i] + 180) / CELL * (1 << split));
        keys[count++] = (((row << (COLUMN_BITS + split)) | column) << recordBits) | i;
      }
    }
    keys = Arrays.copyOf(keys, count);
    KeySort.sort(keys, count);
    return keys;
  }

  private static boolean isPosition(float degrees) {
    return Math.abs(degrees) <= MOST_DEGREES;
  }

  /** Moves those behind that are beyond the first so many of their cells; counts the others. */
  private int crowdedLast() {
    long[] crowded = new long[0];
    int moved = 0;
    int kept = 0;
    for (int start = 0; start < keys.length; ) {
      int end = start + 1;
      while (end < keys.length && cell(keys[end]) == cell(keys[start])) {
        end++;
      }
      int last = end - start <= MOST_IN_CELL ? Integer.MAX_VALUE : lastOfCell(start, end);
      for (int at = start; at < end; at++) {
        if (record(at) <= last) {
          keys[kept++] = keys[at];
        } else {
          if (moved == crowded.length) {
            crowded = Arrays.copyOf(crowded, Math.max(1024, 2 * moved));
          }
          crowded[moved++] = keys[at];
        }
      }
      start = end;
    }
    System.arraycopy(crowded, 0, keys, kept, moved);
    return kept;
  }

  /** The last record of a cell that may be a neighbour. */
  private int lastOfCell(int start, int end) {
    int[] records = new int[end - start];
    Arrays.setAll(records, i -> record(start + i));
    Arrays.sort(records);
    return records[MOST_IN_CELL - 1];
  }

  private long cell(long key) {
    return key >>> (recordBits + split);
  }

  private int row(long key) {
    return (int) (key >>> (recordBits + split + COLUMN_BITS));
  }

  /** How many wells there are. */
  int size() {
    return keys.length;
  }

  /** The record of the well at a place in the order of the grid. */
  int record(int place) {
    return (int) (keys[place] & ((1L << recordBits) - 1));
  }

  /** Values by record as values by place in the order of the grid. */
  float[] inOrder(float[] values) {
    float[] ordered = new float[keys.length];
    for (int at = 0; at < ordered.length; at++) {
      ordered[at] = values[record(at)];
    }
    return ordered;
  }

  /** Codes by record as codes by place in the order of the grid. */
  int[] inOrder(int[] codes) {
    int[] ordered = new int[keys.length];
    for (int at = 0; at < ordered.length; at++) {
      ordered[at] = codes[record(at)];
    }
    return ordered;
  }

  /** Whether a well may be a neighbour. */
  interface Wanted {
    boolean is(int place);
  }

  /** Asks for the nearest of one well after the other; not for several threads. */
  final class Walk {
    private final int[] near;
    private final double[] distances;
    private final double within;

    /** Where the last asked-for well's column began in each row. */
    private final int[] cursors = Arrays.copyOf(starts, CELLS);

    private int found;

    /** No well farther than this is wanted any more: metres, and a little over its square. */
    private double limit;

    private double square;

    /**
     * @param most neighbours that are asked for
     * @param within metres
     */
    Walk(int most, double within) {
      near = new int[most];
      distances = new double[most];
      this.within = within;
    }

    /** The place of one of those that were found. */
    int near(int i) {
      return near[i];
    }

    /**
     * Finds the nearest wells, nearest first; of equally near ones the first in the batch. Rows are
     * looked at outward from the well's own, and each row outward from its column, until nothing
     * nearer can follow.
     *
     * @return how many there are
     */
    int nearest(int of, Wanted wanted) {
      found = 0;
      limit(within);
      int row = row(keys[of]);
      double cosine = Math.max(FLATTEST, Math.cos(Math.toRadians(latitude[of])));
      double fromEdge = (latitude[of] - (row - ROW_OF_ZERO) * CELL) * DEGREE;
      look(row, of, cosine, wanted);
      for (int rows = 1; ; rows++) {
        double south = fromEdge + (rows - 1) * CELL * DEGREE - SLACK;
        double north = rows * CELL * DEGREE - fromEdge - SLACK;
        if (south > limit && north > limit) {
          return found;
        }
        if (south <= limit && row >= rows) {
          look(row - rows, of, cosine, wanted);
        }
        if (north <= limit && row + rows < CELLS) {
          look(row + rows, of, cosine, wanted);
        }
      }
    }

    private void limit(double metres) {
      limit = metres;
      square = metres * metres * (1 + 1e-9);
    }

    private void look(int row, int of, double cosine, Wanted wanted) {
      if (starts[row] == starts[row + 1]) {
        return;
      }
      double width = DEGREE * cosine;
      // Wells of a split column stand in no order: one that follows may be nearer by its width.
      double more = CELL / (1 << split) * width + SLACK;
      int start = first(row, keys[of]);
      for (int at = start; at < starts[row + 1]; at++) {
        if (offer(at, of, width, wanted) > limit + more) {
          break;
        }
      }
      for (int at = start - 1; at >= starts[row]; at--) {
        if (-offer(at, of, width, wanted) > limit + more) {
          break;
        }
      }
    }

    /** The first well of a row that stands in the column of another well, or beyond it. */
    private int first(int row, long key) {
      int shift = recordBits + split + COLUMN_BITS;
      long column = key & ((1L << shift) - 1) & -(1L << recordBits);
      long cell = ((long) row << shift) | column;
      int at = cursors[row];
      if (at > starts[row] && keys[at - 1] >= cell) {
        at = starts[row];
      }
      while (at < starts[row + 1] && keys[at] < cell) {
        at++;
      }
      cursors[row] = at;
      return at;
    }

    /** Takes a well if it is nearer than those that were found; gives how far east it is. */
    private double offer(int other, int of, double width, Wanted wanted) {
      double north = (latitude[other] - latitude[of]) * DEGREE;
      double east = (longitude[other] - longitude[of]) * width;
      double squares = north * north + east * east;
      if (squares <= square && other != of && wanted.is(other)) {
        double distance = Math.sqrt(squares);
        if (distance <= limit) {
          take(other, distance);
        }
      }
      return east;
    }

    private void take(int other, double distance) {
      int place = found;
      while (place > 0 && isBefore(distance, other, place - 1)) {
        if (place < near.length) {
          distances[place] = distances[place - 1];
          near[place] = near[place - 1];
        }
        place--;
      }
      if (place < near.length) {
        distances[place] = distance;
        near[place] = other;
        found = Math.min(near.length, found + 1);
        if (found == near.length) {
          limit(distances[found - 1]);
        }
      }
    }

    private boolean isBefore(double distance, int other, int place) {
      return distance < distances[place]
          || (distance == distances[place] && record(other) < record(near[place]));
    }
  }
}
