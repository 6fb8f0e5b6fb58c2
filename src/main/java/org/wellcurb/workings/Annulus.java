package org.wellcurb.workings;

import static org.wellcurb.workings.Input.helpful;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** The space between bore and casing, and how far down things go. Metres, m3. */
public final class Annulus {
  private Annulus() {}

  /**
   * Width of the annulus (m): (bore - casing outside) / 2. Negative where the casing is wider than
   * the bore. Geometry.
   */
  public static double width(double bore, double casingOutside) {
    return (bore - casingOutside) / 2;
  }

  /**
   * Volume of the annulus (m3): pi/4 (bore^2 - outside^2) x length. Unknown (NaN) where the casing
   * is wider than the bore or the length is negative. Geometry.
   */
  public static double volume(double bore, double casingOutside, double length) {
    return bore >= casingOutside && length >= 0
        ? Math.PI / 4 * (bore * bore - casingOutside * casingOutside) * length
        : Double.NaN;
  }

  /**
   * Depth of the casing's foot below ground (m): as stated, or the length less the stick-up. NaN
   * for what is not given.
   */
  public static double casingFoot(double statedDepth, double length, double stickup) {
    return Double.isNaN(statedDepth) ? length - stickup : statedDepth;
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "annulus_width",
                Units.INCH,
                Units.MILLIMETRE,
                "space between bore and casing on each side, with the casing's true outside")
            .formula("({well.bore_diameter} - {casing outside}) / 2")
            .source("geometry; " + CasingSize.SOURCE)
            .reads(required("well.bore_diameter"))
            .reads(CasingSize.inputs())
            .step("casing outside", Units.INCH, Units.MILLIMETRE, x -> CasingSize.outside(x, 1))
            .by(x -> width(x[0], CasingSize.outside(x, 1))),
        Draft.of(
                "annulus_volume",
                Units.CUBIC_FOOT,
                Units.CUBIC_METRE,
                "space to be filled with grout between bore and casing, from the grout's top to its"
                    + " bottom")
            .formula(
                "pi/4 x ({well.bore_diameter}^2 - {casing outside}^2) x ({grout.bottom} -"
                    + " {grout.top})")
            .source("geometry; " + CasingSize.SOURCE)
            .reads(required("well.bore_diameter"), required("grout.bottom"), required("grout.top"))
            .reads(CasingSize.inputs())
            .step("casing outside", Units.INCH, Units.MILLIMETRE, x -> CasingSize.outside(x, 3))
            .by(x -> volume(x[0], CasingSize.outside(x, 3), x[1] - x[2])),
        Draft.of("grout_length", Units.FOOT, Units.METRE, "length of the grouted interval")
            .formula("{grout.bottom} - {grout.top}")
            .source("geometry")
            .reads(required("grout.bottom"), required("grout.top"))
            .by(x -> x[0] - x[1]),
        Draft.of(
                "casing_below_ground",
                Units.FOOT,
                Units.METRE,
                "depth of the casing's foot below ground: as stated, or its length less the"
                    + " stick-up")
            .formula("{well.casing_depth}, or {well.casing_length} - {well.stickup}")
            .source("geometry")
            .reads(
                helpful("well.casing_depth"),
                helpful("well.casing_length"),
                helpful("well.stickup"))
            .by(x -> casingFoot(x[0], x[1], x[2])),
        Draft.of(
                "casing_into_rock",
                Units.FOOT,
                Units.METRE,
                "length of casing below the top of the rock")
            .formula(
                "({well.casing_depth}, or {well.casing_length} - {well.stickup}) -"
                    + " {well.rock_depth}")
            .source("geometry")
            .reads(
                required("well.rock_depth"),
                helpful("well.casing_depth"),
                helpful("well.casing_length"),
                helpful("well.stickup"))
            .by(x -> casingFoot(x[1], x[2], x[3]) - x[0]));
  }
}
