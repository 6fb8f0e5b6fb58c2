package org.wellcurb.workings;

import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.quantity.Units;

/**
 * Chlorine for a well and its pipes. kg, m3, kg/m3, seconds. Plain unscented hypochlorite only,
 * never with acid or other cleaners.
 */
public final class Chlorination {
  private static final String DOSE = "chlorine_dose";
  private static final String MOST = "chlorine_dose_most";
  private static final String DRY = "dry_chlorine_strength";
  private static final String BLEACH = "bleach_strength";
  private static final String TIMES = "disinfected_volume_times";

  private Chlorination() {}

  /** Mass of a dry product (kg): volume x dose / available share. */
  public static double dryProduct(double volume, double dose, double available) {
    return available > 0 ? volume * dose / available : Double.NaN;
  }

  /**
   * Volume of a liquid product (m3): volume x dose / chlorine in it, which is 10 g/L for each trade
   * percent.
   *
   * @param trade percent as a share: 0.0525 for 5.25 %
   */
  public static double liquidProduct(double volume, double dose, double trade) {
    return trade > 0 ? volume * dose / (trade * Water.DENSITY) : Double.NaN;
  }

  private static final int PIPES = WellVolume.INPUTS;
  private static final int DOSE_AT = PIPES + 5;
  private static final int FIGURES = DOSE_AT + 1;

  private static List<Input> inputs() {
    List<Input> inputs = new ArrayList<>(WellVolume.inputs());
    inputs.add(optional("drop_pipe.length"));
    inputs.add(optional("drop_pipe.inside_diameter"));
    inputs.add(optional("service_line.length"));
    inputs.add(optional("service_line.inside_diameter"));
    inputs.add(optional("tank.volume"));
    inputs.add(optional("disinfection.dose"));
    return inputs;
  }

  /**
   * Well water some times over, that outside a liner too, and once the pipes and the pressure tank;
   * what is not given is left out. A cistern is disinfected by itself.
   */
  private static double volume(double[] x) {
    double tank = Double.isNaN(x[PIPES + 4]) ? 0 : x[PIPES + 4];
    return WellVolume.hole(x, 0) * x[FIGURES + 1]
        + pipe(x[PIPES], x[PIPES + 1])
        + pipe(x[PIPES + 2], x[PIPES + 3])
        + tank;
  }

  private static double pipe(double length, double inside) {
    double volume = Math.PI / 4 * inside * inside * length;
    return Double.isNaN(volume) ? 0 : volume;
  }

  /**
   * The dose stated, or the nearest that is enough and not too strong: what is to be put in must
   * not repeat a dose that was found wrong.
   */
  private static double dose(double[] x) {
    return Double.isNaN(x[DOSE_AT])
        ? x[FIGURES]
        : Math.max(x[FIGURES], Math.min(x[DOSE_AT], x[FIGURES + 3]));
  }

  static List<Figure> figures() {
    return List.of(
        new Figure(
            DOSE,
            Units.MILLIGRAM_PER_LITRE.toSi(50),
            Units.MILLIGRAM_PER_LITRE,
            "chlorine to be put in where the record gives no dose or a lesser one",
            "Indiana Administrative Code 327 IAC 8-3.4-24, whose table works out to it"),
        new Figure(
            MOST,
            Units.MILLIGRAM_PER_LITRE.toSi(200),
            Units.MILLIGRAM_PER_LITRE,
            "chlorine to be put in where the record gives a greater dose",
            "common practice"),
        new Figure(
            TIMES,
            1,
            Units.ONE,
            "how many times the water in the well is counted",
            "327 IAC 8-3.4-24: once; Alberta Agriculture, Water Wells That Last: twice for a"
                + " drilled well"),
        new Figure(
            DRY,
            0.65,
            Units.PERCENT,
            "available chlorine of calcium hypochlorite",
            "Indiana Administrative Code 327 IAC 8-3.4-24"),
        new Figure(
            BLEACH,
            0.0525,
            Units.PERCENT,
            "trade percent of household bleach",
            "MIL-HDBK-1164; Alberta Agriculture, Water Wells That Last"));
  }

  private static Draft steps(Draft draft) {
    return draft
        .source(
            "mass balance; tables of 327 IAC 8-3.4-24 and of Alberta Agriculture, Water Wells That"
                + " Last, Module 6")
        .reads(inputs())
        .step("volume", Units.US_GALLON, Units.LITRE, Chlorination::volume)
        .step("dose", Units.MILLIGRAM_PER_LITRE, Units.MILLIGRAM_PER_LITRE, Chlorination::dose);
  }

  static List<Working> workings() {
    return List.of(
        steps(
                Draft.of(
                    "chlorine_needed",
                    Units.POUND,
                    Units.KILOGRAM,
                    "dry product for the water in well, pipes and tank at the dose stated, or the"
                        + " nearest that is enough and not too strong; water outside a liner is counted, a cistern is not"))
            .formula("{volume} x {dose} / {dry_chlorine_strength}")
            .figures(DOSE, TIMES, DRY, MOST)
            .by(x -> dryProduct(volume(x), dose(x), x[FIGURES + 2])),
        steps(
                Draft.of(
                    "bleach_needed",
                    Units.US_GALLON,
                    Units.LITRE,
                    "liquid product for the water in well, pipes and tank at the dose stated, or the"
                        + " nearest that is enough and not too strong; water outside a liner is counted, a cistern is not"))
            .formula("{volume} x {dose} / ({bleach_strength} x 1000 g/L)")
            .figures(DOSE, TIMES, BLEACH, MOST)
            .by(x -> liquidProduct(volume(x), dose(x), x[FIGURES + 2])),
        Draft.of(
                "contact_product",
                Units.MILLIGRAM_HOUR_PER_LITRE,
                Units.MILLIGRAM_HOUR_PER_LITRE,
                "dose times the time that it stood")
            .formula("{disinfection.dose} x {disinfection.contact_time}")
            .reads(required("disinfection.dose"), required("disinfection.contact_time"))
            .by(x -> x[0] * x[1]));
  }
}
