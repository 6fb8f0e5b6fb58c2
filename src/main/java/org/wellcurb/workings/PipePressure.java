package org.wellcurb.workings;

import static org.wellcurb.workings.Input.helpful;
import static org.wellcurb.workings.Input.optional;

import java.util.List;
import org.wellcurb.quantity.Units;

/**
 * The greatest pressure that pipe has to hold. Pa, metres.
 *
 * <p>Both workings are ranges where the record leaves open how far the pump or the relief valve
 * goes: the least is then what is reached in any case, and the greatest may be infinite. A limit
 * that the least already breaks is surely broken; a limit is surely kept only by the greatest.
 */
public final class PipePressure {
  private PipePressure() {}

  /** Places of the inputs. */
  private static final int BOOST = 0;

  private static final int CUT_OUT = 1;
  private static final int SET_POINT = 2;
  private static final int CONTROL = 3;
  private static final int STATIC = 4;
  private static final int SWITCH = 5;
  private static final int FITTED = 6;
  private static final int SETTING = 7;
  private static final int CAPACITY = 8;
  private static final int BETWEEN = 9;
  private static final int FLOW = 10;
  private static final int PUMPING = 11;
  private static final int METHOD = 12;
  private static final int BURIAL = 11;
  private static final int PITLESS = 12;

  private static final Input[] INPUTS = {
    helpful("pump.shutoff_pressure"),
    helpful("pressure.cut_out"),
    helpful("pressure.set_point"),
    helpful("pump.control"),
    helpful("water.static_level"),
    helpful("pressure.switch_height"),
    helpful("relief.fitted"),
    helpful("relief.setting"),
    helpful("relief.capacity"),
    helpful("relief.valve_between"),
    helpful("pump.rated_flow")
  };

  private static double working(double[] x) {
    return SystemPressure.of(x[CUT_OUT], x[SET_POINT], x[CONTROL]);
  }

  private static double leastRelief(double[] x) {
    return Relief.leastBound(x[FITTED], x[SETTING], x[CAPACITY], x[BETWEEN], x[FLOW], x[CONTROL]);
  }

  private static double greatestRelief(double[] x) {
    return Relief.greatestBound(
        x[FITTED], x[SETTING], x[CAPACITY], x[BETWEEN], x[FLOW], x[CONTROL]);
  }

  /** A pressure that is reached if it is known, else none. */
  private static double orNone(double pressure) {
    return Double.isNaN(pressure) ? 0 : Math.max(0, pressure);
  }

  private static double orUnbounded(double pressure) {
    return Double.isNaN(pressure) ? Double.POSITIVE_INFINITY : pressure;
  }

  /**
   * The least that the lesser of two pressures may be, when at least the working pressure is
   * reached wherever one of them is not known.
   */
  private static double least(double pump, double relief, double working) {
    double floor = orNone(working);
    return Math.min(Double.isNaN(pump) ? floor : pump, Double.isNaN(relief) ? floor : relief);
  }

  /** A range that runs from nothing to infinity says nothing. */
  private static double unlessNothingIsKnown(double wanted, double least, double greatest) {
    return least == 0 && greatest == Double.POSITIVE_INFINITY ? Double.NaN : wanted;
  }

  /**
   * The level that the water outside the drop pipe falls to: as pumped, or static if that is all
   * there is.
   */
  private static double level(double[] x) {
    return WellHydraulics.isMeasured(x[METHOD]) && !Double.isNaN(x[PUMPING])
        ? x[PUMPING]
        : x[STATIC];
  }

  /** Weight of the water from the level up to the switch; NaN where its height is not known. */
  private static double down(double[] x) {
    return Water.pressure(level(x) + x[SWITCH]);
  }

  private static double dropLeast(double[] x) {
    return least(
        x[BOOST], leastRelief(x) + infinite(leastRelief(x), down(x)), working(x) + down(x));
  }

  private static double dropGreatest(double[] x) {
    return Math.min(
        orUnbounded(x[BOOST]),
        orUnbounded(greatestRelief(x) + infinite(greatestRelief(x), down(x))));
  }

  /** What is added to a bound: nothing to one that is infinite, even if it is not known. */
  private static double infinite(double bound, double added) {
    return bound == Double.POSITIVE_INFINITY ? 0 : added;
  }

  /**
   * From the switch down to the lowest point of the buried line; where the switch stands lower than
   * the line at the well, the line goes down to it, and its end there bears the most.
   */
  private static double toLine(double[] x) {
    return Water.pressure(Math.max(0, lowest(x) + x[SWITCH]));
  }

  private static double lowest(double[] x) {
    return Double.isNaN(x[BURIAL]) ? x[PITLESS] : x[BURIAL];
  }

  /**
   * What the pump gives in the line's lowest point with no flow, wherever the switch stands above
   * it: the height of the switch does not enter. With a lower switch it gives more, down there.
   */
  private static double shutoffAtLine(double[] x) {
    return ShutOff.atSwitch(x[BOOST], x[STATIC], -lowest(x));
  }

  /**
   * The least that a valve may hold the line to. A constant pressure valve may stand at the well
   * head, where it spares the line all but the working pressure, or in the house, where the line
   * bears what the pump gives: the form does not say which.
   */
  private static double leastHeld(double[] x) {
    return SystemPressure.isValve(x[CONTROL]) ? held(x) : leastRelief(x);
  }

  /** What a valve-controlled system holds: cut-out, or the set point where that is not given. */
  private static double held(double[] x) {
    return Double.isNaN(working(x)) ? x[SET_POINT] : working(x);
  }

  private static double shutoff(double[] x) {
    return ShutOff.atSwitch(x[BOOST], x[STATIC], x[SWITCH]);
  }

  /**
   * The least that the line sees; where the height of the switch is not known, the least over all
   * heights, which is that of a switch no higher than the line and no lower.
   */
  private static double lineLeast(double[] x) {
    if (Double.isNaN(x[SWITCH])) {
      return Double.isNaN(lowest(x))
          ? Double.NaN
          : least(shutoffAtLine(x), leastHeld(x), working(x));
    }
    return least(shutoff(x), leastHeld(x), working(x)) + toLine(x);
  }

  /**
   * The most that the line sees; where the height of the switch is not known, the most over all
   * heights: of a low switch what the relief valve holds there, of a high one all that the pump
   * gives, for the valve feels only what is left of it up there.
   */
  private static double lineGreatest(double[] x) {
    if (Double.isNaN(x[SWITCH])) {
      return Math.max(orUnbounded(shutoffAtLine(x)), orUnbounded(greatestRelief(x)));
    }
    return Math.min(orUnbounded(shutoff(x)), orUnbounded(greatestRelief(x))) + toLine(x);
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "drop_pipe_net_pressure",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                "greatest pressure across the wall of the drop pipe: the lesser of the pump's boost"
                    + " at no flow and what the relief valve holds, seen at the water level; the"
                    + " water outside counts. A range where the pump or the relief valve leaves it"
                    + " open")
            .formula(
                "min({pump.shutoff_pressure}, {relief that counts} + {weight of the water up to the"
                    + " switch}); {pressure at work} + {weight of the water up to the switch}")
            .source("hydrostatics")
            .reads(INPUTS)
            .reads(helpful("water.pumping_level"), optional("water.test_method"))
            .step(
                "weight of the water up to the switch",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                PipePressure::down)
            .step("pressure at work", Units.PSI_UNIT, Units.KILOPASCAL, PipePressure::working)
            .step(
                "relief that counts",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                PipePressure::leastRelief,
                PipePressure::greatestRelief)
            .greatest(x -> unlessNothingIsKnown(dropGreatest(x), dropLeast(x), dropGreatest(x)))
            .by(x -> unlessNothingIsKnown(dropLeast(x), dropLeast(x), dropGreatest(x))),
        Draft.of(
                "drop_pipe_inside_pressure",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                "gauge pressure inside the drop pipe at the pump at cut-out; shown, not judged, for"
                    + " the water outside carries part of it")
            .formula("{pressure at work} + {weight of the water from the intake up to the switch}")
            .source("hydrostatics")
            .reads(
                Input.required("pump.intake_depth"),
                helpful("pressure.cut_out"),
                helpful("pressure.set_point"),
                optional("pump.control"),
                Input.required("pressure.switch_height"))
            .step(
                "pressure at work",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                x -> SystemPressure.of(x[1], x[2], x[3]))
            .step(
                "weight of the water from the intake up to the switch",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                x -> Water.pressure(x[0] + x[4]))
            .by(x -> SystemPressure.of(x[1], x[2], x[3]) + Water.pressure(x[0] + x[4])),
        Draft.of(
                "pressure_on_service_line",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                "highest pressure on the buried line: the lesser of the pressure at the switch with"
                    + " no flow and the setting of the relief valve, and the water down to the"
                    + " line, none where the switch is lower than the line; ground that falls away"
                    + " from both is not in it. A range where the pump or the relief valve leaves"
                    + " it open, and with a constant pressure valve: at the well head it spares the"
                    + " line, in the house it does not")
            .formula(
                "min({pressure at no flow}, {valve that counts}) + {weight of the water down to the"
                    + " line}; {pressure at work}")
            .source("hydrostatics")
            .reads(INPUTS)
            .reads(helpful("service_line.burial_depth"), helpful("pitless.depth"))
            .step("pressure at no flow", Units.PSI_UNIT, Units.KILOPASCAL, PipePressure::shutoff)
            .step(
                "weight of the water down to the line",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                PipePressure::toLine)
            .step("pressure at work", Units.PSI_UNIT, Units.KILOPASCAL, PipePressure::working)
            .step(
                "valve that counts",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                PipePressure::leastHeld,
                PipePressure::greatestRelief)
            .greatest(
                x ->
                    unlessNothingIsKnown(
                        lineGreatest(x), lineLeast(x) - orNone(toLine(x)), lineGreatest(x)))
            .by(
                x ->
                    unlessNothingIsKnown(
                        lineLeast(x), lineLeast(x) - orNone(toLine(x)), lineGreatest(x))));
  }
}
