package org.wellcurb.workings;

import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** The level of a well that flows, from the pressure when it is shut in. */
public final class FlowingWell {
  private FlowingWell() {}

  /**
   * Level at rest (m below ground, so negative): -(head of the shut-in pressure + height of the
   * gauge). The gauge stands at the casing top. Hydrostatics.
   *
   * @param pressure shut in (Pa)
   * @param gaugeHeight above ground (m)
   */
  public static double level(double pressure, double gaugeHeight) {
    return -(Water.head(pressure) + gaugeHeight);
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "static_from_shut_in",
                Units.FOOT,
                Units.METRE,
                "level at rest of a flowing well, from its shut-in pressure; negative above ground")
            .formula("-({head of the pressure} + {well.stickup})")
            .source("hydrostatics; water of 1000 kg/m3")
            .reads(required("water.shut_in_pressure"), required("well.stickup"))
            .step("head of the pressure", Units.FOOT, Units.METRE, x -> Water.head(x[0]))
            .by(x -> level(x[0], x[1])));
  }
}
