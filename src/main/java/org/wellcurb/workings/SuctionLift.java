package org.wellcurb.workings;

import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** How high a jet pump sucks. Metres. */
public final class SuctionLift {
  private static final double JET = Choices.place("pump.type", "jet");
  private static final double IN_THE_WELL = Choices.place("pump.ejector", "in the well");
  private static final String AT_SEA_LEVEL = "suction_lift_at_sea_level";

  private SuctionLift() {}

  /**
   * Highest suction lift (m): that at sea level less 1 ft for each 1,000 ft of elevation. Common
   * practice.
   */
  public static double limit(double atSeaLevel, double elevation) {
    return atSeaLevel - elevation / 1000;
  }

  static List<Figure> figures() {
    return List.of(
        new Figure(
            AT_SEA_LEVEL,
            Units.FOOT.toSi(25),
            Units.FOOT,
            "highest suction lift of a jet pump at sea level",
            "common practice"));
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "suction_lift",
                Units.FOOT,
                Units.METRE,
                "height from the pumping level to a jet pump, which stands where the switch does;"
                    + " not with the ejector in the well")
            .formula("{water.pumping_level} + {pressure.switch_height}")
            .reads(
                required("pump.type"),
                required("water.pumping_level"),
                optional("water.test_method"),
                required("pressure.switch_height"),
                optional("pump.ejector"))
            .by(
                x ->
                    x[0] == JET && x[4] != IN_THE_WELL && WellHydraulics.isMeasured(x[2])
                        ? PumpHead.lift(x[1], x[3])
                        : Double.NaN),
        Draft.of(
                "suction_lift_limit",
                Units.FOOT,
                Units.METRE,
                "highest suction lift of a jet pump at the elevation of the site")
            .formula("{suction_lift_at_sea_level} - {elevation} / 1000")
            .reads(optional("site.elevation"))
            .figures(Atmosphere.ELEVATION, AT_SEA_LEVEL)
            .step("elevation", Units.FOOT, Units.METRE, x -> Atmosphere.elevation(x[0], x[1]))
            .by(x -> limit(x[2], Atmosphere.elevation(x[0], x[1]))));
  }
}
