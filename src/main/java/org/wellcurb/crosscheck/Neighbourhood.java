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

  private final float[] latitude;
  private final float[] longitude;
  private final long[] keyed;
  private final int count;
  private final long[] cells;
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
    cells = new long[n];
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
   * The nearest records.
   *
   * @param into their places, nearest first
   * @param within metres
   * @return how many there are
   */
  int nearest(int of, int[] into, double within, Wanted wanted) {
    double[] distances = new double[into.length];
    int found = 0;
    double cosine = Math.max(0.01, Math.cos(Math.toRadians(latitude[of])));
    double latitudeReach = within / DEGREE;
    double longitudeReach = latitudeReach / cosine;
    for (long r = row(latitude[of] - latitudeReach); r <= row(latitude[of] + latitudeReach); r++) {
      long from = r * COLUMNS + column(longitude[of] - longitudeReach);
      long to = r * COLUMNS + column(longitude[of] + longitudeReach);
      for (int at = first(from); at < count && keyed[at] <= to; at++) {
        int other = members[at];
        if (other == of || !wanted.is(other)) {
          continue;
        }
        double north = (latitude[other] - latitude[of]) * DEGREE;
        double east = (longitude[other] - longitude[of]) * DEGREE * cosine;
        double distance = Math.sqrt(north * north + east * east);
        if (distance <= within && (found < into.length || distance < distances[found - 1])) {
          int place = found < into.length ? found++ : found - 1;
          while (place > 0 && distances[place - 1] > distance) {
            distances[place] = distances[place - 1];
            into[place] = into[place - 1];
            place--;
          }
          distances[place] = distance;
          into[place] = other;
        }
      }
    }
    return found;
  }
}
