package org.wellcurb.workings;

import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** What a pump reaches with no flow. Pa, metres. */
public final class ShutOff {
  private static final String LEAST_STAGE = "stage_boost_least";
  private static final String MOST_STAGE = "stage_boost_most";

  private ShutOff() {}

  /**
   * Pressure at the switch with no flow (Pa): boost of the pump at no flow - weight of the water
   * from its level up to the switch. The depth of the intake does not enter: the water above it
   * carries itself. Hydrostatics.
   */
  public static double atSwitch(double boost, double level, double switchHeight) {
    return boost - Water.pressure(level + switchHeight);
  }

  static List<Figure> figures() {
    return List.of(
        new Figure(
            LEAST_STAGE,
            Units.PSI_UNIT.toSi(8),
            Units.PSI_UNIT,
            "boost at no flow of one stage of a small domestic pump, at the least, at 60 Hz",
            "common practice"),
        new Figure(
            MOST_STAGE,
            Units.PSI_UNIT.toSi(16),
            Units.PSI_UNIT,
            "boost at no flow of one stage of a small domestic pump, at the most, at 60 Hz",
            "common practice"));
  }

  private static double stages(double[] x, double each) {
    return SystemPressure.isVariableSpeed(x[1]) ? Double.NaN : x[0] * each;
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "stage_boost",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                "rough boost at no flow from the number of stages: always a range, for advice only;"
                    + " not where the speed varies")
            .formula("{pump.stages} x ({stage_boost_least} to {stage_boost_most})")
            .reads(required("pump.stages"), optional("pump.control"))
            .figures(LEAST_STAGE, MOST_STAGE)
            .greatest(x -> stages(x, x[3]))
            .by(x -> stages(x, x[2])),
        Draft.of(
                "shutoff_at_switch",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                "pressure at the switch with no flow, from the static level; where it is below"
                    + " cut-out the pump never stops")
            .formula("{pump.shutoff_pressure} - {weight of the water up to the switch}")
            .source("hydrostatics")
            .reads(
                required("pump.shutoff_pressure"),
                required("water.static_level"),
                required("pressure.switch_height"))
            .step(
                "weight of the water up to the switch",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                x -> Water.pressure(x[1] + x[2]))
            .by(x -> atSwitch(x[0], x[1], x[2])),
        Draft.of(
                "shutoff_from_pumping_level",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                "pressure at the switch with no flow, while the level still stands as it was"
                    + " pumped in the test")
            .formula("{pump.shutoff_pressure} - {weight of the water up to the switch}")
            .source("hydrostatics")
            .reads(
                required("pump.shutoff_pressure"),
                required("water.pumping_level"),
                required("pressure.switch_height"),
                optional("water.test_method"))
            .step(
                "weight of the water up to the switch",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                x -> Water.pressure(x[1] + x[2]))
            .by(x -> WellHydraulics.isMeasured(x[3]) ? atSwitch(x[0], x[1], x[2]) : Double.NaN));
  }
}
