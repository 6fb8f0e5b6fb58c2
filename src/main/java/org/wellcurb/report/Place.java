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

  private static final Catalogue CATALOGUE = Catalogue.standard();
  private static final int LATITUDE = CATALOGUE.index("site.latitude");
  private static final int LONGITUDE = CATALOGUE.index("site.longitude");
  private static final int DATUM = CATALOGUE.index("site.position_datum");
  private static final int ACCURACY = CATALOGUE.index("site.position_accuracy");

  /**
   * The place of a record.
   *
   * @param finest metres: positions are rounded to a grid of this size, so that a map does not show
   *     a household more exactly than it need
   * @return null where the record gives no position, or one in a datum that is some hundred metres
   *     off WGS 84
   */
  public static @Nullable Place of(WellRecord record, double finest) {
    if (!record.isGiven(LATITUDE) || !record.isGiven(LONGITUDE)) {
      return null;
    }
    String datum = record.choice(DATUM);
    // NAD 83 agrees with WGS 84 to a metre or two; others may not, and GeoJSON knows no other.
    if (!(datum == null || datum.equals("wgs84") || datum.equals("nad83"))) {
      return null;
    }
    double north = middle(record, LATITUDE);
    double east = middle(record, LONGITUDE);
    if (!(Math.abs(north) <= 90 && Math.abs(east) <= 180)) {
      return null;
    }
    double accuracy = record.isGiven(ACCURACY) ? record.hi(ACCURACY) : 0;
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

  /** Adds longitude and latitude, as GeoJSON wants them. */
  void put(ByteText out) {
    put(out, longitude);
    out.put(',');
    put(out, latitude);
  }

  private static void put(ByteText out, double degrees) {
    if (!Digits.putRounded(out, degrees, DECIMALS)) {
      BigDecimal rounded = BigDecimal.valueOf(degrees).setScale(DECIMALS, RoundingMode.HALF_UP);
      out.put(rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString());
    }
  }
}
