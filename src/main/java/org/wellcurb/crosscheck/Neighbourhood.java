package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.util.Arrays;
import java.util.BitSet;

/** Wells in the order of a grid over latitude and longitude, row by row, to find those nearby. */
final class Neighbourhood {
  /** Metres of one degree of latitude on a sphere of the Earth's mean size. */
  static final double DEGREE = 111_195;

  /** Degrees of a cell, both ways. */
  static final double CELL = 0.01;

  /** Degrees beyond which a latitude or longitude is none; swapped ones are within. */
  private static final float MOST_DEGREES = 180;

  /** Cells from -180 degrees to 180, both ways. */
  static final int CELLS = 36_001;

  static final int ROW_OF_ZERO = 18_000;

  /** Bits of a key for the row. */
  private static final int ROW_BITS = 16;

  /** Bits of a key for the column, before it is split. */
  private static final int COLUMN_BITS = 16;

  /**
   * By so many bits columns are split at most, so that wells stand nearly in order within a row.
   */
  private static final int MOST_SPLIT = 8;

  /** Records of a cell that may be neighbours: a place that thousands share tells no more. */
  private static final int MOST_IN_CELL = 2000;

  /** Row, split column and record, so that their order is that of the grid. */
  private final LongBuffer keys;

  private final int size;

  private final Columns columns;

  /** Bits of a key for the record. */
  private final int recordBits;

  private final int split;

  private final FloatBuffer latitude;
  private final FloatBuffer longitude;

  /** By place; of equally near wells the one of the least mark is taken first. */
  private final IntBuffer marks;

  /** Where those of each row begin that may be neighbours; the crowded stand behind them all. */
  private final int[] starts = new int[CELLS + 1];

  /**
   * @param latitude by record, in degrees
   * @param longitude by record, in degrees
   * @param usable which records take part, if they have a position
   * @param marks by record, of what it says: so that nothing hangs on the order of rows
   * @param columns where room is made
   */
  Neighbourhood(
      FloatBuffer latitude, FloatBuffer longitude, BitSet usable, IntBuffer marks, Columns columns)
      throws IOException {
    this.columns = columns;
    recordBits = Integer.SIZE - Integer.numberOfLeadingZeros(latitude.capacity());
    split = Math.min(MOST_SPLIT, Long.SIZE - 1 - ROW_BITS - COLUMN_BITS - recordBits);
    keys = columns.longs(usable.cardinality());
    size = sort(latitude, longitude, usable);
    int candidates = crowdedLast(marks);
    for (int at = 0; at < candidates; at++) {
      starts[rowOf(keys.get(at)) + 1]++;
    }
    for (int row = 0; row < CELLS; row++) {
      starts[row + 1] += starts[row];
    }
    this.latitude = inOrder(latitude);
    this.longitude = inOrder(longitude);
    this.marks = inOrder(marks);
  }

  private int sort(FloatBuffer latitude, FloatBuffer longitude, BitSet usable) throws IOException {
    int count = 0;
    for (int i = usable.nextSetBit(0); i >= 0; i = usable.nextSetBit(i + 1)) {
      if (isPosition(latitude.get(i)) && isPosition(longitude.get(i))) {
        long row = (long) Math.floor((latitude.get(i) + 90) / CELL) + ROW_OF_ZERO / 2;
        long column = (long) Math.floor((longitude.get(i) + 180) / CELL * (1 << split));
        keys.put(count++, (((row << (COLUMN_BITS + split)) | column) << recordBits) | i);
      }
    }
    KeySort.sort(keys, count, columns);
    return count;
  }

  private static boolean isPosition(float degrees) {
    return Math.abs(degrees) <= MOST_DEGREES;
  }

  /**
   * Moves those behind that are not the first so many of their cells by mark; counts the others.
   */
  private int crowdedLast(IntBuffer marks) throws IOException {
    LongBuffer crowded = LongBuffer.allocate(0);
    int moved = 0;
    int kept = 0;
    for (int start = 0; start < size; ) {
      int end = start + 1;
      while (end < size && cellOf(keys.get(end)) == cellOf(keys.get(start))) {
        end++;
      }
      long last = end - start <= MOST_IN_CELL ? Long.MAX_VALUE : lastOfCell(start, end, marks);
      for (int at = start; at < end; at++) {
        if (end - start <= MOST_IN_CELL || marked(at, marks) <= last) {
          keys.put(kept++, keys.get(at));
        } else {
          if (moved == crowded.capacity()) {
            crowded = columns.longs(Math.max(1024, 2 * moved)).put(0, crowded, 0, moved);
          }
          crowded.put(moved++, keys.get(at));
        }
      }
      start = end;
    }
    keys.put(kept, crowded, 0, moved);
    return kept;
  }

  /** The last record of a cell that may be a neighbour, with its mark. */
  private long lastOfCell(int start, int end, IntBuffer marks) throws IOException {
    LongBuffer marked = columns.longs(end - start);
    for (int i = 0; i < end - start; i++) {
      marked.put(i, marked(start + i, marks));
    }
    KeySort.sort(marked, end - start, columns);
    return marked.get(MOST_IN_CELL - 1);
  }

  private long marked(int place, IntBuffer marks) {
    return ((long) marks.get(record(place)) << Integer.SIZE) | record(place);
  }

  private long cellOf(long key) {
    return key >>> (recordBits + split);
  }

  private int rowOf(long key) {
    return (int) (key >>> (recordBits + split + COLUMN_BITS));
  }

  /** The cell of the well at a place. */
  int cell(int place) {
    return (int) cellOf(keys.get(place));
  }

  /** Whether a well is taken before another that is as near. */
  boolean isBefore(int place, int other) {
    return marks.get(place) < marks.get(other)
        || (marks.get(place) == marks.get(other) && record(place) < record(other));
  }

  /** How many wells there are. */
  int size() {
    return size;
  }

  /** The record of the well at a place in the order of the grid. */
  int record(int place) {
    return (int) (keys.get(place) & ((1L << recordBits) - 1));
  }

  /** The row of the well at a place. */
  int row(int place) {
    return rowOf(keys.get(place));
  }

  /** Latitudes by place, in degrees. */
  FloatBuffer latitude() {
    return latitude;
  }

  /** Longitudes by place, in degrees. */
  FloatBuffer longitude() {
    return longitude;
  }

  /** Degrees within which wells that follow one another in a row stand in no order. */
  double columnWidth() {
    return CELL / (1 << split);
  }

  /** The place of the first well of a row that may be a neighbour; its last is before the next. */
  int start(int row) {
    return starts[row];
  }

  /** The places at which all rows start. */
  int[] starts() {
    return Arrays.copyOf(starts, CELLS);
  }

  /**
   * The first place in a row that is not west of the column of a well.
   *
   * @param from a place in the row, from which it is looked for: quick if it is a little west
   */
  int first(int row, int of, int from) {
    int shift = recordBits + split + COLUMN_BITS;
    long column = keys.get(of) & ((1L << shift) - 1) & -(1L << recordBits);
    long cell = ((long) row << shift) | column;
    int at = from > starts[row] && keys.get(from - 1) >= cell ? starts[row] : from;
    while (at < starts[row + 1] && keys.get(at) < cell) {
      at++;
    }
    return at;
  }

  /** Values by record as values by place in the order of the grid. */
  FloatBuffer inOrder(FloatBuffer values) throws IOException {
    FloatBuffer ordered = columns.floats(size);
    for (int at = 0; at < size; at++) {
      ordered.put(at, values.get(record(at)));
    }
    return ordered;
  }

  /** Codes by record as codes by place in the order of the grid. */
  IntBuffer inOrder(IntBuffer codes) throws IOException {
    IntBuffer ordered = columns.ints(size);
    for (int at = 0; at < size; at++) {
      ordered.put(at, codes.get(record(at)));
    }
    return ordered;
  }
}
