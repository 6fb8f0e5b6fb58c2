package org.wellcurb.workings;

import java.util.List;
import org.wellcurb.quantity.Units;

/** Air pressure by elevation, and the elevation to take where none is given. */
public final class Atmosphere {
  /** Standard pressure at sea level (Pa). Source: ICAO standard atmosphere (from memory). */
  public static final double AT_SEA_LEVEL = 101_325;

  static final String ELEVATION = "usual_elevation";

  private Atmosphere() {}

  /**
   * Air pressure (Pa) at an elevation (m): 101325 (1 - 2.25577e-5 h)^5.25588, for -1,000 to 11,000
   * m. NaN outside. Source: ICAO standard atmosphere (from memory); 11.8 psi at 6,000 ft agrees
   * with what is printed for tanks.
   */
  public static double pressure(double elevation) {
    return elevation >= -1000 && elevation <= 11_000
        ? AT_SEA_LEVEL * Math.pow(1 - 2.25577e-5 * elevation, 5.25588)
        : Double.NaN;
  }

  /** The elevation of the site, or the usual one where it is not given (NaN). */
  static double elevation(double given, double usual) {
    return Double.isNaN(given) ? usual : given;
  }

  static List<Figure> figures() {
    return List.of(
        new Figure(
            ELEVATION,
            0,
            Units.FOOT,
            "elevation taken where the record gives none; a pack may set that of its area",
            "common practice: sea level"));
  }
}
