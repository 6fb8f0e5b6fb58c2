package org.wellcurb.workings;

import static org.wellcurb.workings.Input.helpful;

import java.util.List;
import org.wellcurb.quantity.Units;

/**
 * True inside and outside diameter of a casing, never its nominal size. Metres.
 *
 * <p>A nominal size of steel, stainless steel, PVC or ABS is of iron pipe size (6 in is 6.625 in
 * outside); of concrete it is the inside. Where the form does not say what the diameter means, a
 * nominal size of the table is taken as nominal and an outside diameter of the table as outside;
 * anything else is unknown. Plastic of 4.5 in is unknown too: it may be nominal 4 or 4-1/2.
 *
 * <p>Where the form states neither a wall nor a schedule that is understood, the wall may be any
 * that is published for the size, and the inside diameter is a range.
 */
public final class CasingSize {
  private static final double NOMINAL = Choices.place("well.casing_size_is", "nominal");
  private static final double OUTSIDE = Choices.place("well.casing_size_is", "outside");
  private static final double INSIDE = Choices.place("well.casing_size_is", "inside");
  private static final double STEEL = Choices.place("well.casing_material", "steel");
  private static final double STAINLESS = Choices.place("well.casing_material", "stainless steel");
  private static final double PVC = Choices.place("well.casing_material", "pvc");
  private static final double ABS = Choices.place("well.casing_material", "abs");
  private static final double CONCRETE = Choices.place("well.casing_material", "concrete");

  private static final double INCH = 0.0254;

  /** From this nominal size on, the outside diameter of pipe is its nominal size. */
  private static final double LARGE = 13.9 * INCH;

  private static final double PVC_FOUR_AND_A_HALF = 4.5 * INCH;

  /** Pounds a foot of steel pipe are this times (outside - wall) x wall, in inches. */
  private static final double STEEL_WEIGHT = 10.68;

  /** Dimension ratios of plastic casing go from this (ASTM F480, from memory). */
  private static final double LEAST_RATIO = 13.5;

  private static final double MOST_RATIO = 41;

  static final String SOURCE =
      "iron pipe sizes: Illinois Administrative Code 35-604 Table A, Minnesota Rules 4725.2350, and"
          + " ASME B36.10M and ASTM F480 (from memory); where neither wall nor schedule is stated,"
          + " all published walls of the size";

  private CasingSize() {}

  /** The inputs of {@link #inside(double[], int)} and {@link #outside(double[], int)}. */
  static List<Input> inputs() {
    return List.of(
        Input.size("well.casing_diameter"),
        helpful("well.casing_size_is"),
        helpful("well.casing_wall"),
        Input.text("well.casing_schedule", WallClass.CODE),
        helpful("well.casing_material"));
  }

  /** Outside diameter, with the {@link #inputs} from place {@code at} on. */
  static double outside(double[] x, int at) {
    return outside(x[at], x[at + 1], x[at + 2], x[at + 3], x[at + 4]);
  }

  /** Inside diameter, with the {@link #inputs} from place {@code at} on. */
  static double inside(double[] x, int at) {
    return inside(x[at], x[at + 1], x[at + 2], x[at + 3], x[at + 4]);
  }

  /**
   * Outside diameter (m). NaN where it cannot be known.
   *
   * @param diameter as the form has it (m)
   * @param sizeIs what that means, or NaN
   * @param wall thickness (m), or NaN
   * @param wallClass the wall as a {@link WallClass}, or NaN
   * @param material of the casing, or NaN
   */
  static double outside(
      double diameter, double sizeIs, double wall, double wallClass, double material) {
    if (isOfInside(sizeIs, material)) {
      return diameter + 2 * wallOfInside(diameter, wall, wallClass, material);
    }
    if (sizeIs == OUTSIDE) {
      return diameter;
    }
    boolean nominal = sizeIs == NOMINAL;
    boolean plastic = isPlastic(material);
    boolean pipe = plastic || isSteel(material);
    if (!pipe && !(Double.isNaN(material) && diameter < LARGE)) {
      return Double.NaN;
    }
    boolean fourAndAHalf = Math.abs(diameter - PVC_FOUR_AND_A_HALF) < 0.01 * diameter;
    if (fourAndAHalf && !nominal && !isSteel(material)) {
      return Double.NaN;
    }
    double ofNominal =
        fourAndAHalf && !(nominal && plastic) ? Double.NaN : PipeSizes.outsideOfNominal(diameter);
    if (!Double.isNaN(ofNominal)) {
      return ofNominal;
    }
    if (diameter >= LARGE && nominal) {
      return diameter;
    }
    return nominal ? Double.NaN : PipeSizes.outsideNear(diameter);
  }

  /** Inside diameter (m); NaN where it cannot be known. Parameters as for the outside. */
  static double inside(
      double diameter, double sizeIs, double wall, double wallClass, double material) {
    if (isOfInside(sizeIs, material)) {
      return diameter;
    }
    double outside = outside(diameter, sizeIs, wall, wallClass, material);
    double inside = outside - 2 * wall(outside, wall, wallClass, material);
    return inside > 0 ? inside : Double.NaN;
  }

  private static boolean isOfInside(double sizeIs, double material) {
    return sizeIs == INSIDE || (material == CONCRETE && sizeIs != OUTSIDE);
  }

  /**
   * Wall thickness (m) of a casing of this outside diameter. A dimension ratio is outside / least
   * wall (ASTM F480, from memory); the weight of steel is 10.68 (D - t) t lb/ft with inches
   * (checked with Minnesota Rules 4725.2350).
   */
  static double wall(double outside, double wall, double wallClass, double material) {
    if (!Double.isNaN(wall)) {
      return wall;
    }
    double figure = WallClass.figure(wallClass);
    return switch (wayFor(wallClass, material)) {
      case WallClass.RATIO -> outside / figure;
      case WallClass.INCHES -> figure * INCH;
      case WallClass.POUNDS_PER_FOOT -> {
        double d = outside / INCH;
        yield (d - Math.sqrt(d * d - 4 * figure / STEEL_WEIGHT)) / 2 * INCH;
      }
      case WallClass.UNSAID -> {
        double thinnest = thinnest(outside, material);
        yield thinnest + WallClass.share(wallClass) * (thickest(outside, material) - thinnest);
      }
      case -1 -> Double.NaN;
      default -> PipeSizes.wall(outside, wallClass);
    };
  }

  /**
   * The thinnest wall (m) published for a casing of this outside diameter: of steel the thinnest of
   * the table, of plastic that of the largest dimension ratio, of a material that is not said the
   * thinner of both. NaN for other materials, and for a size that the table does not have.
   */
  private static double thinnest(double outside, double material) {
    double ofTable = PipeSizes.thinnest(outside);
    double ofRatio = outside / MOST_RATIO;
    if (isSteel(material) || Double.isNaN(ofTable)) {
      return ofTable;
    }
    if (isPlastic(material)) {
      return ofRatio;
    }
    return Double.isNaN(material) ? Math.min(ofTable, ofRatio) : Double.NaN;
  }

  /** The thickest, by the same: of plastic schedule 80 or the smallest dimension ratio. */
  private static double thickest(double outside, double material) {
    double ofTable = PipeSizes.thickest(outside);
    return isSteel(material) ? ofTable : Math.max(ofTable, outside / LEAST_RATIO);
  }

  private static boolean isPlastic(double material) {
    return material == PVC || material == ABS;
  }

  private static boolean isSteel(double material) {
    return material == STEEL || material == STAINLESS;
  }

  private static double wallOfInside(
      double inside, double wall, double wallClass, double material) {
    if (!Double.isNaN(wall)) {
      return wall;
    }
    double figure = WallClass.figure(wallClass);
    return switch (wayFor(wallClass, material)) {
      case WallClass.RATIO -> figure > 2 ? inside / (figure - 2) : Double.NaN;
      case WallClass.INCHES -> figure * INCH;
      case WallClass.POUNDS_PER_FOOT -> {
        double d = inside / INCH;
        yield (Math.sqrt(d * d + 4 * figure / STEEL_WEIGHT) - d) / 2 * INCH;
      }
      case WallClass.UNSAID, -1 -> Double.NaN;
      default -> PipeSizes.wallOfInside(inside, wallClass);
    };
  }

  /** A bare number is a dimension ratio of plastic, pounds a foot of steel, else not known. */
  private static int wayFor(double wallClass, double material) {
    int way = WallClass.way(wallClass);
    if (way != WallClass.BARE) {
      return way;
    }
    if (isPlastic(material)) {
      return WallClass.RATIO;
    }
    return material == STEEL ? WallClass.POUNDS_PER_FOOT : -1;
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "casing_inside_diameter",
                Units.INCH,
                Units.MILLIMETRE,
                "true inside diameter of the casing: outside less two walls")
            .formula(
                "{inside as stated}, or {outside} - 2 x {wall}; {well.casing_diameter},"
                    + " {well.casing_size_is}")
            .source(SOURCE)
            .reads(inputs())
            .step(
                "inside as stated",
                Units.INCH,
                Units.MILLIMETRE,
                x -> Double.isNaN(outside(x, 0)) ? inside(x, 0) : Double.NaN)
            .step("outside", Units.INCH, Units.MILLIMETRE, x -> outside(x, 0))
            .step("wall", Units.INCH, Units.MILLIMETRE, x -> (outside(x, 0) - inside(x, 0)) / 2)
            .by(x -> inside(x, 0)),
        Draft.of(
                "casing_outside_diameter",
                Units.INCH,
                Units.MILLIMETRE,
                "true outside diameter of the casing, by its nominal size")
            .formula(
                "{well.casing_diameter}, {well.casing_size_is}, {well.casing_material}: {by the table}")
            .source(SOURCE)
            .reads(inputs())
            .step("by the table", Units.INCH, Units.MILLIMETRE, x -> outside(x, 0))
            .by(x -> outside(x, 0)));
  }
}
