package org.wellcurb.workings;

import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.wellcurb.quantity.Units;

/**
 * Whether a motor is loaded as it should be. Amperes, W, volts. Not for variable speed, where the
 * current goes with the speed.
 */
public final class MotorCurrent {
  private static final double SINGLE = Choices.place("pump.phase", "1");
  private static final double[] POWER;
  private static final double[] AT_115;
  private static final double[] AT_230;

  static {
    List<CSVRecord> rows = PublishedTable.rows("motor-currents.csv");
    POWER = new double[rows.size()];
    AT_115 = new double[rows.size()];
    AT_230 = new double[rows.size()];
    for (int i = 0; i < POWER.length; i++) {
      POWER[i] = Units.HORSEPOWER.toSi(PublishedTable.number(rows.get(i), "hp"));
      AT_115[i] = PublishedTable.number(rows.get(i), "amps_115");
      AT_230[i] = PublishedTable.number(rows.get(i), "amps_230");
    }
  }

  private MotorCurrent() {}

  /** Running current over another; unknown (NaN) where that is not above 0. */
  public static double ratio(double running, double against) {
    return against > 0 ? running / against : Double.NaN;
  }

  /**
   * Full-load current of a single-phase motor (A) by power (W) and voltage (V): the 115 V column
   * from 100 to 130 V, the 230 V column from 215 to 250 V, by straight lines between the powers of
   * the table; unknown (NaN) elsewhere. Source: NEC (NFPA 70) Table 430.248.
   */
  public static double fullLoad(double power, double voltage) {
    boolean isLow = voltage >= 100 && voltage <= 130;
    boolean isHigh = voltage >= 215 && voltage <= 250;
    if (!isLow && !isHigh) {
      return Double.NaN;
    }
    double[] amps = isLow ? AT_115 : AT_230;
    // A power converted and rounded (0.37 kW for 1/2 hp) may fall a little outside the table.
    double last = POWER[POWER.length - 1];
    if (power < POWER[0] * 0.99 || power > last * 1.01) {
      return Double.NaN;
    }
    double within = Math.min(Math.max(power, POWER[0]), last);
    int i = 1;
    while (within > POWER[i]) {
      i++;
    }
    double share = (within - POWER[i - 1]) / (POWER[i] - POWER[i - 1]);
    return amps[i - 1] + share * (amps[i] - amps[i - 1]);
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "current_ratio",
                Units.ONE,
                Units.ONE,
                "running current over the current at the service factor; under 0.5 ask: dry, broken"
                    + " coupling, wrong lead")
            .formula("{pump.running_current} / {pump.service_factor_current}")
            .reads(
                required("pump.running_current"),
                required("pump.service_factor_current"),
                optional("pump.control"))
            .by(x -> SystemPressure.isVariableSpeed(x[2]) ? Double.NaN : ratio(x[0], x[1])),
        Draft.of(
                "current_ratio_nameplate",
                Units.ONE,
                Units.ONE,
                "running current over the full-load current of the nameplate; a motor may run at"
                    + " its service factor, so up to 1.3 says nothing")
            .formula("{pump.running_current} / {pump.nameplate_current}")
            .reads(
                required("pump.running_current"),
                required("pump.nameplate_current"),
                optional("pump.control"))
            .by(x -> SystemPressure.isVariableSpeed(x[2]) ? Double.NaN : ratio(x[0], x[1])),
        Draft.of(
                "current_ratio_table",
                Units.ONE,
                Units.ONE,
                "running current over the published full-load current of a single-phase motor of"
                    + " that power; only near 2 or 0.5 it says something: 120 V for 240 V or the"
                    + " other way round")
            .formula("{pump.running_current} / {table current}")
            .source("NEC (NFPA 70) Table 430.248 (motor-currents.csv)")
            .reads(
                required("pump.running_current"),
                required("pump.power"),
                required("pump.voltage"),
                required("pump.phase"),
                optional("pump.control"))
            .turns(
                Turn.atValue(2, 100),
                Turn.atValue(2, 130),
                Turn.atValue(2, 215),
                Turn.atValue(2, 250))
            .step("table current", Units.AMPERE, Units.AMPERE, x -> fullLoad(x[1], x[2]))
            .by(
                x ->
                    x[3] == SINGLE && !SystemPressure.isVariableSpeed(x[4])
                        ? ratio(x[0], fullLoad(x[1], x[2]))
                        : Double.NaN));
  }
}
