package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.wellcurb.quantity.Units.DEGREE;
import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.METRE;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PositionTest {
  private static Given at(double lat, double lon, double septicLat, double septicLon) {
    return Given.nothing()
        .with("site.latitude", lat, DEGREE)
        .with("site.longitude", lon, DEGREE)
        .with("site.septic_latitude", septicLat, DEGREE)
        .with("site.septic_longitude", septicLon, DEGREE);
  }

  @Test
  void theSamePlaceIsNoDistance() {
    assertEquals(0, at(45, -93, 45, -93).at("septic_distance"), 0);
  }

  @Test
  void otherDatumsAreNotCompared() {
    Given given = at(45, -93, 45.001, -93);
    assertEquals(111.1, given.at("septic_distance"), 0.1);
    assertEquals(111.1, given.with("site.position_datum", "nad83").at("septic_distance"), 0.1);
    assertTrue(Double.isNaN(given.with("site.position_datum", "nad27").at("septic_distance")));
    assertTrue(Double.isNaN(given.with("site.position_datum", "other").at("septic_distance")));
  }

  @Test
  void boxesThatMeetMayBeNoDistanceApart() {
    double[] range =
        at(0, 0, 45, -93)
            .range("site.latitude", 44.999, 45.001, DEGREE)
            .range("site.longitude", -93.001, -92.999, DEGREE)
            .over("septic_distance");
    assertEquals(0, range[0], 0);
    assertEquals(136.3, range[1], 0.2);
  }

  @Test
  void theDateLineIsNoBarrier() {
    double[] range =
        at(10, 179.9999, 10, 0)
            .range("site.septic_longitude", -179.9999, -179.9998, DEGREE)
            .over("septic_distance");
    assertEquals(Geodesy.distance(10, 0, 10, 0.0002), range[0], 1e-6);
    assertEquals(Geodesy.distance(10, 0, 10, 0.0003), range[1], 1e-6);
  }

  @Test
  void aBoxWithoutEndIsUnknown() {
    double[] range =
        at(10, 20, 10, 0)
            .si("site.septic_longitude", 20, Double.POSITIVE_INFINITY)
            .over("septic_distance");
    assertTrue(Double.isNaN(range[0]) && Double.isNaN(range[1]));
  }

  /** The greatest and least of boxes hold every pair of points in them, and are nearly reached. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void boxesHoldTheirPoints(long seed) {
    Random random = new Random(seed);
    double size = Math.pow(10, -4 + random.nextInt(5));
    double lat = -70 + 140 * random.nextDouble();
    double lon = -180 + 360 * random.nextDouble();
    double[] lo = {
      lat, lon, lat + size * random.nextGaussian(), lon + size * random.nextGaussian()
    };
    double[] hi = new double[4];
    for (int i = 0; i < 4; i++) {
      hi[i] = lo[i] + size * random.nextDouble();
    }
    double[] range = new double[2];
    Geodesy.betweenBoxes(lo, hi, range);
    double least = Double.POSITIVE_INFINITY;
    double greatest = 0;
    for (int n = 0; n < 4000; n++) {
      double[] p = new double[4];
      for (int i = 0; i < 4; i++) {
        // Edges are tried often, for that is where the ends lie.
        double share = Math.max(0, Math.min(1, 1.4 * random.nextDouble() - 0.2));
        p[i] = lo[i] + share * (hi[i] - lo[i]);
      }
      double distance = Geodesy.distance(p[0], p[1], p[2], p[3]);
      least = Math.min(least, distance);
      greatest = Math.max(greatest, distance);
    }
    String told = "seed " + seed;
    double slack = 1e-8 * range[1] + 1e-6;
    assertTrue(range[0] <= least + slack && greatest <= range[1] + slack, told);
    assertTrue(least - range[0] < 0.1 * (range[1] - range[0]) + slack, told);
    assertTrue(range[1] - greatest < 0.1 * (range[1] - range[0]) + slack, told);
  }

  @Test
  void slackIsBothAccuraciesOrTheLastDecimalsOrThirtyFeet() {
    Given given = at(0, -93, 0, -93);
    assertEquals(30, given.at("septic_distance_slack", FOOT), 1e-9);
    given
        .halfPlace("site.latitude", 0.0005)
        .halfPlace("site.longitude", 0)
        .halfPlace("site.septic_latitude", 0.00005)
        .halfPlace("site.septic_longitude", 0);
    assertEquals(0.00055 * 111_195, given.at("septic_distance_slack"), 0.01);
    assertEquals(
        50,
        given.with("site.position_accuracy", 25, METRE).at("septic_distance_slack", METRE),
        1e-9);
  }
}
