package org.wellcurb.crosscheck;

import java.nio.FloatBuffer;
import java.nio.IntBuffer;

/**
 * The nearest wells of one well after the other, on a sphere: exact enough for a few kilometres.
 * Who asks in the order of the grid gets each answer from what lies next to the last one in memory.
 * Not for several threads.
 */
final class NearestWells {
  /** The code of wells that are no neighbours of any. */
  static final int NEVER = Integer.MIN_VALUE;

  /** The kind of wells of which there may be any number among the neighbours. */
  static final int NO_KIND = -1;

  private static final double DEGREE = Neighbourhood.DEGREE;

  /** Beyond 80 degrees of latitude degrees of longitude are taken as wide as there. */
  private static final double FLATTEST = 0.1736;

  /** Metres by which bounds are widened, since a position has 24 binary places. */
  private static final double SLACK = 2;

  private final Neighbourhood all;
  private final FloatBuffer latitude;
  private final FloatBuffer longitude;
  private final int[] near;
  private final double[] distances;
  private final double within;

  /** Where the last asked-for well's column began in each row. */
  private final int[] cursors;

  private int found;

  /** No well farther than this is wanted any more: metres, and a little over its square. */
  private double limit;

  private double square;

  private final IntBuffer codes;

  /** By place; empty where any number of neighbours may be of one kind. */
  private final IntBuffer kinds;

  private final int mostOfKind;

  /** Wells of this code are no neighbours. */
  private int but;

  /** Where the well stands whose neighbours are looked for, in degrees. */
  private float latitudeOf;

  private float longitudeOf;

  /**
   * @param all the wells
   * @param most neighbours that are asked for
   * @param within metres
   * @param codes by place, something of the wells by which those are told that do not count
   */
  NearestWells(Neighbourhood all, int most, double within, IntBuffer codes) {
    this(all, most, within, codes, IntBuffer.allocate(0), most);
  }

  /**
   * The same, where few neighbours may be of one kind.
   *
   * @param kinds by place; {@link #NO_KIND} for wells of none
   * @param mostOfKind neighbours of one kind, at most
   */
  NearestWells(
      Neighbourhood all,
      int most,
      double within,
      IntBuffer codes,
      IntBuffer kinds,
      int mostOfKind) {
    this.all = all;
    this.kinds = kinds;
    this.mostOfKind = mostOfKind;
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
   * Finds the nearest wells, nearest first; of equally near ones as their marks stand. Rows are
   * looked at outward from the well's own, and each row outward from its column, until nothing
   * nearer can follow.
   *
   * @param but code of wells that do not count
   * @return how many there are
   */
  int nearest(int of, int but) {
    this.but = but;
    latitudeOf = latitude.get(of);
    longitudeOf = longitude.get(of);
    found = 0;
    limit(within);
    int row = all.row(of);
    double cosine = Math.max(FLATTEST, Math.cos(Math.toRadians(latitudeOf)));
    double fromEdge =
        (latitudeOf - (row - Neighbourhood.ROW_OF_ZERO) * Neighbourhood.CELL) * DEGREE;
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
    double north = (latitude.get(other) - latitudeOf) * DEGREE;
    double east = (longitude.get(other) - longitudeOf) * width;
    double squares = north * north + east * east;
    if (squares <= square && other != of) {
      int code = codes.get(other);
      double distance = Math.sqrt(squares);
      if (code != but && code != NEVER && distance <= limit) {
        take(other, distance);
      }
    }
    return east;
  }

  private void take(int other, double distance) {
    int place = found;
    while (place > 0 && isBefore(distance, other, place - 1)) {
      place--;
    }
    int last = kinds.capacity() == 0 ? found : lastToMove(place, kinds.get(other));
    if (place >= near.length || last < place) {
      return;
    }
    last = Math.min(last, near.length - 1);
    for (int i = last; i > place; i--) {
      distances[i] = distances[i - 1];
      near[i] = near[i - 1];
    }
    distances[place] = distance;
    near[place] = other;
    found = Math.max(found, last + 1);
    if (found == near.length) {
      limit(distances[found - 1]);
    }
  }

  /**
   * Up to where those found make way for one that comes to a place: to the end, or to the last of
   * its kind, if there are as many of it as may be; less than the place if all of them are nearer.
   */
  private int lastToMove(int place, int kind) {
    int ofKind = 0;
    int last = -1;
    for (int i = 0; i < found && kind != NO_KIND; i++) {
      if (kinds.get(near[i]) == kind) {
        ofKind++;
        last = i;
      }
    }
    return ofKind < mostOfKind ? found : last < place ? -1 : last;
  }

  private boolean isBefore(double distance, int other, int place) {
    return distance < distances[place]
        || (distance == distances[place] && all.isBefore(other, near[place]));
  }
}
