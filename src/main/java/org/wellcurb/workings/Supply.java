package org.wellcurb.workings;

import static org.wellcurb.workings.Input.helpful;
import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.quantity.Units;

/** What a household needs and what the well, its storage and its pump give. m3, m3/s, seconds. */
public final class Supply {
  private static final String PER_PERSON = "use_per_person";
  private static final String PER_BEDROOM = "use_per_bedroom";
  private static final String PEAK_RATE = "peak_rate";
  private static final String PEAK_LENGTH = "peak_length";

  private Supply() {}

  /**
   * Use of a day (m3/s): people x use a head, or bedrooms x use a bedroom, the greater where both
   * are known (NaN: not given). Sources of the uses stand with the figures.
   */
  public static double dailyNeed(
      double people, double bedrooms, double usePerPerson, double usePerBedroom) {
    double byPeople = people * usePerPerson;
    double byBedrooms = bedrooms * usePerBedroom;
    return Double.isNaN(byPeople)
        ? byBedrooms
        : Double.isNaN(byBedrooms) ? byPeople : Math.max(byPeople, byBedrooms);
  }

  /**
   * People or bedrooms of all homes served. The form asks for all of them; a count below that of
   * the homes can only be that of each. Common practice.
   *
   * @param count as the form has it; NaN where not given
   * @param dwellings homes served; NaN (not given) is one
   */
  private static double ofAllHomes(double count, double dwellings) {
    return count < dwellings ? count * dwellings : count;
  }

  /** The least of {@link #ofAllHomes} over ranges: it leaps where the count reaches the homes. */
  private static double leastOfAllHomes(double[] lo, double[] hi, int count) {
    double fewest = Double.isNaN(lo[2]) ? 1 : lo[2];
    double ofEach = lo[count] * Math.max(fewest, lo[count]);
    double ofAll = Math.max(lo[count], fewest);
    return hi[count] < fewest ? ofEach : lo[count] < fewest ? Math.min(ofEach, ofAll) : lo[count];
  }

  /** The greatest of it. */
  private static double mostOfAllHomes(double[] lo, double[] hi, int count) {
    double most = hi[2];
    return lo[count] < most ? Math.max(hi[count], Math.min(hi[count], most) * most) : hi[count];
  }

  private static void dailyNeedOver(double[] lo, double[] hi, double[] out) {
    out[0] = dailyNeed(leastOfAllHomes(lo, hi, 0), leastOfAllHomes(lo, hi, 1), lo[3], lo[4]);
    out[1] = dailyNeed(mostOfAllHomes(lo, hi, 0), mostOfAllHomes(lo, hi, 1), lo[3], lo[4]);
  }

  /**
   * Water lacking at the end of the busiest period (m3): need - what the pump delivers - storage.
   *
   * <p>The pump delivers the need, or its rated flow if that is less, until the water standing over
   * the intake is used up, and the yield from then on: in all the lesser of rate x length and
   * standing water + yield x length. The deficit never shrinks within the period, so its end is the
   * worst moment. Source: water balance; the sum of standing water and yield as in Domestic Wells,
   * Groundwater Project, Box 1 and Exercise 1.
   *
   * @param standing water in the well over the intake (m3)
   * @param stored water in pressure tank and cistern (m3)
   */
  public static double peakShortfall(
      double rate, double length, double pump, double yield, double standing, double stored) {
    double pumped = Math.min(rate, pump) * length;
    double given = Math.min(pumped, standing + yield * length);
    return Math.max(0, rate * length - given - stored);
  }

  /** Inputs of the peak: dwellings, yield, pump, cistern, intake, then the well, then the tank. */
  private static final int WELL = 5;

  private static final int TANK = WELL + WellVolume.INPUTS;
  private static final int FIGURES = TANK + 8;

  private static List<Input> peakInputs() {
    List<Input> inputs = new ArrayList<>();
    inputs.add(optional("site.dwellings"));
    inputs.add(required("water.yield"));
    inputs.add(helpful("pump.rated_flow"));
    inputs.add(helpful("storage.volume"));
    inputs.add(helpful("pump.intake_depth"));
    for (Input input : WellVolume.inputs()) {
      inputs.add(input.isRequired() ? helpful(input.key()) : input);
    }
    for (Input input : PressureTank.inputs()) {
      inputs.add(input.isRequired() ? helpful(input.key()) : input);
    }
    return inputs;
  }

  private static double rate(double[] x) {
    return x[FIGURES + 1] * (Double.isNaN(x[0]) ? 1 : x[0]);
  }

  private static double standing(double[] x) {
    return WellVolume.down(x, WELL, x[4]);
  }

  private static double tank(double[] x) {
    return PressureTank.usable(x, TANK, FIGURES);
  }

  /** With what is not known counted as nothing, or as more than enough. */
  private static double shortfall(double[] x, double unknown) {
    double pump = Double.isNaN(x[2]) ? unknown : x[2];
    double stored = or(tank(x), unknown) + or(x[3], unknown);
    return peakShortfall(rate(x), x[FIGURES + 2], pump, x[1], or(standing(x), unknown), stored);
  }

  private static double or(double known, double unknown) {
    return Double.isNaN(known) ? unknown : known;
  }

  static List<Figure> figures() {
    return List.of(
        new Figure(
            PER_PERSON,
            Units.GALLON_PER_DAY.toSi(75),
            Units.GALLON_PER_DAY,
            "use of water a person a day",
            "Penn State Extension, Water System Planning: 50 to 100 gallons a person a day"),
        new Figure(
            PER_BEDROOM,
            Units.GALLON_PER_DAY.toSi(110),
            Units.GALLON_PER_DAY,
            "use of water a bedroom a day",
            "New York State Department of Health, Individual Water Supply Wells fact sheet"),
        new Figure(
            PEAK_RATE,
            Units.GPM.toSi(5),
            Units.GPM,
            "draw of one dwelling in its busiest period",
            "New York State Department of Health, Individual Water Supply Wells fact sheet: two"
                + " fixtures at 2.5 gpm"),
        new Figure(
            PEAK_LENGTH,
            Units.HOUR.toSi(2),
            Units.HOUR,
            "length of the busiest period",
            "New Hampshire Water Well Board guidance, as reported: 5 gpm for 2 hours"));
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "daily_need",
                Units.GALLON_PER_DAY,
                Units.LITRE_PER_DAY,
                "water that all homes served use in a day, by people or bedrooms, the greater;"
                    + " people or bedrooms fewer than homes can only be those of each home")
            .formula(
                "max({people} x {use_per_person}, {bedrooms} x {use_per_bedroom});"
                    + " {site.occupants}, {site.bedrooms}, {site.dwellings}")
            .source("Penn State Extension; New York State Department of Health; see the figures")
            .reads(helpful("site.occupants"), helpful("site.bedrooms"), optional("site.dwellings"))
            .figures(PER_PERSON, PER_BEDROOM)
            .step("people", Units.ONE, Units.ONE, x -> ofAllHomes(x[0], x[2]))
            .step("bedrooms", Units.ONE, Units.ONE, x -> ofAllHomes(x[1], x[2]))
            .turns(Turn.atInput(0, 2), Turn.atInput(1, 2), Turn.atInput(2, 0), Turn.atInput(2, 1))
            .over(Supply::dailyNeedOver)
            .by(x -> dailyNeed(ofAllHomes(x[0], x[2]), ofAllHomes(x[1], x[2]), x[3], x[4])),
        Draft.of(
                "daily_supply",
                Units.GALLON_PER_DAY,
                Units.LITRE_PER_DAY,
                "water that the yield gives in a day")
            .formula("{water.yield} x 24 h / 1 day")
            .reads(required("water.yield"))
            .by(x -> x[0]),
        Draft.of("peak_need", Units.US_GALLON, Units.LITRE, "water drawn in the busiest period")
            .formula("{peak_rate} x {peak_length} x {dwellings}")
            .source("New Hampshire Water Well Board guidance, as reported; see the figures")
            .reads(optional("site.dwellings"))
            .figures(PEAK_RATE, PEAK_LENGTH)
            .step("dwellings", Units.ONE, Units.ONE, x -> Double.isNaN(x[0]) ? 1 : x[0])
            .by(x -> (Double.isNaN(x[0]) ? 1 : x[0]) * x[1] * x[2]),
        Draft.of(
                "peak_shortfall",
                Units.US_GALLON,
                Units.LITRE,
                "water lacking in the busiest period after pump, yield, water standing over the"
                    + " intake, pressure tank and storage; a range where one of these is not known")
            .formula(
                "max(0, {need} - min({need}, {pump.rated_flow} x {peak_length}, {standing water} +"
                    + " {water.yield} x {peak_length}) - {tank} - {storage.volume})")
            .source("water balance; Groundwater Project, Domestic Wells, Box 1 and Exercise 1")
            .reads(peakInputs())
            .figures(Atmosphere.ELEVATION, PEAK_RATE, PEAK_LENGTH)
            .step("need", Units.US_GALLON, Units.LITRE, x -> rate(x) * x[FIGURES + 2])
            .step("standing water", Units.US_GALLON, Units.LITRE, Supply::standing)
            .step("tank", Units.US_GALLON, Units.LITRE, Supply::tank)
            .turns(Turn.atInput(TANK + 1, TANK + 2))
            .greatest(x -> shortfall(x, 0))
            .by(x -> shortfall(x, Double.POSITIVE_INFINITY)));
  }
}
