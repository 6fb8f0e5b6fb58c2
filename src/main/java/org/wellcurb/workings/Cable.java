package org.wellcurb.workings;

import static org.wellcurb.workings.Input.helpful;
import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/**
 * Voltage lost along the cable from the service to the motor. Volts, amperes, metres, ohms.
 *
 * <p>Resistance is that of the published table at 75 degC, so a cold wet cable loses less than
 * computed here. Wiring is for a licensed electrician and the local code.
 */
public final class Cable {
  private static final String ONE_PHASE = "one_phase_current";

  private static final double SINGLE = Choices.place("pump.phase", "1");
  private static final double THREE = Choices.place("pump.phase", "3");
  private static final double DIRECT = Choices.place("pump.phase", "dc");
  private static final double LINE_SINGLE = Choices.place("wire.phase", "1");
  private static final double LINE_THREE = Choices.place("wire.phase", "3");
  private static final double LINE_DIRECT = Choices.place("wire.phase", "dc");
  private static final double COPPER = Choices.place("wire.material", "copper");
  private static final double ALUMINIUM = Choices.place("wire.material", "aluminium");

  static final String SOURCE =
      "NEC (NFPA 70) Chapter 9 Table 8, 75 degC, stranded (wire-resistance.csv); a size between its"
          + " rows, such as 9 AWG or one in mm2, by the logarithm between them: common practice";

  private Cable() {}

  /**
   * Voltage lost along one part (V): factor x I x R' x L, with 2 for a single phase and direct
   * current, sqrt(3) for three phases.
   *
   * @param resistance of one conductor (ohm/m)
   * @param length one way (m)
   */
  public static double drop(double factor, double current, double resistance, double length) {
    return current == 0 || length == 0 ? 0 : factor * current * resistance * length;
  }

  private static double factor(double motorPhase) {
    return motorPhase == SINGLE || motorPhase == DIRECT
        ? 2
        : motorPhase == THREE ? Math.sqrt(3) : Double.NaN;
  }

  private static double lineFactor(double supplyPhase) {
    return supplyPhase == LINE_SINGLE || supplyPhase == LINE_DIRECT
        ? 2
        : supplyPhase == LINE_THREE ? Math.sqrt(3) : Double.NaN;
  }

  private static double or(double given, double otherwise) {
    return Double.isNaN(given) ? otherwise : given;
  }

  /**
   * Ohms a metre by gauge and material; a blank material is copper, as nearly all such cable is.
   */
  private static double resistance(double gauge, double material) {
    return Double.isNaN(material) || material == COPPER
        ? WireTable.copper(gauge)
        : material == ALUMINIUM ? WireTable.aluminium(gauge) : Double.NaN;
  }

  private static final Input[] INPUTS = {
    required("wire.gauge"),
    required("wire.length"),
    optional("wire.drop_gauge"),
    optional("wire.drop_length"),
    optional("wire.material"),
    helpful("wire.phase"),
    helpful("pump.phase"),
    helpful("pump.service_factor_current"),
    helpful("pump.nameplate_current"),
    helpful("pump.running_current")
  };

  /** Place of the system voltage, which comes after the others. */
  private static final int VOLTAGE = INPUTS.length;

  /** The current that counts: at the service factor, else of the nameplate, else as measured. */
  private static double current(double[] x) {
    return or(x[7], or(x[8], x[9]));
  }

  private static double dropFactor(double[] x) {
    return or(factor(x[6]), lineFactor(x[5]));
  }

  /**
   * Of the buried part, or of the whole where no drop part is given: that has the motor's phase.
   */
  private static double buriedFactor(double[] x) {
    return Double.isNaN(x[3]) ? dropFactor(x) : or(lineFactor(x[5]), factor(x[6]));
  }

  /**
   * The current of the buried part. Where one phase feeds what turns it into the three of the
   * motor, a drive or a converter, that takes the motor's power from one phase: V I' = sqrt(3) V I
   * at the same voltage and power factor, and some more for its losses, which are not in it.
   */
  private static double buriedCurrent(double[] x, int figures) {
    boolean isTurned = !Double.isNaN(x[3]) && x[5] == LINE_SINGLE && x[6] == THREE;
    return isTurned ? x[figures] * current(x) : current(x);
  }

  private static double buriedResistance(double[] x) {
    return resistance(x[0], x[4]);
  }

  private static double dropResistance(double[] x) {
    return resistance(or(x[2], x[0]), x[4]);
  }

  private static double buried(double[] x, int figures) {
    return drop(buriedFactor(x), buriedCurrent(x, figures), buriedResistance(x), x[1]);
  }

  private static double down(double[] x) {
    return Double.isNaN(x[3]) ? 0 : drop(dropFactor(x), current(x), dropResistance(x), x[3]);
  }

  /** Ohms of one conductor of the part in the well; none where no such part is given. */
  private static double dropOhms(double[] x) {
    return Double.isNaN(x[3]) ? 0 : dropResistance(x) * x[3];
  }

  private static final String FORMULA =
      "{buried factor} x {buried current} x {buried resistance} + {drop factor} x {current} x"
          + " {drop resistance}";

  private static Draft steps(Draft draft, int figures) {
    return draft
        .source(SOURCE)
        .reads(INPUTS)
        .step("current", Units.AMPERE, Units.AMPERE, Cable::current)
        .step("buried current", Units.AMPERE, Units.AMPERE, x -> buriedCurrent(x, figures))
        .step("buried factor", Units.ONE, Units.ONE, Cable::buriedFactor)
        .step("drop factor", Units.ONE, Units.ONE, Cable::dropFactor)
        .step("buried resistance", Units.OHM, Units.OHM, x -> buriedResistance(x) * x[1])
        .step("drop resistance", Units.OHM, Units.OHM, Cable::dropOhms);
  }

  static List<Figure> figures() {
    return List.of(
        new Figure(
            ONE_PHASE,
            Math.sqrt(3),
            Units.ONE,
            "current of a single phase over that of the three-phase motor which a drive or"
                + " converter makes of it: sqrt(3), by the balance of power",
            "common practice"));
  }

  static List<Working> workings() {
    return List.of(
        steps(
                Draft.of(
                    "voltage_drop",
                    Units.VOLT,
                    Units.VOLT,
                    "volts lost along the cable at the motor's largest stated current, buried and"
                        + " drop part added, each by its phase: 2 I R L or sqrt(3) I R L; more than"
                        + " a cold wet cable loses, for R is that of 75 degC; a buried part of one"
                        + " phase that feeds a three-phase motor carries one_phase_current times its"
                        + " current"),
                INPUTS.length)
            .formula(FORMULA)
            .figures(ONE_PHASE)
            .by(x -> buried(x, INPUTS.length) + down(x)),
        steps(
                Draft.of(
                    "voltage_drop_share",
                    Units.PERCENT,
                    Units.PERCENT,
                    "volts lost along the cable as a share of the system voltage"),
                VOLTAGE + 1)
            .formula("(" + FORMULA + ") / {pump.voltage}")
            .reads(required("pump.voltage"))
            .figures(ONE_PHASE)
            .by(
                x ->
                    x[VOLTAGE] > 0 ? (buried(x, VOLTAGE + 1) + down(x)) / x[VOLTAGE] : Double.NaN));
  }
}
