package org.wellcurb.workings;

import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** Where the intake hangs: water above it, well below it. Metres. */
public final class PumpSetting {
  private PumpSetting() {}

  /**
   * Water over the intake (m): depth of the intake - depth to water. Negative where the water is
   * below the intake. Common practice.
   */
  public static double submergence(double intakeDepth, double level) {
    return intakeDepth - level;
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "available_drawdown",
                Units.FOOT,
                Units.METRE,
                "room for the level to fall before it reaches the intake")
            .formula("{pump.intake_depth} - {water.static_level}")
            .reads(required("pump.intake_depth"), required("water.static_level"))
            .by(x -> submergence(x[0], x[1])),
        Draft.of(
                "pump_submergence",
                Units.FOOT,
                Units.METRE,
                "water over the intake at the pumping level of the test")
            .formula("{pump.intake_depth} - {water.pumping_level}")
            .reads(
                required("pump.intake_depth"),
                required("water.pumping_level"),
                optional("water.test_method"))
            .by(x -> WellHydraulics.isMeasured(x[2]) ? submergence(x[0], x[1]) : Double.NaN),
        Draft.of(
                "submergence_at_rated_flow",
                Units.FOOT,
                Units.METRE,
                "water over the intake if the pump runs at its rated flow")
            .formula(
                "{pump.intake_depth} - ({water.static_level} + {pump.rated_flow} x"
                    + " ({water.pumping_level} - {water.static_level}) / {water.test_rate})")
            .reads(
                required("pump.intake_depth"),
                required("water.static_level"),
                required("water.pumping_level"),
                required("water.test_rate"),
                required("pump.rated_flow"),
                optional("water.test_method"))
            .by(
                x ->
                    WellHydraulics.isMeasured(x[5])
                        ? submergence(x[0], WellHydraulics.levelAtRate(x[1], x[2], x[3], x[4]))
                        : Double.NaN),
        Draft.of(
                "intake_off_bottom",
                Units.FOOT,
                Units.METRE,
                "height of the intake above the finished bottom")
            .formula("{well.depth} - {pump.intake_depth}")
            .reads(required("well.depth"), required("pump.intake_depth"))
            .by(x -> x[0] - x[1]),
        Draft.of(
                "intake_above_screen",
                Units.FOOT,
                Units.METRE,
                "height of the intake above the top of the screen")
            .formula("{well.screen_top} - {pump.intake_depth}")
            .reads(required("well.screen_top"), required("pump.intake_depth"))
            .by(x -> x[0] - x[1]));
  }
}
