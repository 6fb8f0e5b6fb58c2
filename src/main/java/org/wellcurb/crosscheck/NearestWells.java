package org.wellcurb.crosscheck;

/**
 * The nearest wells of one well after the other, on a sphere: exact enough for a few kilometres.
 * Who asks in the order of the grid gets each answer from what lies next to the last one in memory.
 * Not for several threads.
 */
final class NearestWells {
  /** Metres of one degree of latitude on a sphere of the Earth's mean size. */
  private static final double DEGREE = 111_195;

  /** Beyond 80 degrees of latitude degrees of longitude are taken as wide as there. */
  private static final double FLATTEST = 0.1736;

  /** Metres by which bounds are widened, since a position has 24 binary places. */
  private static final double SLACK = 2;

  private final Neighbourhood all;
  private final float[] latitude;
  private final float[] longitude;
  private final int[] near;
  private final double[] distances;
  private final double within;

  /** Where the last asked-for well's column began in each row. */
  private final int[] cursors;

  private int found;

  /** No well farther than this is wanted any more: metres, and a little over its square. */
  private double limit;

  private double square;

  private final int[] codes;

  /** Wells of this code are no neighbours. */
  private int but;

  /**
   * @param all the wells
   * @param most neighbours that are asked for
   * @param within metres
   * @param codes by place, something of the wells by which those are told that do not count
   */
  NearestWells(Neighbourhood all, int most, double within, int[] codes) {
    this.all = all;
    latitude = all.latitude();
    longitude = all.longitude();
    cursors = all.starts();
    near = new int[most];
    distances = new double[most];
    this.within = within;
    this.codes = codes;
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
   * @param but code of wells that do not count
   * @return how many there are
   */
  int nearest(int of, int but) {
    this.but = but;
    found = 0;
    limit(within);
    int row = all.row(of);
    double cosine = Math.max(FLATTEST, Math.cos(Math.toRadians(latitude[of])));
    double fromEdge =
        (latitude[of] - (row - Neighbourhood.ROW_OF_ZERO) * Neighbourhood.CELL) * DEGREE;
    look(row, of, cosine);
    for (int rows = 1; ; rows++) {
      double south = fromEdge + (rows - 1) * Neighbourhood.CELL * DEGREE - SLACK;
      double north = rows * Neighbourhood.CELL * DEGREE - fromEdge - SLACK;
      if (south > limit && north > limit) {
        return found;
      }
      if (south <= limit && row >= rows) {
        look(row - rows, of, cosine);
      }
      if (north <= limit && row + rows < Neighbourhood.CELLS) {
        look(row + rows, of, cosine);
      }
    }
  }

  private void limit(double metres) {
    limit = metres;
    square = metres * metres * (1 + 1e-9);
  }

  private void look(int row, int of, double cosine) {
    int end = all.start(row + 1);
    if (all.start(row) == end) {
      return;
    }
    double width = DEGREE * cosine;
    // Wells of a split column stand in no order: one that follows may be nearer by its width.
    double more = all.columnWidth() * width + SLACK;
    int start = all.first(row, of, cursors[row]);
    cursors[row] = start;
    for (int at = start; at < end; at++) {
      if (offer(at, of, width) > limit + more) {
        break;
      }
    }
    for (int at = start - 1; at >= all.start(row); at--) {
      if (-offer(at, of, width) > limit + more) {
        break;
      }
    }
  }

  /** Takes a well if it is nearer than those that were found; gives how far east it is. */
  private double offer(int other, int of, double width) {
    double north = (latitude[other] - latitude[of]) * DEGREE;
    double east = (longitude[other] - longitude[of]) * width;
    double squares = north * north + east * east;
    if (squares <= square && codes[other] != but && other != of) {
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
        || (distance == distances[place] && all.record(other) < all.record(near[place]));
  }
}
