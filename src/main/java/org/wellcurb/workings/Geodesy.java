package org.wellcurb.workings;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;

/**
 * Distances on the WGS 84 ellipsoid, between points and between boxes of latitude and longitude.
 * Degrees and metres. By {@link ShortestLine}, which makes no objects; points that it does not
 * settle for, nearly opposite one another on the globe, are left to the library GeographicLib
 * (Karney, Algorithms for geodesics, Journal of Geodesy 2013, from memory).
 */
public final class Geodesy {
  /** Boxes that may be farther apart in longitude than this are not compared. */
  private static final double QUARTER = 90;

  private static final int STEPS = 80;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private Geodesy() {}

  /** Length of the shortest line between two points (m); NaN where a latitude is beyond a pole. */
  public static double distance(double lat1, double lon1, double lat2, double lon2) {
    if (!(Math.abs(lat1) <= 90 && Math.abs(lat2) <= 90)) {
      return Double.NaN;
    }
    double east = Math.IEEEremainder(lon2 - lon1, 360);
    double length = ShortestLine.length(lat1, lat2, east);
    return Double.isNaN(length) && !Double.isNaN(east)
        ? Geodesic.WGS84.Inverse(lat1, 0, lat2, east, GeodesicMask.DISTANCE).s12
        : length;
  }

  /**
   * Least and greatest distance between two boxes (m), of which {@code lo} and {@code hi} hold
   * latitude and longitude, then those of the other. NaN in both where a box runs on without end or
   * they may be more than 90 degrees of longitude apart.
   *
   * <p>At given latitudes the distance grows with the difference of longitude up to 180 degrees, so
   * only its least and greatest count. Along a meridian within 90 degrees it has one least value
   * and no greatest but at the ends; so the greatest lies at corners and the least is found by
   * golden section, hemisphere by hemisphere, for across the equator there are two.
   */
  static void betweenBoxes(double[] lo, double[] hi, double[] out) {
    double from = lo[3] - hi[1];
    double to = hi[3] - lo[1];
    double turn = 360 * Math.rint((from + to) / 720);
    from -= turn;
    to -= turn;
    double near = from <= 0 && to >= 0 ? 0 : Math.min(Math.abs(from), Math.abs(to));
    double far = Math.max(Math.abs(from), Math.abs(to));
    if (!(far <= QUARTER)) {
      out[0] = Double.NaN;
      out[1] = Double.NaN;
      return;
    }
    double greatest = 0;
    for (int corner = 0; corner < 4; corner++) {
      double lat1 = (corner & 1) == 0 ? lo[0] : hi[0];
      double lat2 = (corner & 2) == 0 ? lo[2] : hi[2];
      greatest = Math.max(greatest, distance(lat1, 0, lat2, far));
    }
    double least = Double.POSITIVE_INFINITY;
    for (int part = 0; part < 4; part++) {
      double lo1 = (part & 1) == 0 ? lo[0] : Math.max(lo[0], 0);
      double hi1 = (part & 1) == 0 ? Math.min(hi[0], 0) : hi[0];
      double lo2 = (part & 2) == 0 ? lo[2] : Math.max(lo[2], 0);
      double hi2 = (part & 2) == 0 ? Math.min(hi[2], 0) : hi[2];
      if (lo1 <= hi1 && lo2 <= hi2) {
        least = Math.min(least, least(lo1, hi1, lo2, hi2, near));
      }
    }
    out[0] = Double.isNaN(greatest) ? Double.NaN : least;
    out[1] = greatest;
  }

  /** Least distance between two stretches of meridian on one side of the equator each. */
  private static double least(double lo1, double hi1, double lo2, double hi2, double apart) {
    if (apart == 0 && lo1 <= hi2 && lo2 <= hi1) {
      return 0;
    }
    double a = lo1;
    double b = hi1;
    double least = Math.min(toMeridian(a, lo2, hi2, apart), toMeridian(b, lo2, hi2, apart));
    for (int step = 0; a < b && step < STEPS; step++) {
      double left = b - GOLDEN * (b - a);
      double right = a + GOLDEN * (b - a);
      double atLeft = toMeridian(left, lo2, hi2, apart);
      double atRight = toMeridian(right, lo2, hi2, apart);
      least = Math.min(least, Math.min(atLeft, atRight));
      if (atLeft < atRight) {
        b = right;
      } else {
        a = left;
      }
    }
    return least;
  }

  /** Least distance from a point to a stretch of meridian. */
  private static double toMeridian(double lat, double lo, double hi, double apart) {
    double a = lo;
    double b = hi;
    double least = Math.min(distance(lat, 0, a, apart), distance(lat, 0, b, apart));
    for (int step = 0; a < b && step < STEPS; step++) {
      double left = b - GOLDEN * (b - a);
      double right = a + GOLDEN * (b - a);
      double atLeft = distance(lat, 0, left, apart);
      double atRight = distance(lat, 0, right, apart);
      least = Math.min(least, Math.min(atLeft, atRight));
      if (atLeft < atRight) {
        b = right;
      } else {
        a = left;
      }
    }
    return least;
  }
}
