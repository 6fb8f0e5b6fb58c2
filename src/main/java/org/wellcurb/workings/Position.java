package org.wellcurb.workings;

import static org.wellcurb.workings.Input.halfPlace;
import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** What the two positions on a form say of the distance to the septic system. Degrees, metres. */
public final class Position {
  private static final double NAD27 = Choices.place("site.position_datum", "nad27");
  private static final double OTHER = Choices.place("site.position_datum", "other");

  private static final String LEAST_SLACK = "least_position_slack";
  private static final String SOURCE =
      "Vincenty, Direct and inverse solutions of geodesics on the ellipsoid, 1975 (from memory), on"
          + " WGS 84; held in tests against the library GeographicLib";

  /** Metres in a degree of latitude, near enough for how finely a position is written. */
  private static final double DEGREE = 111_195;

  private Position() {}

  /** NAD 83 stands within 2 m of WGS 84, and both positions alike; the others do not. */
  private static boolean isComparable(double datum) {
    return datum != NAD27 && datum != OTHER;
  }

  /**
   * How far the distance between two positions may be off (m): twice the stated accuracy, or where
   * that is not given (NaN) half of the last written decimal of each; at least {@code least}.
   * Common practice.
   *
   * @param latitude of either position (degrees)
   * @param north half of the last decimal of the latitude of one position (degrees)
   * @param east the same of its longitude
   * @param otherNorth half of the last decimal of the other position's latitude
   * @param otherEast the same of its longitude
   */
  public static double slack(
      double accuracy,
      double latitude,
      double least,
      double north,
      double east,
      double otherNorth,
      double otherEast) {
    double degreeEast = DEGREE * Math.cos(Math.toRadians(latitude));
    double slack =
        Double.isNaN(accuracy)
            ? Math.hypot(north * DEGREE, east * degreeEast)
                + Math.hypot(otherNorth * DEGREE, otherEast * degreeEast)
            : 2 * accuracy;
    return Math.max(slack, least);
  }

  static List<Figure> figures() {
    return List.of(
        new Figure(
            LEAST_SLACK,
            Units.FOOT.toSi(30),
            Units.FOOT,
            "a distance from positions is never taken to be nearer than this",
            "common practice"));
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "septic_distance",
                Units.FOOT,
                Units.METRE,
                "distance from the well to the position of the septic system; to be compared with"
                    + " the one setback that site.septic_position_of names, and a taped distance"
                    + " outranks it; not for NAD 27 or another datum")
            .formula(
                "shortest line from {site.latitude}, {site.longitude} to {site.septic_latitude},"
                    + " {site.septic_longitude}")
            .source(SOURCE)
            .reads(
                required("site.latitude"),
                required("site.longitude"),
                required("site.septic_latitude"),
                required("site.septic_longitude"),
                optional("site.position_datum"))
            .over(
                (lo, hi, out) -> {
                  if (isComparable(lo[4]) && isComparable(hi[4])) {
                    distanceOver(lo, hi, out);
                  } else {
                    out[0] = Double.NaN;
                    out[1] = Double.NaN;
                  }
                })
            .by(x -> isComparable(x[4]) ? Geodesy.distance(x[0], x[1], x[2], x[3]) : Double.NaN),
        Draft.of(
                "septic_distance_slack",
                Units.FOOT,
                Units.METRE,
                "how far septic_distance may be off: both accuracies, or half the last decimals"
                    + " written, and never less than the least")
            .formula("max({least_position_slack}, {both accuracies}); {site.position_accuracy}")
            .reads(
                optional("site.position_accuracy"),
                required("site.latitude"),
                halfPlace("site.latitude"),
                halfPlace("site.longitude"),
                halfPlace("site.septic_latitude"),
                halfPlace("site.septic_longitude"))
            .figures(LEAST_SLACK)
            .turns(Turn.atValue(1, 0))
            .step(
                "both accuracies",
                Units.FOOT,
                Units.METRE,
                x -> slack(x[0], x[1], 0, x[2], x[3], x[4], x[5]))
            .by(Position::slack));
  }

  private static double slack(double[] x) {
    return slack(x[0], x[1], x[6], x[2], x[3], x[4], x[5]);
  }

  private static void distanceOver(double[] lo, double[] hi, double[] out) {
    boolean exact = lo[0] == hi[0] && lo[1] == hi[1] && lo[2] == hi[2] && lo[3] == hi[3];
    if (exact) {
      out[0] = Geodesy.distance(lo[0], lo[1], lo[2], lo[3]);
      out[1] = out[0];
    } else {
      Geodesy.betweenBoxes(lo, hi, out);
    }
  }
}
