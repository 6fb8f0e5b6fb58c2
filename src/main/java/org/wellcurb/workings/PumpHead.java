package org.wellcurb.workings;

import static org.wellcurb.workings.Input.helpful;
import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** The head that a pump works against and the power that this takes. Metres, m3/s, W. */
public final class PumpHead {
  private static final String SERVICE_FACTOR = "motor_service_factor";

  private PumpHead() {}

  /** From the water to the pressure switch (m): level below ground + height of the switch. */
  public static double lift(double level, double switchHeight) {
    return level + switchHeight;
  }

  /**
   * Least power that the duty takes (W): rho g Q x (lift from the static level + head of the
   * pressure), as if nothing were lost; not below 0. Source: water horsepower Q H / 3960, from
   * memory.
   */
  public static double leastPower(double flow, double lift, double pressure) {
    return Math.max(0, Water.power(flow, lift + Water.head(pressure)));
  }

  /** Inputs of {@link #level}: levels, rates, method; the rated flow is given apart. */
  private static final Input[] LEVELS = {
    required("water.pumping_level"),
    optional("water.static_level"),
    optional("water.test_rate"),
    optional("water.test_method"),
    required("pressure.switch_height")
  };

  /** The level to lift from: at the rated flow where the test tells it, else as tested. */
  private static double level(double[] x, int ratedFlow) {
    if (!WellHydraulics.isMeasured(x[3])) {
      return Double.NaN;
    }
    boolean asTested = Double.isNaN(x[1]) || Double.isNaN(x[2]) || Double.isNaN(x[ratedFlow]);
    return asTested ? x[0] : WellHydraulics.levelAtRate(x[1], x[0], x[2], x[ratedFlow]);
  }

  static List<Figure> figures() {
    return List.of(
        new Figure(
            SERVICE_FACTOR,
            1.6,
            Units.ONE,
            "service factor of a motor, of which no form tells; small motors have the largest",
            "common practice"));
  }

  private static double leastPower(double[] x) {
    return leastPower(x[0], lift(x[1], x[2]), SystemPressure.of(x[3], x[4], x[5]));
  }

  private static final Input[] POWER = {
    required("pump.rated_flow"),
    required("water.static_level"),
    required("pressure.switch_height"),
    helpful("pressure.cut_in"),
    helpful("pressure.set_point"),
    optional("pump.control")
  };

  private static final String POWER_FORMULA =
      "1000 kg/m3 x 9.80665 m/s2 x {pump.rated_flow} x max(0, {water.static_level} +"
          + " {pressure.switch_height} + {head of the pressure})";

  private static Draft powerSteps(Draft draft) {
    return draft.step(
        "head of the pressure",
        Units.FOOT,
        Units.METRE,
        x -> Water.head(SystemPressure.of(x[3], x[4], x[5])));
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "lift",
                Units.FOOT,
                Units.METRE,
                "height from the water to the pressure switch: from the level at the rated flow"
                    + " where the test tells it, else as tested; unknown beyond 1.5 times the test"
                    + " rate")
            .formula("{level} + {pressure.switch_height}")
            .reads(LEVELS)
            .reads(optional("pump.rated_flow"))
            .step("level", Units.FOOT, Units.METRE, x -> level(x, 5))
            .by(x -> lift(level(x, 5), x[4])),
        Draft.of(
                "total_dynamic_head",
                Units.FOOT,
                Units.METRE,
                "head that the pump gives at cut-out (at the set point of a variable-speed system);"
                    + " a line or device that the record does not give counts as none")
            .formula(
                "{level} + {pressure.switch_height} + {drop pipe friction} + {service line friction}"
                    + " + {head of the pressure}")
            .source("common practice; " + PipeFriction.SOURCE)
            .reads(LEVELS)
            .reads(required("pump.rated_flow"))
            .reads(PipeFriction.bothPipes())
            .reads(
                helpful("pressure.cut_out"),
                helpful("pressure.set_point"),
                optional("pump.control"))
            .figures(PipeFriction.FIGURES)
            .step("level", Units.FOOT, Units.METRE, x -> level(x, 5))
            .step(
                "drop pipe friction", Units.FOOT, Units.METRE, x -> PipeFriction.drop(x, 6, 5, 15))
            .step(
                "service line friction",
                Units.FOOT,
                Units.METRE,
                x -> PipeFriction.line(x, 9, 5, 15))
            .step(
                "head of the pressure",
                Units.FOOT,
                Units.METRE,
                x -> Water.head(SystemPressure.of(x[12], x[13], x[14])))
            .by(
                x ->
                    lift(level(x, 5), x[4])
                        + PipeFriction.drop(x, 6, 5, 15)
                        + PipeFriction.line(x, 9, 5, 15)
                        + Water.head(SystemPressure.of(x[12], x[13], x[14]))),
        powerSteps(
                Draft.of(
                    "least_power",
                    Units.HORSEPOWER,
                    Units.KILOWATT,
                    "least power that the rated flow takes at cut-in (at the set point of a"
                        + " variable-speed system) from the static level"))
            .formula(POWER_FORMULA)
            .source("water horsepower: flow x head x weight of water (from memory)")
            .reads(POWER)
            .by(PumpHead::leastPower),
        powerSteps(
                Draft.of(
                    "power_ratio",
                    Units.ONE,
                    Units.ONE,
                    "least power of the duty over what the motor can give; no small pump does 0.75"))
            .formula(POWER_FORMULA + " / ({pump.power} x {motor_service_factor})")
            .source("water horsepower: flow x head x weight of water (from memory)")
            .reads(POWER)
            .reads(required("pump.power"))
            .figures(SERVICE_FACTOR)
            .by(x -> x[6] > 0 ? leastPower(x) / (x[6] * x[7]) : Double.NaN));
  }
}
