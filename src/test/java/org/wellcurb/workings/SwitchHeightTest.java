package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;

/** A switch of which nobody gave the height may stand anywhere: in a cellar, or on a hill. */
class SwitchHeightTest {
  private static final long SEED = 1511;
  private static final int FORMS = 300;

  /** Feet above ground at the well. */
  private static final double[] HEIGHTS = {-500, -100, -30, -8, -5, -2, 0, 3, 12, 60, 200, 500};

  @ParameterizedTest
  @ValueSource(
      strings = {
        "lift",
        "total_dynamic_head",
        "least_power",
        "power_ratio",
        "shutoff_at_switch",
        "shutoff_from_pumping_level",
        "drop_pipe_inside_pressure",
        "suction_lift"
      })
  void withoutItNothingIsSaidThatHangsOnIt(String name) {
    Working working = Objects.requireNonNull(WorkingCatalogue.standard().find(name));
    assertTrue(
        working.inputs().stream()
            .anyMatch(each -> each.key().equals("pressure.switch_height") && each.isRequired()),
        name);
  }

  /** What is said without the height holds for a switch at any height. */
  @ParameterizedTest
  @ValueSource(strings = {"drop_pipe_net_pressure", "pressure_on_service_line"})
  void whatIsSaidWithoutItHoldsAtAnyHeight(String name) {
    Random random = new Random(SEED);
    int bounded = 0;
    for (int form = 0; form < FORMS; form++) {
      Given given = given(random);
      double[] open = given.over(name);
      if (Double.isNaN(open[0])) {
        continue;
      }
      bounded += Double.isInfinite(open[1]) ? 0 : 1;
      for (double height : HEIGHTS) {
        double[] known = given.with("pressure.switch_height", height, Units.FOOT).over(name);
        String said = name + ", form " + form + ", seed " + SEED + ", " + height + " ft";
        // Below nothing there is no pressure: what a low switch draws on pulls no pipe apart.
        double least = Math.max(0, known[0]);
        assertTrue(least >= open[0] - 1e-6 && known[1] <= open[1] + 1e-6, said);
      }
    }
    assertTrue(bounded > FORMS / 10, name + " is bounded on " + bounded);
  }

  /** A low switch lets the line see what the relief valve holds, a high one what the pump gives. */
  @Test
  void theLineSeesTheReliefOrThePump() {
    double[] line = full().over("pressure_on_service_line");
    double pumped = Units.PSI_UNIT.toSi(150) - Water.pressure(Units.FOOT.toSi(60 - 5));
    assertEquals(Units.PSI_UNIT.toSi(75), line[0], 1);
    assertEquals(pumped, line[1], 1);
    double[] pipe = full().over("drop_pipe_net_pressure");
    assertEquals(Units.PSI_UNIT.toSi(150), pipe[1], 1);
  }

  private static Given full() {
    return Given.nothing()
        .with("pump.shutoff_pressure", 150, Units.PSI_UNIT)
        .with("pressure.cut_out", 60, Units.PSI_UNIT)
        .with("water.static_level", 60, Units.FOOT)
        .with("service_line.burial_depth", 5, Units.FOOT)
        .with("pump.rated_flow", 10, Units.GPM)
        .with("relief.setting", 75, Units.PSI_UNIT)
        .with("relief.capacity", 20, Units.GPM)
        .si("pump.control", control("switch"), control("switch"))
        .si("relief.fitted", 1, 1)
        .si("relief.valve_between", 0, 0);
  }

  private static double control(String says) {
    return Objects.requireNonNull(Catalogue.standard().find("pump.control"))
        .choices()
        .indexOf(says);
  }

  private static Given given(Random random) {
    Given given = Given.nothing().with("pressure.cut_out", 60, Units.PSI_UNIT);
    if (random.nextInt(4) > 0) {
      given.with("pump.shutoff_pressure", 70 + random.nextInt(120), Units.PSI_UNIT);
    }
    if (random.nextInt(5) > 0) {
      given.with("water.static_level", random.nextInt(200), Units.FOOT);
    }
    if (random.nextInt(3) > 0) {
      given.with("water.pumping_level", random.nextInt(300), Units.FOOT);
    }
    given.with("service_line.burial_depth", random.nextInt(8), Units.FOOT);
    given.with("pump.rated_flow", 10, Units.GPM);
    if (random.nextInt(3) > 0) {
      given
          .si("relief.fitted", 1, 1)
          .with("relief.setting", 50 + random.nextInt(80), Units.PSI_UNIT)
          .with("relief.capacity", 5 + random.nextInt(15), Units.GPM)
          .si("relief.valve_between", 0, 0);
    }
    if (random.nextInt(4) > 0) {
      double control =
          random.nextBoolean() ? control("switch") : control("constant pressure valve");
      given.si("pump.control", control, control);
    }
    return given;
  }
}
