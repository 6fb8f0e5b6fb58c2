package org.wellcurb.workings;

import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/**
 * Water that a diaphragm or bladder tank gives between cut-out and cut-in. Gauge pressures and air
 * pressure in Pa, volumes in m3, flow in m3/s.
 */
public final class PressureTank {
  private static final double AIR_OVER_WATER = Choices.place("tank.type", "air over water");
  private static final double NO_TANK = Choices.place("tank.type", "none");
  private static final double OTHER = Choices.place("tank.type", "other");
  private static final String SOURCE =
      "Boyle's law in absolute pressures; worked figures in The Driller, articles on drawdown of"
          + " pressure tanks";

  private PressureTank() {}

  /**
   * Water between cut-out and cut-in (m3), by Boyle's law at one temperature.
   *
   * <p>Pre-charge p at or below cut-in i: V (p + a) (1 / (i + a) - 1 / (o + a)). Between cut-in and
   * cut-out o: V (1 - (p + a) / (o + a)), for the tank is empty, and the flow stops dead, before
   * cut-in is reached. At or above cut-out: 0. Never more than the acceptance of all tanks together
   * (NaN: not given). Unknown (NaN) where cut-in is above cut-out.
   */
  public static double usableVolume(
      double volume,
      double precharge,
      double cutIn,
      double cutOut,
      double acceptance,
      double airPressure) {
    if (!(cutIn <= cutOut) || Double.isNaN(airPressure)) {
      return Double.NaN;
    }
    double p = precharge + airPressure;
    if (p <= 0 || precharge >= cutOut || cutIn == cutOut) {
      return 0;
    }
    double empties = Math.max(cutIn, precharge) + airPressure;
    double usable = volume * (p / empties - p / (cutOut + airPressure));
    return usable > acceptance ? acceptance : usable;
  }

  /** Shortest run of the pump (s): usable volume / flow; unknown (NaN) without a flow. */
  public static double runTime(double usableVolume, double flow) {
    return flow > 0 ? usableVolume / flow : Double.NaN;
  }

  /**
   * The air pressure at which a tank of low pre-charge gives most, other things equal: where the
   * derivative of (p + a) / ((i + a) (o + a)) is 0.
   */
  private static double airPressureOfMost(double precharge, double cutIn, double cutOut) {
    return precharge < cutIn
        ? Math.sqrt((cutIn - precharge) * (cutOut - precharge)) - precharge
        : Double.NEGATIVE_INFINITY;
  }

  private static final int TYPE = 6;
  private static final int COUNT = 7;

  private static boolean isKind(double type) {
    return type != AIR_OVER_WATER && type != NO_TANK && type != OTHER;
  }

  /** Usable volume, with the {@link #inputs} from place {@code at} on. */
  static double usable(double[] x, int at, int usualElevation) {
    return isKind(x[at + TYPE])
        ? usableVolume(
            x[at], x[at + 1], x[at + 2], x[at + 3], accepted(x, at), air(x, at, usualElevation))
        : Double.NaN;
  }

  /**
   * What all tanks may take (m3): the volume is that of all, but the acceptance stands on the plate
   * of each. A number of tanks that is not given is one.
   */
  private static double accepted(double[] x, int at) {
    double count = x[at + COUNT];
    return x[at + 4] * (count > 1 ? count : 1);
  }

  private static double air(double[] x, int at, int usualElevation) {
    return Atmosphere.pressure(Atmosphere.elevation(x[at + 5], x[usualElevation]));
  }

  /**
   * Least and greatest usable volume over ranges. It grows with volume, acceptance, count and
   * cut-out and falls with cut-in; over the pre-charge it is greatest where that equals cut-in,
   * over the air pressure it may be greatest inside.
   */
  private static void usableOver(double[] lo, double[] hi, int usualElevation, double[] out) {
    double thin = Atmosphere.pressure(Atmosphere.elevation(hi[5], hi[usualElevation]));
    double dense = Atmosphere.pressure(Atmosphere.elevation(lo[5], lo[usualElevation]));
    if (!isKind(lo[TYPE]) || !isKind(hi[TYPE]) || !(hi[2] <= lo[3])) {
      out[0] = Double.NaN;
      out[1] = Double.NaN;
      return;
    }
    double least = Double.POSITIVE_INFINITY;
    for (int corner = 0; corner < 4; corner++) {
      double precharge = (corner & 1) == 0 ? lo[1] : hi[1];
      double air = (corner & 2) == 0 ? thin : dense;
      least = Math.min(least, usableVolume(lo[0], precharge, hi[2], lo[3], accepted(lo, 0), air));
    }
    double best = Math.min(Math.max(lo[2], lo[1]), hi[1]);
    double air = Math.min(Math.max(airPressureOfMost(best, lo[2], hi[3]), thin), dense);
    out[0] = least;
    out[1] = usableVolume(hi[0], best, lo[2], hi[3], accepted(hi, 0), air);
  }

  /** Volume, pre-charge, cut-in, cut-out, acceptance, elevation, type, number of tanks. */
  static List<Input> inputs() {
    return List.of(
        required("tank.volume"),
        required("tank.precharge"),
        required("pressure.cut_in"),
        required("pressure.cut_out"),
        optional("tank.acceptance"),
        optional("site.elevation"),
        optional("tank.type"),
        optional("tank.count"));
  }

  private static final String USABLE =
      "max(0, min({most that the tanks take}, {tank.volume} x ({tank.precharge} + {air}) x (1 /"
          + " (max({pressure.cut_in}, {tank.precharge}) + {air}) - 1 / ({pressure.cut_out} +"
          + " {air}))))";

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "tank_usable_volume",
                Units.US_GALLON,
                Units.LITRE,
                "water that a diaphragm or bladder tank gives between cut-out and cut-in, never"
                    + " more than it may take")
            .formula(USABLE)
            .source(SOURCE)
            .reads(inputs())
            .figures(Atmosphere.ELEVATION)
            .step("air", Units.PSI_UNIT, Units.KILOPASCAL, x -> air(x, 0, 8))
            .step("most that the tanks take", Units.US_GALLON, Units.LITRE, x -> accepted(x, 0))
            .over((lo, hi, out) -> usableOver(lo, hi, 8, out))
            .by(x -> usable(x, 0, 8)),
        Draft.of(
                "pump_run_time",
                Units.SECOND,
                Units.SECOND,
                "shortest run of the pump: usable volume of the tank over the rated flow")
            .formula(USABLE + " / {pump.rated_flow}")
            .source(SOURCE)
            .reads(inputs())
            .reads(required("pump.rated_flow"))
            .figures(Atmosphere.ELEVATION)
            .step("air", Units.PSI_UNIT, Units.KILOPASCAL, x -> air(x, 0, 9))
            .step("most that the tanks take", Units.US_GALLON, Units.LITRE, x -> accepted(x, 0))
            .over(
                (lo, hi, out) -> {
                  usableOver(lo, hi, 9, out);
                  out[1] = runTime(out[1], lo[8]);
                  out[0] = lo[8] > 0 ? runTime(out[0], hi[8]) : Double.NaN;
                })
            .by(x -> runTime(usable(x, 0, 9), x[8])));
  }
}
