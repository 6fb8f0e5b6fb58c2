package org.wellcurb.workings;

import static org.wellcurb.workings.Input.helpful;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.quantity.Units;

/** What the bags of grout make. Kilograms, m3. */
public final class Grout {
  private static final double NEAT = Choices.place("grout.material", "neat cement");
  private static final double SLURRY = Choices.place("grout.material", "bentonite slurry");
  private static final double CHIPS = Choices.place("grout.material", "bentonite chips");
  private static final double NONE = Choices.place("grout.material", "none");

  private static final String CEMENT_BAG = "cement_bag";
  private static final String CEMENT_GRAVITY = "cement_specific_gravity";
  private static final String BENTONITE_GRAVITY = "bentonite_specific_gravity";
  private static final String CHIPS_DENSITY = "bentonite_chips_density";
  private static final String[] FIGURES = {
    CEMENT_BAG, CEMENT_GRAVITY, BENTONITE_GRAVITY, CHIPS_DENSITY
  };
  private static final String SOURCE =
      "method of absolute volumes: Concrete Construction magazine, volume of grout; cement notes"
          + " 2016";

  private Grout() {}

  /**
   * Grout that one bag makes (m3): mass / (specific gravity x density of water) + water. Method of
   * absolute volumes; 94 lb of cement (3.15) and 5 gal give 1.145 ft3.
   */
  public static double ofBag(double bagMass, double water, double specificGravity) {
    return bagMass / (specificGravity * Water.DENSITY) + water;
  }

  /** Density of the slurry (kg/m3): (mass + water) / volume. */
  public static double density(double bagMass, double water, double specificGravity) {
    return (bagMass + water * Water.DENSITY) / ofBag(bagMass, water, specificGravity);
  }

  /** Solids by weight: bag / (bag + water). Common practice. */
  public static double solids(double bagMass, double water) {
    return bagMass / (bagMass + water * Water.DENSITY);
  }

  /**
   * Grout placed (m3): the volume stated, or bags x what one makes. Chips swell in place and make
   * what they measure dry: bags x mass / bulk density. Of sand cement and concrete, whose sand is
   * not on the form, only the volume stated is known.
   */
  static double placed(double[] x, int at, int figures) {
    double stated = x[at];
    double bags = x[at + 1];
    double mass = x[at + 2];
    double water = x[at + 3];
    double material = x[at + 4];
    if (!Double.isNaN(stated)) {
      return stated;
    }
    if (material == NONE || bags == 0) {
      return 0;
    }
    if (material == NEAT) {
      double bag = Double.isNaN(mass) ? x[figures] : mass;
      return bags * ofBag(bag, water, x[figures + 1]);
    }
    if (material == SLURRY) {
      return bags * ofBag(mass, water, x[figures + 2]);
    }
    return material == CHIPS ? bags * mass / x[figures + 3] : Double.NaN;
  }

  private static List<Input> inputs() {
    return List.of(
        helpful("grout.volume"),
        helpful("grout.bags"),
        helpful("grout.bag_mass"),
        helpful("grout.water_per_bag"),
        helpful("grout.material"));
  }

  private static final String PLACED =
      "{grout.volume}, or {bags} x ({bag} / {density} + {water of a bag})";

  static List<Figure> figures() {
    return List.of(
        new Figure(
            CEMENT_BAG,
            Units.POUND.toSi(94),
            Units.POUND,
            "mass of a bag of cement where the record does not give it",
            "common practice: the US sack"),
        new Figure(
            CEMENT_GRAVITY,
            3.15,
            Units.ONE,
            "specific gravity of cement",
            "Concrete Construction magazine, volume of grout"),
        new Figure(
            BENTONITE_GRAVITY, 2.5, Units.ONE, "specific gravity of bentonite", "common practice"),
        new Figure(
            CHIPS_DENSITY,
            Units.POUND.toSi(70) / Units.CUBIC_FOOT.toSi(1),
            Units.KILOGRAM_PER_CUBIC_METRE,
            "mass of dry bentonite chips that fills a volume",
            "common practice: a bag of 50 lb fills about 0.71 ft3 (from memory)"));
  }

  static List<Working> workings() {
    List<Working> all = new ArrayList<>();
    all.add(
        Draft.of(
                "grout_placed",
                Units.CUBIC_FOOT,
                Units.CUBIC_METRE,
                "volume of grout: as stated, or what the bags make at their water")
            .formula(PLACED)
            .source(SOURCE)
            .reads(inputs())
            .figures(FIGURES)
            .step("bags", Units.ONE, Units.ONE, x -> x[4] == NONE ? 0 : x[1])
            .step("bag", Units.POUND, Units.KILOGRAM, x -> bag(x[2], x[4], x[5]))
            .step(
                "density",
                Units.POUND_PER_GALLON,
                Units.KILOGRAM_PER_CUBIC_METRE,
                x -> density(x[4], 5, x))
            .step("water of a bag", Units.US_GALLON, Units.LITRE, x -> x[4] == CHIPS ? 0 : x[3])
            .by(x -> placed(x, 0, 5)));
    all.add(
        Draft.of(
                "grout_ratio",
                Units.ONE,
                Units.ONE,
                "grout placed over the volume of the annulus; well under 1 there are voids, well"
                    + " over 2 it was lost in fractures or an entry is wrong")
            .formula("{grout placed} / {annulus}")
            .source(SOURCE)
            .reads(inputs())
            .reads(
                Input.required("well.bore_diameter"),
                Input.required("grout.bottom"),
                Input.required("grout.top"))
            .reads(CasingSize.inputs())
            .figures(FIGURES)
            .step("grout placed", Units.CUBIC_FOOT, Units.CUBIC_METRE, x -> placed(x, 0, 13))
            .step("annulus", Units.CUBIC_FOOT, Units.CUBIC_METRE, Grout::annulus)
            .by(
                x -> {
                  double annulus = annulus(x);
                  return annulus > 0 ? placed(x, 0, 13) / annulus : Double.NaN;
                }));
    all.add(
        Draft.of(
                "grout_density",
                Units.POUND_PER_GALLON,
                Units.KILOGRAM_PER_CUBIC_METRE,
                "density of the slurry of neat cement or bentonite")
            .formula("({bag} + {mass of the water}) / ({bag} / {density} + {grout.water_per_bag})")
            .source(SOURCE)
            .reads(
                helpful("grout.bag_mass"),
                Input.required("grout.water_per_bag"),
                Input.required("grout.material"))
            .figures(FIGURES)
            .step("bag", Units.POUND, Units.KILOGRAM, x -> bag(x[0], x[2], x[3]))
            .step("mass of the water", Units.POUND, Units.KILOGRAM, x -> x[1] * Water.DENSITY)
            .step(
                "density",
                Units.POUND_PER_GALLON,
                Units.KILOGRAM_PER_CUBIC_METRE,
                x -> density(x[2], 3, x))
            .by(
                x -> {
                  if (x[2] == NEAT) {
                    return density(Double.isNaN(x[0]) ? x[3] : x[0], x[1], x[4]);
                  }
                  return x[2] == SLURRY ? density(x[0], x[1], x[5]) : Double.NaN;
                }));
    all.add(
        Draft.of(
                "grout_solids",
                Units.PERCENT,
                Units.PERCENT,
                "solids of the slurry by weight: bag over bag and water")
            .formula("{grout.bag_mass} / ({grout.bag_mass} + {mass of the water})")
            .reads(Input.required("grout.bag_mass"), Input.required("grout.water_per_bag"))
            .step("mass of the water", Units.POUND, Units.KILOGRAM, x -> x[1] * Water.DENSITY)
            .by(x -> solids(x[0], x[1])));
    return all;
  }

  /** Mass of a bag; that of the US sack for cement of which it is not stated. */
  private static double bag(double stated, double material, double sack) {
    return Double.isNaN(stated) && material == NEAT ? sack : stated;
  }

  /** Density of what is in the bag, by its material, from the figures that begin there. */
  private static double density(double material, int figures, double[] x) {
    if (material == NEAT || material == SLURRY) {
      return x[figures + (material == NEAT ? 1 : 2)] * Water.DENSITY;
    }
    return material == CHIPS ? x[figures + 3] : Double.NaN;
  }

  private static double annulus(double[] x) {
    return Annulus.volume(x[5], CasingSize.outside(x, 8), x[6] - x[7]);
  }
}
