package org.wellcurb.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;

/**
 * Where a record says that its well stands, no finer than is asked for.
 *
 * @param latitude degrees north, WGS 84
 * @param longitude degrees east, WGS 84
 * @param accuracy metres
 */
public record Place(double latitude, double longitude, double accuracy) {
  /** Metres in a degree of latitude on a sphere of the Earth's mean size: enough for a grid. */
  private static final double DEGREE = 111_195;

  private static final int DECIMALS = 6;

  /**
   * The place of a record.
   *
   * @param finest metres: positions are rounded to a grid of this size, so that a map does not show
   *     a household more exactly than it need
   * @return null where the record gives no position, or one in a datum that is some hundred metres
   *     off WGS 84
   */
  public static @Nullable Place of(WellRecord record, double finest) {
    Catalogue catalogue = record.catalogue();
    int lat = catalogue.index("site.latitude");
    int lon = catalogue.index("site.longitude");
    String datum = record.choice(catalogue.index("site.position_datum"));
    // NAD 83 agrees with WGS 84 to a metre or two; others may not, and GeoJSON knows no other.
    if (!record.isGiven(lat)
        || !record.isGiven(lon)
        || !(datum == null || datum.equals("wgs84") || datum.equals("nad83"))) {
      return null;
    }
    double north = middle(record, lat);
    double east = middle(record, lon);
    if (!(Math.abs(north) <= 90 && Math.abs(east) <= 180)) {
      return null;
    }
    int stated = catalogue.index("site.position_accuracy");
    double accuracy = record.isGiven(stated) ? record.hi(stated) : 0;
    if (Double.isInfinite(accuracy)) {
      accuracy = 0;
    }
    return new Place(north, east, Math.max(accuracy, finest)).on(finest);
  }

  private static double middle(WellRecord record, int entry) {
    return (record.lo(entry) + record.hi(entry)) / 2;
  }

  private Place on(double grid) {
    if (!(grid > 0)) {
      return this;
    }
    double step = grid / DEGREE;
    double north = Math.max(-90, Math.min(90, Math.rint(latitude / step) * step));
    double stepEast = step / Math.max(0.01, Math.cos(Math.toRadians(north)));
    double east = Math.max(-180, Math.min(180, Math.rint(longitude / stepEast) * stepEast));
    return new Place(north, east, accuracy);
  }

  String latitudeText() {
    return text(latitude);
  }

  String longitudeText() {
    return text(longitude);
  }

  private static String text(double degrees) {
    BigDecimal rounded = BigDecimal.valueOf(degrees).setScale(DECIMALS, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
