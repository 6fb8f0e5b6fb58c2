package org.wellcurb.workings;

import static org.wellcurb.workings.Input.helpful;
import static org.wellcurb.workings.Input.neededBeside;
import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.quantity.Units;

/**
 * Water that stands in a well. Metres below ground, m3.
 *
 * <p>Down to the casing's foot it stands in the casing, below in the open hole where its diameter
 * is given and else, as in a screen, at the casing's diameter; within a liner at the liner's. Its
 * top is the static level, but no higher than the top of the casing.
 */
public final class WellVolume {
  /** How many inputs {@link #inputs} has. */
  static final int INPUTS = 15;

  private WellVolume() {}

  /**
   * The inputs of {@link #down(double[], int, double)}: static level, stick-up, the five of {@link
   * CasingSize}, foot and length of the casing, open hole and its diameter, liner.
   */
  static List<Input> inputs() {
    List<Input> inputs = new ArrayList<>();
    inputs.add(required("water.static_level"));
    inputs.add(helpful("well.stickup"));
    inputs.addAll(CasingSize.inputs());
    inputs.add(helpful("well.casing_depth"));
    inputs.add(helpful("well.casing_length"));
    inputs.addAll(withinBore());
    inputs.add(required("well.depth"));
    return inputs;
  }

  /** What the bore is besides its casing: open hole and its diameter, liner, its top and bottom. */
  private static List<Input> withinBore() {
    return List.of(
        optional("well.open_hole"),
        helpful("well.open_hole_diameter"),
        neededBeside("well.liner_inside_diameter", "well.liner_top", "well.liner_bottom"),
        neededBeside("well.liner_top", "well.liner_inside_diameter"),
        neededBeside("well.liner_bottom", "well.liner_inside_diameter"));
  }

  /** Water between its top and a depth, or the bottom of the well if that is higher (m3). */
  static double down(double[] x, int at, double depth) {
    double top = top(x, at);
    double bottom = Math.min(depth, x[at + 14]);
    double inside = area(CasingSize.inside(x, at + 2));
    return Double.isNaN(top)
        ? Double.NaN
        : between(top, bottom, inside, foot(x, at, bottom), x, at + 9);
  }

  /**
   * Water between its top and the bottom of the well in casing and hole as if no liner stood there
   * (m3): a slotted liner, or one that is not sealed, has water outside, which chlorine must reach.
   */
  static double hole(double[] x, int at) {
    double top = top(x, at);
    double bottom = x[at + 14];
    double foot = foot(x, at, bottom);
    double inside = area(CasingSize.inside(x, at + 2));
    double below = isOpen(x, at + 9) && foot < bottom ? area(x[at + 10]) : inside;
    return Double.isNaN(top) ? Double.NaN : volume(top, bottom, inside, foot, below);
  }

  /**
   * Water between two depths in casing, open hole and liner (m3).
   *
   * @param casing area inside it (m2)
   * @param within place of the inputs of {@link #withinBore}
   */
  private static double between(
      double top, double bottom, double casing, double foot, double[] x, int within) {
    double below = isOpen(x, within) && foot < bottom ? area(x[within + 1]) : casing;
    double liner = area(x[within + 2]);
    return volume(top, bottom, casing, foot, below)
        + liner(top, bottom, casing, foot, below, liner, x[within + 3], x[within + 4]);
  }

  /**
   * The inputs of {@link #meanArea}, none of them required: the five of {@link CasingSize}, foot
   * and length of the casing, stick-up, open hole and its diameter, liner.
   */
  static List<Input> bore() {
    List<Input> inputs = new ArrayList<>(CasingSize.inputs());
    inputs.add(helpful("well.casing_depth"));
    inputs.add(helpful("well.casing_length"));
    inputs.add(helpful("well.stickup"));
    inputs.addAll(withinBore());
    return inputs;
  }

  /**
   * Mean area of the water between two depths (m2), in casing, open hole and liner, by the inputs
   * of {@link #bore} from place {@code at} on. Not known (NaN) where what lies there is not known.
   */
  static double meanArea(double[] x, int at, double top, double bottom) {
    double casing = area(CasingSize.inside(x, at));
    double foot = isOpen(x, at + 8) ? Annulus.casingFoot(x[at + 5], x[at + 6], x[at + 7]) : bottom;
    return between(top, bottom, casing, foot, x, at + 8) / (bottom - top);
  }

  /** Top of the water; not known (NaN) for water above ground in a casing of unknown height. */
  private static double top(double[] x, int at) {
    double level = x[at];
    double stickup = x[at + 1];
    if (Double.isNaN(stickup)) {
      return level < 0 ? Double.NaN : level;
    }
    // No higher than the casing top, which may itself lie below ground, in a pit.
    return Math.max(level, -stickup);
  }

  private static boolean isOpen(double[] x, int within) {
    return x[within] == 1 || (!Double.isNaN(x[within + 1]) && x[within] != 0);
  }

  private static double foot(double[] x, int at, double bottom) {
    return isOpen(x, at + 9) ? Annulus.casingFoot(x[at + 7], x[at + 8], x[at + 1]) : bottom;
  }

  private static double area(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }

  /**
   * Water in a bore that has one area down to {@code foot} and another below it (m3): sum of area x
   * height. Geometry; 0.0408 d^2 US gallons a foot with d in inches.
   */
  static double volume(double top, double bottom, double above, double foot, double below) {
    double upper = overlap(top, bottom, Double.NEGATIVE_INFINITY, foot);
    double lower = overlap(top, bottom, foot, Double.POSITIVE_INFINITY);
    return part(above, upper) + part(below, lower);
  }

  /**
   * What a liner takes away from that (m3, not above 0). A liner of NaN takes nothing, unless its
   * depths tell that there is one: then that is unknown (NaN), as is one wider than what it stands
   * in, which is a contradiction.
   */
  private static double liner(
      double top,
      double bottom,
      double above,
      double foot,
      double below,
      double liner,
      double linerTop,
      double linerBottom) {
    if (Double.isNaN(liner)) {
      return Double.isNaN(linerTop) && Double.isNaN(linerBottom) ? 0 : Double.NaN;
    }
    double upper = overlap(top, bottom, linerTop, Math.min(linerBottom, foot));
    double lower = overlap(top, bottom, Math.max(linerTop, foot), linerBottom);
    return liner <= above && liner <= below
        ? part(liner - above, upper) + part(liner - below, lower)
        : Double.NaN;
  }

  /** Length that two stretches have in common; 0 if none. */
  private static double overlap(double top1, double bottom1, double top2, double bottom2) {
    return Math.max(0, Math.min(bottom1, bottom2) - Math.max(top1, top2));
  }

  private static double part(double area, double length) {
    return length == 0 ? 0 : area * length;
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "casing_water_volume",
                Units.US_GALLON,
                Units.LITRE,
                "water standing in the well at its static level")
            .formula(
                "pi/4 x ({inside diameter}^2 x {length in the casing} + {diameter below}^2 x"
                    + " {length below}) + {change by the liner}; {well.liner_inside_diameter}")
            .source("geometry; " + CasingSize.SOURCE)
            .reads(inputs())
            .step("inside diameter", Units.INCH, Units.MILLIMETRE, x -> CasingSize.inside(x, 2))
            .step(
                "length in the casing",
                Units.FOOT,
                Units.METRE,
                x -> overlap(top(x, 0), x[14], Double.NEGATIVE_INFINITY, foot(x, 0, x[14])))
            .step("diameter below", Units.INCH, Units.MILLIMETRE, WellVolume::diameterBelow)
            .step(
                "length below",
                Units.FOOT,
                Units.METRE,
                x -> overlap(top(x, 0), x[14], foot(x, 0, x[14]), Double.POSITIVE_INFINITY))
            .step("change by the liner", Units.US_GALLON, Units.LITRE, WellVolume::byLiner)
            .by(x -> down(x, 0, x[14])));
  }

  /** Of a well by itself, at place 0. */
  private static double diameterBelow(double[] x) {
    return isOpen(x, 9) && foot(x, 0, x[14]) < x[14] ? x[10] : CasingSize.inside(x, 2);
  }

  private static double byLiner(double[] x) {
    double inside = CasingSize.inside(x, 2);
    return liner(
        top(x, 0),
        x[14],
        area(inside),
        foot(x, 0, x[14]),
        area(diameterBelow(x)),
        area(x[11]),
        x[12],
        x[13]);
  }
}
