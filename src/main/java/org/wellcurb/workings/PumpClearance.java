package org.wellcurb.workings;

import static org.wellcurb.workings.Input.helpful;
import static org.wellcurb.workings.Input.helpfulBeside;
import static org.wellcurb.workings.Input.neededBeside;
import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** Room around the pump: for it to pass, and for the water that cools its motor. Metres, m3/s. */
public final class PumpClearance {
  private PumpClearance() {}

  /**
   * Least inside diameter that the pump passes (m): the casing's, or the liner's where the pump
   * hangs below its top (or either depth is not given). Unknown (NaN) below the top of a liner of
   * which only the depths are given.
   */
  static double leastInside(
      double casing, double liner, double linerTop, double linerBottom, double intake) {
    boolean isLined = !Double.isNaN(liner) || !Double.isNaN(linerTop) || !Double.isNaN(linerBottom);
    return isLined && !(intake < linerTop) ? Math.min(casing, liner) : casing;
  }

  /**
   * Velocity of the water past the motor (m/s): flow / (pi/4 (inside^2 - motor^2)); 0.4085 Q / (D^2
   * - d^2) ft/s in gpm and inches. Unknown (NaN) where the motor fills the bore. Continuity.
   */
  public static double coolingVelocity(double flow, double inside, double motor) {
    return inside > motor ? flow / (Math.PI / 4 * (inside * inside - motor * motor)) : Double.NaN;
  }

  /**
   * Diameter of what leads the water past the motor (m): a sleeve, else the open hole where the
   * pump hangs below the casing, else the casing or the liner.
   */
  private static double around(double[] x) {
    boolean isSleeved = x[2] == 1 || (!Double.isNaN(x[3]) && x[2] != 0);
    if (isSleeved) {
      return x[3];
    }
    boolean isInHole = !Double.isNaN(x[6]) && x[4] >= x[5];
    double bore = isInHole ? x[6] : CasingSize.inside(x, 9);
    return leastInside(bore, x[7], x[8], x[14], x[4]);
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "pump_clearance",
                Units.INCH,
                Units.MILLIMETRE,
                "least inside diameter of casing and liner down to the pump, less the motor's"
                    + " diameter")
            .formula("{inside diameter} - {pump.motor_diameter}")
            .source("geometry; " + CasingSize.SOURCE)
            .reads(
                required("pump.motor_diameter"),
                neededBeside("well.liner_inside_diameter", "well.liner_top", "well.liner_bottom"),
                optional("well.liner_top"),
                optional("pump.intake_depth"))
            .reads(CasingSize.inputs())
            .reads(optional("well.liner_bottom"))
            .step(
                "inside diameter",
                Units.INCH,
                Units.MILLIMETRE,
                x -> leastInside(CasingSize.inside(x, 4), x[1], x[2], x[9], x[3]))
            .by(x -> leastInside(CasingSize.inside(x, 4), x[1], x[2], x[9], x[3]) - x[0]),
        Draft.of(
                "cooling_velocity",
                Units.FOOT_PER_SECOND,
                Units.METRE_PER_SECOND,
                "velocity of the water past the motor at the rated flow, within a flow sleeve if"
                    + " there is one")
            .formula(
                "{pump.rated_flow} / (pi/4 x ({diameter around the motor}^2 -"
                    + " {pump.motor_diameter}^2))")
            .source("continuity; " + CasingSize.SOURCE)
            .reads(
                required("pump.rated_flow"),
                required("pump.motor_diameter"),
                optional("pump.flow_sleeve"),
                helpful("pump.sleeve_diameter"),
                helpfulBeside("pump.intake_depth", "well.open_hole_diameter"),
                optional("well.casing_depth"),
                optional("well.open_hole_diameter"),
                neededBeside("well.liner_inside_diameter", "well.liner_top", "well.liner_bottom"),
                optional("well.liner_top"))
            .reads(CasingSize.inputs())
            .reads(optional("well.liner_bottom"))
            .turns(Turn.atInput(4, 5), Turn.atInput(4, 8), Turn.atInput(5, 4), Turn.atInput(8, 4))
            .step("diameter around the motor", Units.INCH, Units.MILLIMETRE, PumpClearance::around)
            .by(x -> coolingVelocity(x[0], around(x), x[1])));
  }
}
