package org.wellcurb.crosscheck;

import java.util.Arrays;

/**
 * The nearest wells of a well, by a grid over latitude and longitude on a sphere: exact enough for
 * a few kilometres.
 */
final class Neighbourhood {
  /** Metres of one degree of latitude on a sphere of the Earth's mean size. */
  private static final double DEGREE = 111_195;

  /** Degrees of latitude of a cell. */
  private static final double CELL = 0.01;

  private static final long COLUMNS = 36_001;

  /** Beyond 80 degrees of latitude degrees of longitude are taken as wide as there. */
  private static final double FLATTEST = 0.1736;

  /** Records of a cell that are looked at: a place that thousands share tells nothing more. */
  private static final int MOST_IN_CELL = 2000;

  /** Records around a well that are looked at all at once. */
  private static final int FEW_AROUND = 64;

  private final float[] latitude;
  private final float[] longitude;
  private final long[] keyed;
  private final int count;
  private final int[] members;

  /**
   * @param usable which records take part
   */
  Neighbourhood(float[] latitude, float[] longitude, boolean[] usable) {
    this.latitude = latitude;
    this.longitude = longitude;
    int n = 0;
    for (boolean each : usable) {
      n += each ? 1 : 0;
    }
    count = n;
    long[] cells = new long[n];
    for (int i = 0, at = 0; i < usable.length; i++) {
      if (usable[i]) {
        cells[at++] = cell(latitude[i], longitude[i]);
      }
    }
    keyed = cells.clone();
    Arrays.sort(keyed);
    members = new int[n];
    int[] taken = new int[n];
    for (int i = 0, at = 0; i < usable.length; i++) {
      if (usable[i]) {
        int start = first(cells[at++]);
        members[start + taken[start]++] = i;
      }
    }
  }

  private static long cell(double latitude, double longitude) {
    return row(latitude) * COLUMNS + column(longitude);
  }

  private static long row(double latitude) {
    return (long) Math.floor((latitude + 90) / CELL);
  }

  private static long column(double longitude) {
    return (long) Math.floor((longitude + 180) / CELL);
  }

  /** First place of this cell in the sorted order; where it would stand if nothing is in it. */
  private int first(long cell) {
    int lo = 0;
    int hi = count;
    while (lo < hi) {
      int middle = (lo + hi) >>> 1;
      if (keyed[middle] < cell) {
        lo = middle + 1;
      } else {
        hi = middle;
      }
    }
    return lo;
  }

  /** Whether a record may be a neighbour. */
  interface Wanted {
    boolean is(int record);
  }

  /**
   * The nearest records. Cells are looked at in rings around the well's own, so that a crowded
   * region costs no more than an empty one.
   *
   * @param into their places, nearest first; of equally near ones the first in the batch
   * @param within metres
   * @return how many there are
   */
  int nearest(int of, int[] into, double within, Wanted wanted) {
    double[] distances = new double[into.length];
    int found = 0;
    double cosine = Math.max(FLATTEST, Math.cos(Math.toRadians(latitude[of])));
    double ringWidth = CELL * DEGREE * cosine;
    long row = row(latitude[of]);
    long column = column(longitude[of]);
    long rings = (long) Math.ceil(within / ringWidth) + 1;
    boolean isSparse = around(row, column, rings) <= FEW_AROUND;
    for (long ring = isSparse ? rings : 0; ring <= rings; ring++) {
      if (found == into.length && distances[found - 1] < (ring - 1) * ringWidth) {
        break;
      }
      for (long r = row - ring; r <= row + ring; r++) {
        boolean isEdge = isSparse || ring == 0 || r == row - ring || r == row + ring;
        long step = isEdge ? 1 : 2 * ring;
        int at = isEdge ? first(r * COLUMNS + column - ring) : 0;
        long last = r * COLUMNS + column + ring;
        if (isEdge && (at == count || keyed[at] > last)) {
          continue;
        }
        for (long c = column - ring; c <= column + ring; c += step) {
          found = cell(r * COLUMNS + c, of, cosine, within, wanted, into, distances, found);
        }
      }
    }
    return found;
  }

  /** Records in the rings around a cell. */
  private int around(long row, long column, long rings) {
    int records = 0;
    for (long r = row - rings; r <= row + rings; r++) {
      long from = r * COLUMNS + column - rings;
      records += first(from + 2 * rings + 1) - first(from);
    }
    return records;
  }

  private int cell(
      long cell,
      int of,
      double cosine,
      double within,
      Wanted wanted,
      int[] into,
      double[] distances,
      int before) {
    int found = before;
    int start = first(cell);
    for (int at = start; at < count && keyed[at] == cell && at - start < MOST_IN_CELL; at++) {
      int other = members[at];
      if (other == of || !wanted.is(other)) {
        continue;
      }
      double north = (latitude[other] - latitude[of]) * DEGREE;
      double east = (longitude[other] - longitude[of]) * DEGREE * cosine;
      double distance = Math.sqrt(north * north + east * east);
      if (distance > within) {
        continue;
      }
      int place = found;
      while (place > 0 && isBefore(distance, other, distances[place - 1], into[place - 1])) {
        if (place < into.length) {
          distances[place] = distances[place - 1];
          into[place] = into[place - 1];
        }
        place--;
      }
      if (place < into.length) {
        distances[place] = distance;
        into[place] = other;
        found = Math.min(into.length, found + 1);
      }
    }
    return found;
  }

  private static boolean isBefore(double distance, int record, double other, int otherRecord) {
    return distance < other || (distance == other && record < otherRecord);
  }
}
