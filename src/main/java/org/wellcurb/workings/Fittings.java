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
                "1 at the pump, 1 at {level} - {first_check_valve_above_level}, and 1 for each"
                    + " {pump.check_valve_spacing} from there up")
            .source("WorldWide Drilling Resource, January 2023, submersible check valves, part 1")
            .reads(
                required("pump.check_valve_spacing"),
                helpful("water.pumping_level"),
                helpful("pump.intake_depth"),
                optional("water.test_method"))
            .figures(FIRST_ABOVE)
            .step("level", Units.FOOT, Units.METRE, Fittings::level)
            .by(x -> checkValves(level(x), x[4], x[0])),
        Draft.of(
                "torque_arresters_implied",
                Units.ONE,
                Units.ONE,
                "torque arresters that the stated spacing asks for: one above the pump and one for"
                    + " each spacing (the one alone where none is stated), none on rigid steel;"
                    + " give or take one")
            .formula("1 + {drop_pipe.length} / {pump.torque_arrester_spacing}, rounded down")
            .reads(
                required("drop_pipe.material"),
                helpful("drop_pipe.length"),
                optional("pump.torque_arrester_spacing"))
            .by(
                x -> {
                  if (x[0] == STEEL || x[0] == STAINLESS) {
                    return 0;
                  }
                  if (x[0] != PE && x[0] != PVC && x[0] != HOSE) {
                    return Double.NaN;
                  }
                  return Double.isNaN(x[2]) ? 1 : 1 + count(x[1], x[2]);
                }),
        Draft.of(
                "cable_ties_implied",
                Units.ONE,
                Units.ONE,
                "ties that hold the cable to the drop pipe at the stated spacing; give or take one")
            .formula("{drop_pipe.length} / {pump.cable_tie_spacing}, rounded down")
            .reads(required("drop_pipe.length"), required("pump.cable_tie_spacing"))
            .by(x -> count(x[0], x[1])));
  }

  /** The pumping level, or the intake where no level was measured. */
  private static double level(double[] x) {
    return WellHydraulics.isMeasured(x[3]) && !Double.isNaN(x[1]) ? x[1] : x[2];
  }
}
