package org.wellcurb.workings;

import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** Levels in the test and what they imply. Lengths in metres, flows in m3/s. */
public final class WellHydraulics {
  private WellHydraulics() {}

  /** Fall of the water level in the test: pumping level - static level (m). Common practice. */
  public static double drawdown(double pumpingLevel, double staticLevel) {
    return pumpingLevel - staticLevel;
  }

  static List<Figure> figures() {
    return List.of();
  }

  static List<Working> workings() {
    return List.of(
        new Working(
            "drawdown",
            Units.FOOT,
            Units.METRE,
            "fall of the water level in the test",
            "{water.pumping_level} - {water.static_level}",
            "common practice",
            List.of(
                required("water.pumping_level"),
                required("water.static_level"),
                optional("water.test_method")),
            List.of(),
            List.of(),
            x -> drawdown(x[0], x[1])));
  }
}
