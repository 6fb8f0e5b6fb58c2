package org.wellcurb.workings;

import static org.wellcurb.workings.Input.helpful;
import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** Head lost in pipe. Metres, m3/s. */
public final class PipeFriction {
  private static final String PLASTIC = "roughness_plastic";
  private static final String GALVANIZED = "roughness_galvanized";
  private static final String OTHER_METAL = "roughness_other_metal";

  /** The figures of {@link #drop} and {@link #line}, in its order. */
  static final String[] FIGURES = {PLASTIC, GALVANIZED, OTHER_METAL};

  static final String SOURCE =
      "Hazen-Williams; figures of C checked with Illinois Administrative Code 77-906 Exhibit I"
          + " (150) and the C = 100 tables credited to the American Gas Association and NFPA";

  private static final double PE = Choices.place("drop_pipe.material", "pe");
  private static final double PVC = Choices.place("drop_pipe.material", "pvc");
  private static final double STEEL = Choices.place("drop_pipe.material", "galvanized steel");
  private static final double STAINLESS = Choices.place("drop_pipe.material", "stainless steel");
  private static final double COPPER = Choices.place("drop_pipe.material", "copper");
  private static final double HOSE = Choices.place("drop_pipe.material", "flexible hose");
  private static final double LINE_PE = Choices.place("service_line.material", "pe");
  private static final double LINE_PVC = Choices.place("service_line.material", "pvc");
  private static final double LINE_COPPER = Choices.place("service_line.material", "copper");
  private static final double LINE_STEEL =
      Choices.place("service_line.material", "galvanized steel");

  private PipeFriction() {}

  /**
   * Head lost (m) by Hazen-Williams: 10.67 L Q^1.852 / (C^1.852 d^4.8704). For turbulent water near
   * 60 degF, a pipe of true inside diameter d; fittings are not in it. No flow loses nothing;
   * unknown (NaN) for a diameter that is not above 0.
   *
   * @param c 150 for PVC and PE, 100 for galvanized steel
   */
  public static double loss(double length, double flow, double inside, double c) {
    if (!(inside > 0 && c > 0)) {
      return Double.NaN;
    }
    return flow == 0 || length == 0
        ? 0
        : 10.67 * length * Math.pow(flow / c, 1.852) / Math.pow(inside, 4.8704);
  }

  /** Velocity (m/s): flow / (pi/4 d^2); 0.4085 Q / d^2 ft/s in gpm and inches. */
  public static double velocity(double flow, double inside) {
    return flow / (Math.PI / 4 * inside * inside);
  }

  /**
   * Loss in the drop pipe; length, inside diameter and material stand from {@code at}, the flow at
   * {@code flow}, the figures from {@code figures}.
   */
  static double drop(double[] x, int at, int flow, int figures) {
    return loss(x[at], x[flow], x[at + 1], dropC(x[at + 2], x, figures));
  }

  private static double dropC(double material, double[] x, int figures) {
    return material == PE || material == PVC || material == HOSE
        ? x[figures]
        : material == STEEL
            ? x[figures + 1]
            : material == COPPER || material == STAINLESS ? x[figures + 2] : Double.NaN;
  }

  /** Loss in the service line, likewise; 0 where no length of line is given. */
  static double line(double[] x, int at, int flow, int figures) {
    if (Double.isNaN(x[at])) {
      return 0;
    }
    return loss(x[at], x[flow], x[at + 1], lineC(x[at + 2], x, figures));
  }

  private static double lineC(double material, double[] x, int figures) {
    return material == LINE_PE || material == LINE_PVC
        ? x[figures]
        : material == LINE_STEEL
            ? x[figures + 1]
            : material == LINE_COPPER ? x[figures + 2] : Double.NaN;
  }

  static List<Figure> figures() {
    return List.of(
        new Figure(
            PLASTIC,
            150,
            Units.ONE,
            "Hazen-Williams C of PVC, PE and flexible hose",
            "Illinois Administrative Code 77-906 Exhibit I (PVC); PE and hose by common practice"),
        new Figure(
            GALVANIZED,
            100,
            Units.ONE,
            "Hazen-Williams C of galvanized steel in service",
            "friction tables credited to the American Gas Association and NFPA"),
        new Figure(
            OTHER_METAL,
            130,
            Units.ONE,
            "Hazen-Williams C of copper and stainless steel",
            "common practice (from memory)"));
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "friction_drop_pipe",
                Units.FOOT,
                Units.METRE,
                "head lost in the drop pipe at the rated flow, without fittings")
            .formula(
                "10.67 x {drop_pipe.length} x {pump.rated_flow}^1.852 / ({C}^1.852 x"
                    + " {drop_pipe.inside_diameter}^4.8704); in m and m3/s,"
                    + " {drop_pipe.material}")
            .source(SOURCE)
            .reads(
                required("drop_pipe.length"),
                required("drop_pipe.inside_diameter"),
                required("drop_pipe.material"),
                required("pump.rated_flow"))
            .figures(FIGURES)
            .step("C", Units.ONE, Units.ONE, x -> dropC(x[2], x, 4))
            .by(x -> drop(x, 0, 3, 4)),
        Draft.of(
                "friction_service_line",
                Units.FOOT,
                Units.METRE,
                "head lost in the buried line at the rated flow, without fittings")
            .formula(
                "10.67 x {service_line.length} x {pump.rated_flow}^1.852 / ({C}^1.852 x"
                    + " {service_line.inside_diameter}^4.8704); in m and m3/s,"
                    + " {service_line.material}")
            .source(SOURCE)
            .reads(
                required("service_line.length"),
                required("service_line.inside_diameter"),
                required("service_line.material"),
                required("pump.rated_flow"))
            .figures(FIGURES)
            .step("C", Units.ONE, Units.ONE, x -> lineC(x[2], x, 4))
            .by(x -> line(x, 0, 3, 4)));
  }

  /** The inputs of {@link #drop} and then of {@link #line}, for workings that add both. */
  static Input[] bothPipes() {
    return new Input[] {
      required("drop_pipe.length"),
      required("drop_pipe.inside_diameter"),
      required("drop_pipe.material"),
      optional("service_line.length"),
      helpful("service_line.inside_diameter"),
      helpful("service_line.material")
    };
  }
}
