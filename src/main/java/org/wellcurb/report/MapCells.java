package org.wellcurb.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.rulepack.FindingKind;

/**
 * How many records stand in each square of a map, by the gravest kind of finding that they have.
 * Where there are too many squares for a page, four are made one, again and again; what comes out
 * does not hang on the order in which records went in.
 */
public final class MapCells {
  /** Place in the counts of a square of records without a finding. */
  public static final int NONE = FindingKind.values().length;

  /** Squares of a page, at most. */
  public static final int MOST = 1200;

  private final double finest;
  private final SquareCounts cells = new SquareCounts(NONE + 1);
  private int halvings;
  private long unplaced;

  /**
   * @param metres no square is smaller than this
   */
  public MapCells(double metres) {
    finest = Math.max(1, metres) / 111_195;
  }

  /**
   * Counts a record.
   *
   * @param gravest ordinal of the gravest kind of its findings; {@link #NONE} if it has none
   */
  public void add(Place place, int gravest) {
    double step = finest * (1L << halvings);
    put(
        (long) Math.floor(place.latitude() / step),
        (long) Math.floor(place.longitude() / step),
        gravest,
        1);
  }

  /** Counts a record with a finding that gives no position that can be shown. */
  public void unplaced() {
    unplaced++;
  }

  /** Adds what the next part counted. */
  public void add(MapCells next) {
    while (halvings < next.halvings) {
      coarsen();
    }
    for (int slot = next.cells.next(0); slot >= 0; slot = next.cells.next(slot + 1)) {
      long key = next.cells.key(slot);
      for (int kind = 0; kind <= NONE; kind++) {
        long count = next.cells.count(slot, kind);
        if (count > 0) {
          // More may be needed while they go in.
          int more = halvings - next.halvings;
          put(row(key) >> more, column(key) >> more, kind, count);
        }
      }
    }
    unplaced += next.unplaced;
  }

  private void put(long row, long column, int kind, long count) {
    cells.add(key(row, column), kind, count);
    while (cells.size() > MOST) {
      coarsen();
    }
  }

  private void coarsen() {
    halvings++;
    SquareCounts fine = cells.take();
    for (int slot = fine.next(0); slot >= 0; slot = fine.next(slot + 1)) {
      long key = key(row(fine.key(slot)) >> 1, column(fine.key(slot)) >> 1);
      for (int kind = 0; kind <= NONE; kind++) {
        cells.add(key, kind, fine.count(slot, kind));
      }
    }
  }

  private static long key(long row, long column) {
    return (row << 32) | (column & 0xFFFFFFFFL);
  }

  private static long row(long key) {
    return key >> 32;
  }

  private static long column(long key) {
    return (int) key;
  }

  /**
   * Forgets what was counted, but not how large squares had to be made: whatever these counts were
   * added to has squares as large, and larger ones need not be made again.
   */
  public void clear() {
    cells.clear();
    unplaced = 0;
  }

  /** Degrees of latitude, and of longitude, of a square. */
  public double step() {
    return finest * (1L << halvings);
  }

  /** Records with a finding and without a position. */
  public long withoutPlace() {
    return unplaced;
  }

  /** A square: its south-west corner in degrees, and its counts by gravest kind. */
  public record Cell(double south, double west, List<Long> counts) {
    public Cell {
      counts = List.copyOf(counts);
    }
  }

  /** The square of a place, among those that {@link #all()} gives; null where it is none. */
  public @Nullable Cell of(Place place, List<Cell> all) {
    double step = step();
    long row = (long) Math.floor(place.latitude() / step);
    long column = (long) Math.floor(place.longitude() / step);
    int at =
        Collections.binarySearch(
            all,
            new Cell(row * step, column * step, List.of()),
            Comparator.<Cell>comparingLong(cell -> Math.round(cell.south() / step))
                .thenComparingLong(cell -> Math.round(cell.west() / step)));
    return at < 0 ? null : all.get(at);
  }

  /** The squares, from south to north and west to east. */
  public List<Cell> all() {
    double step = step();
    List<Cell> all = new ArrayList<>();
    for (int slot : cells.inOrder()) {
      List<Long> counts = new ArrayList<>();
      for (int kind = 0; kind <= NONE; kind++) {
        counts.add(cells.count(slot, kind));
      }
      long key = cells.key(slot);
      all.add(new Cell(row(key) * step, column(key) * step, counts));
    }
    return all;
  }
}
