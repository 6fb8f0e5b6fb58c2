package org.wellcurb.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
  private final Map<Long, long[]> cells = new HashMap<>();
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
    next.cells.forEach(
        (key, counts) -> {
          for (int kind = 0; kind < counts.length; kind++) {
            if (counts[kind] > 0) {
              int more = halvings - next.halvings;
              put(row(key) >> more, column(key) >> more, kind, counts[kind]);
            }
          }
        });
    unplaced += next.unplaced;
  }

  private void put(long row, long column, int kind, long count) {
    cells.computeIfAbsent(key(row, column), key -> new long[NONE + 1])[kind] += count;
    while (cells.size() > MOST) {
      coarsen();
    }
  }

  private void coarsen() {
    Map<Long, long[]> fine = new HashMap<>(cells);
    cells.clear();
    halvings++;
    fine.forEach(
        (key, counts) -> {
          long[] into =
              cells.computeIfAbsent(
                  key(row(key) >> 1, column(key) >> 1), each -> new long[NONE + 1]);
          for (int kind = 0; kind < counts.length; kind++) {
            into[kind] += counts[kind];
          }
        });
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

  public void clear() {
    cells.clear();
    halvings = 0;
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

  /** The squares, from south to north and west to east. */
  public List<Cell> all() {
    double step = step();
    List<Cell> all = new ArrayList<>();
    new TreeMap<>(cells)
        .forEach(
            (key, counts) ->
                all.add(
                    new Cell(
                        row(key) * step,
                        column(key) * step,
                        Arrays.stream(counts).boxed().toList())));
    return all;
  }
}
