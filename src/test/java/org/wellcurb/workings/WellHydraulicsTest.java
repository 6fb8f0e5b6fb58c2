package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.GPM;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WellHydraulicsTest {
  private static Given test() {
    return Given.nothing()
        .with("water.static_level", 40, FOOT)
        .with("water.pumping_level", 100, FOOT)
        .with("water.test_rate", 10, GPM);
  }

  @ParameterizedTest
  @ValueSource(strings = {"air lift", "bailer", "flow only"})
  void noLevelIsMeasuredByThese(String method) {
    Given given =
        test()
            .with("water.test_method", method)
            .with("pump.rated_flow", 10, GPM)
            .with("pump.intake_depth", 120, FOOT);
    for (String name :
        new String[] {
          "drawdown",
          "specific_capacity",
          "level_at_rated_flow",
          "pump_submergence",
          "submergence_at_rated_flow"
        }) {
      assertTrue(Double.isNaN(given.at(name)), name);
    }
    assertEquals(80, given.at("available_drawdown", FOOT), 1e-9);
  }

  @Test
  void aBlankMethodCountsAsMeasured() {
    assertEquals(60, test().at("drawdown", FOOT), 1e-9);
  }

  @Test
  void theLevelIsCarriedToOneAndAHalfTimesTheTestRateAndNoFarther() {
    assertEquals(
        130, test().with("pump.rated_flow", 15, GPM).at("level_at_rated_flow", FOOT), 1e-9);
    assertTrue(Double.isNaN(test().with("pump.rated_flow", 15.1, GPM).at("level_at_rated_flow")));
    assertTrue(
        Double.isNaN(test().range("pump.rated_flow", 14, 16, GPM).over("level_at_rated_flow")[1]));
  }

  @Test
  void theStaticLevelCountsOnceThoughItStandsTwice() {
    // At the test rate itself the level is the pumping level, whatever the static level was.
    double[] level =
        test()
            .range("water.static_level", 30, 60, FOOT)
            .with("pump.rated_flow", 10, GPM)
            .over("level_at_rated_flow");
    assertArrayEquals(new double[] {FOOT.toSi(100), FOOT.toSi(100)}, level, 1e-9);
  }

  @Test
  void withoutDrawdownSpecificCapacityIsUnknownAndTheLevelStaysWhereItIs() {
    Given flat = test().with("water.pumping_level", 40, FOOT).with("pump.rated_flow", 12, GPM);
    assertEquals(0, flat.at("drawdown"), 1e-12);
    assertTrue(Double.isNaN(flat.at("specific_capacity")));
    assertEquals(40, flat.at("level_at_rated_flow", FOOT), 1e-9);
  }

  @Test
  void rangesThatMayMeetLeaveSpecificCapacityUnknown() {
    Given given =
        test().range("water.static_level", 55, 60, FOOT).range("water.pumping_level", 50, 80, FOOT);
    assertTrue(Double.isNaN(given.over("specific_capacity")[0]));
  }

  @Test
  void nothingPumpedGivesZeroCapacityAndNoLevelAtARate() {
    Given idle = test().with("water.test_rate", 0, GPM).with("pump.rated_flow", 5, GPM);
    assertEquals(0, idle.at("specific_capacity"), 0);
    assertTrue(Double.isNaN(idle.at("level_at_rated_flow")));
  }

  /** A range whose rate and drawdown both have no upper end: its least is 0, and not unknown. */
  @Test
  void aDrawdownWithoutBoundLeavesNoCapacity() {
    assertEquals(0, WellHydraulics.specificCapacity(1e-3, Double.POSITIVE_INFINITY));
    assertEquals(
        0, WellHydraulics.specificCapacity(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));
    assertEquals(
        Double.POSITIVE_INFINITY, WellHydraulics.specificCapacity(Double.POSITIVE_INFINITY, 3));
  }
}
