package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths on the ellipsoid against those of the library GeographicLib, which is exact to nm. */
class ShortestLineTest {
  private static double library(double lat1, double lon1, double lat2, double lon2) {
    return Geodesic.WGS84.Inverse(lat1, lon1, lat2, lon2).s12;
  }

  /** The scale of a plot: within a micrometre, from a hand's breadth to 10 km. */
  @Test
  void linesOnOnePropertyAreThoseOfTheLibrary() {
    long seed = 20260301;
    Random random = new Random(seed);
    for (int n = 0; n < 20_000; n++) {
      double lat = -90 + 180 * random.nextDouble();
      double lon = -180 + 360 * random.nextDouble();
      double size = Math.pow(10, -6 + 5 * random.nextDouble());
      double lat2 = Math.max(-90, Math.min(90, lat + size * random.nextGaussian()));
      double lon2 = lon + size * random.nextGaussian();
      double expected = library(lat, lon, lat2, lon2);
      assertEquals(
          expected,
          Geodesy.distance(lat, lon, lat2, lon2),
          1e-6,
          "seed " + seed + ": " + lat + ", " + lon + " to " + lat2 + ", " + lon2);
    }
  }

  /** Anywhere: 0.2 mm, for the series ends at the fourth power. */
  @Test
  void linesRoundTheGlobeAreThoseOfTheLibrary() {
    long seed = 20260302;
    Random random = new Random(seed);
    int settled = 0;
    for (int n = 0; n < 20_000; n++) {
      double lat = -90 + 180 * random.nextDouble();
      double lat2 = -90 + 180 * random.nextDouble();
      double east = -180 + 360 * random.nextDouble();
      settled += Double.isNaN(ShortestLine.length(lat, lat2, east)) ? 0 : 1;
      assertEquals(
          library(lat, 0, lat2, east),
          Geodesy.distance(lat, 0, lat2, east),
          2e-4,
          "seed " + seed + ": " + lat + " to " + lat2 + ", " + east);
    }
    assertTrue(settled > 19_900, settled + " settled");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0, 0",
    "45, -93, 45, -93",
    "90, 0, 90, 120",
    "90, 0, -90, 0",
    "0, 0, 0, 90",
    "0, 0, 0, 179.9",
    "0, 0, 0, 180",
    "0, 0, 0.5, 179.7",
    "30, 10, -30, -170",
    "30, 10, -29.9999, -170.00001",
    "12.5, 179.9999, 12.5, -179.9999",
    "-41, 359.5, -41, -0.6",
    "1e-7, 0, -1e-7, 1e-7",
  })
  void theEdgesAreThoseOfTheLibrary(double lat1, double lon1, double lat2, double lon2) {
    assertEquals(library(lat1, lon1, lat2, lon2), Geodesy.distance(lat1, lon1, lat2, lon2), 2e-4);
  }

  @Test
  void whatIsNoPlaceHasNoDistance() {
    assertTrue(Double.isNaN(Geodesy.distance(90.1, 0, 0, 0)));
    assertTrue(Double.isNaN(Geodesy.distance(0, 0, -91, 0)));
    assertTrue(Double.isNaN(Geodesy.distance(Double.NaN, 0, 0, 0)));
    assertTrue(Double.isNaN(Geodesy.distance(0, 0, 0, Double.NaN)));
    assertTrue(Double.isNaN(Geodesy.distance(0, 0, 0, Double.POSITIVE_INFINITY)));
  }
}
