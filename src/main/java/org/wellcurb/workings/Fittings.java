package org.wellcurb.workings;

import static org.wellcurb.workings.Input.helpful;
import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/**
 * How many fittings on the drop pipe a spacing asks for. Metres. Each is give or take one: nobody
 * measures to the fitting.
 */
public final class Fittings {
  private static final double PE = Choices.place("drop_pipe.material", "pe");
  private static final double PVC = Choices.place("drop_pipe.material", "pvc");
  private static final double HOSE = Choices.place("drop_pipe.material", "flexible hose");
  private static final double STEEL = Choices.place("drop_pipe.material", "galvanized steel");
  private static final double STAINLESS = Choices.place("drop_pipe.material", "stainless steel");

  private static final String FIRST_ABOVE = "first_check_valve_above_level";

  private Fittings() {}

  /** How many fit into a length at a spacing: length / spacing, rounded down; NaN without one. */
  public static double count(double length, double spacing) {
    return spacing > 0 ? Math.floor(Math.max(0, length) / spacing + 1e-9) : Double.NaN;
  }

  /**
   * Check valves on the drop pipe: the pump's own, one no more than {@code first} above the pumping
   * level, and one for each spacing from there to the ground. Source: WorldWide Drilling Resource,
   * January 2023, submersible check valves.
   */
  public static double checkValves(double level, double first, double spacing) {
    double lowest = level - first;
    double higher = count(lowest, spacing);
    return lowest >= 0 ? 2 + higher : 1 + higher;
  }

  static List<Figure> figures() {
    return List.of(
        new Figure(
            FIRST_ABOVE,
            Units.FOOT.toSi(25),
            Units.FOOT,
            "how far above the pumping level the lowest check valve on the pipe may stand",
            "WorldWide Drilling Resource, January 2023; The Driller, May 2001"));
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "check_valves_implied",
                Units.ONE,
                Units.ONE,
                "check valves that the stated spacing asks for, the pump's own included; give or"
                    + " take one")
            .formula(
                "{at the pump and the level} + max(0, floor(({level} -"
                    + " {first_check_valve_above_level}) / {pump.check_valve_spacing}))")
            .source("WorldWide Drilling Resource, January 2023, submersible check valves, part 1")
            .reads(
                required("pump.check_valve_spacing"),
                helpful("water.pumping_level"),
                helpful("pump.intake_depth"),
                optional("water.test_method"))
            .figures(FIRST_ABOVE)
            .step(
                "at the pump and the level",
                Units.ONE,
                Units.ONE,
                x -> level(x) >= x[4] ? 2 : level(x) < x[4] ? 1 : Double.NaN)
            .step("level", Units.FOOT, Units.METRE, Fittings::level)
            .by(x -> checkValves(level(x), x[4], x[0])),
        Draft.of(
                "torque_arresters_implied",
                Units.ONE,
                Units.ONE,
                "torque arresters that the stated spacing asks for: one above the pump and one for"
                    + " each spacing (the one alone where none is stated), none on rigid steel;"
                    + " give or take one")
            .formula(
                "{on this pipe} x (1 + {spacings}); {drop_pipe.length} /"
                    + " {pump.torque_arrester_spacing}")
            .reads(
                required("drop_pipe.material"),
                helpful("drop_pipe.length"),
                optional("pump.torque_arrester_spacing"))
            .step("on this pipe", Units.ONE, Units.ONE, x -> arrestersOn(x[0]))
            .step("spacings", Units.ONE, Units.ONE, x -> spacings(x[1], x[2]))
            .by(
                x ->
                    x[0] == STEEL || x[0] == STAINLESS
                        ? 0
                        : arrestersOn(x[0]) * (1 + spacings(x[1], x[2]))),
        Draft.of(
                "cable_ties_implied",
                Units.ONE,
                Units.ONE,
                "ties that hold the cable to the drop pipe at the stated spacing; give or take one")
            .formula("floor({drop_pipe.length} / {pump.cable_tie_spacing})")
            .reads(required("drop_pipe.length"), required("pump.cable_tie_spacing"))
            .by(x -> count(x[0], x[1])));
  }

  /** 1 on pipe that twists, 0 on rigid steel; of other pipe it cannot be told (NaN). */
  private static double arrestersOn(double material) {
    if (material == STEEL || material == STAINLESS) {
      return 0;
    }
    return material == PE || material == PVC || material == HOSE ? 1 : Double.NaN;
  }

  private static double spacings(double length, double spacing) {
    return Double.isNaN(spacing) ? 0 : count(length, spacing);
  }

  /** The pumping level, or the intake where no level was measured. */
  private static double level(double[] x) {
    return WellHydraulics.isMeasured(x[3]) && !Double.isNaN(x[1]) ? x[1] : x[2];
  }
}
