package org.wellcurb.workings;

import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** What the rise of the level after pumping says of the inflow. Metres, seconds, m3/s. */
public final class Recovery {
  /**
   * Wall taken for the drop pipe (m), 0.14 in: the middle of schedule 40 from 3/4 to 2 in. Common
   * practice; it changes the area by a hundredth.
   */
  private static final double DROP_PIPE_WALL = 0.14 * 0.0254;

  private Recovery() {}

  /**
   * Inflow at the test's drawdown (m3/s): specific capacity A ln(s0 / (s0 - rise)) / time, times
   * the drawdown s0. For a small rise it is A x rise / time. It holds while water out of storage
   * fills the well; unknown (NaN) where the level came all the way back, for nothing tells when.
   * Source: the solution of A dh/dt = (specific capacity) x drawdown; A x rise / time as printed in
   * MIL-HDBK-1164.
   *
   * @param area of the water surface in the well (m2)
   * @param drawdown when recovery began (m)
   * @param rise in that time (m)
   */
  public static double inflow(double area, double drawdown, double rise, double time) {
    return area > 0 && time > 0 && rise >= 0 && rise < drawdown
        ? area * drawdown * Math.log(drawdown / (drawdown - rise)) / time
        : Double.NaN;
  }

  /**
   * Area that the rising water fills (m2): the mean of casing, open hole and liner over the rise,
   * less the drop pipe; a drop pipe of NaN is left out. Not known (NaN) where the rise passes an
   * end of the liner: there the area leaps, and a range of levels has its extreme at no corner.
   */
  private static double area(double[] x) {
    if (passes(x, x[17]) || passes(x, x[18])) {
      return Double.NaN;
    }
    double pipe = Double.isNaN(x[5]) ? 0 : x[5] + 2 * DROP_PIPE_WALL;
    return WellVolume.meanArea(x, 6, x[2] - x[0], x[2]) - Math.PI / 4 * pipe * pipe;
  }

  /** Whether the rise passes this depth, or begins there. */
  private static boolean passes(double[] x, double depth) {
    return x[2] >= depth && x[2] - x[0] < depth;
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "recovery_inflow",
                Units.GPM,
                Units.LITRE_PER_MINUTE,
                "inflow that the recovery of the level implies, while casing, open hole or liner"
                    + " fills")
            .formula(
                "{area} x {drawdown} x ln({drawdown} / ({drawdown} - {water.recovery_rise})) /"
                    + " {water.recovery_time}")
            .source(
                "water balance of the well; rise x volume a foot / minutes in MIL-HDBK-1164 for"
                    + " a small rise")
            .reads(
                required("water.recovery_rise"),
                required("water.recovery_time"),
                required("water.pumping_level"),
                required("water.static_level"),
                optional("water.test_method"),
                optional("drop_pipe.inside_diameter"))
            .reads(WellVolume.bore())
            .turns(
                Turn.atInput(2, 11),
                Turn.atInput(11, 2),
                Turn.atInput(2, 17),
                Turn.atInput(17, 2),
                Turn.atInput(2, 18),
                Turn.atInput(18, 2))
            .step("area", Units.SQUARE_FOOT, Units.SQUARE_METRE, Recovery::area)
            .step("drawdown", Units.FOOT, Units.METRE, x -> WellHydraulics.drawdown(x[2], x[3]))
            .by(
                x ->
                    WellHydraulics.isMeasured(x[4])
                        ? inflow(area(x), WellHydraulics.drawdown(x[2], x[3]), x[0], x[1])
                        : Double.NaN));
  }
}
