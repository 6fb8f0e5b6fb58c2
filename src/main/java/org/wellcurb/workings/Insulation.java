package org.wellcurb.workings;

import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/**
 * What an insulation reading of a submersible motor with its cable in the well says. Ohms. The
 * bands of surface motors are another scale and must not be mixed with these. The test is for a
 * licensed electrician or pump installer, with the power locked out.
 */
public final class Insulation {
  private static final String DAMAGED = "insulation_damaged";
  private static final String DOUBTFUL = "insulation_doubtful";
  private static final String GOOD = "insulation_good";

  private Insulation() {}

  /**
   * The band of a reading, as a number so that ranges and comparisons work: 1 damaged, 2 to be
   * looked into, 3 reasonably good, 4 very good. A reading at a limit belongs to the lower band.
   * Common practice, motors in service.
   */
  public static double band(double reading, double damaged, double doubtful, double good) {
    return reading <= damaged ? 1 : reading <= doubtful ? 2 : reading <= good ? 3 : 4;
  }

  private static Figure figure(String name, double megohms, String meaning) {
    return new Figure(name, Units.MEGOHM.toSi(megohms), Units.MEGOHM, meaning, "common practice");
  }

  static List<Figure> figures() {
    return List.of(
        figure(DAMAGED, 0.02, "a motor in service that reads no more than this is damaged"),
        figure(DOUBTFUL, 0.5, "a motor in service that reads no more than this is looked into"),
        figure(GOOD, 2, "a motor in service that reads no more than this is reasonably good"));
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "insulation_band",
                Units.ONE,
                Units.ONE,
                "what the insulation reading says: 1 damaged, have it looked at by a licensed"
                    + " electrician or pump installer; 2 to be looked into; 3 reasonably good; 4"
                    + " very good")
            .formula(
                "1 up to {insulation_damaged}, 2 up to {insulation_doubtful}, 3 up to"
                    + " {insulation_good}, 4 above: {pump.insulation_resistance}")
            .reads(required("pump.insulation_resistance"))
            .figures(DAMAGED, DOUBTFUL, GOOD)
            .by(x -> band(x[0], x[1], x[2], x[3])));
  }
}
