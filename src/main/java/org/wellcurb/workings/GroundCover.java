package org.wellcurb.workings;

import static org.wellcurb.workings.Input.helpful;
import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** Ground over what could freeze, and casing above what could flood. Metres. */
public final class GroundCover {
  private static final double JET = Choices.place("pump.type", "jet");
  private static final double HAND = Choices.place("pump.type", "hand");
  private static final double NO_PUMP = Choices.place("pump.type", "none");

  private GroundCover() {}

  /**
   * Cover below the frost (m): the shallower of pitless and line, less the depth of frost. NaN for
   * either depth leaves the other; NaN for both is unknown. Common practice; local frost depths
   * rule.
   */
  public static double frostMargin(double pitlessDepth, double lineDepth, double frostDepth) {
    double shallower =
        Double.isNaN(pitlessDepth)
            ? lineDepth
            : Double.isNaN(lineDepth) ? pitlessDepth : Math.min(pitlessDepth, lineDepth);
    return shallower - frostDepth;
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "frost_margin",
                Units.FOOT,
                Units.METRE,
                "cover of the pitless and the buried line (of the one that is given, or the"
                    + " shallower) below the frost; not for a jet, hand or missing pump")
            .formula("min({pitless.depth}, {service_line.burial_depth}) - {site.frost_depth}")
            .reads(
                required("site.frost_depth"),
                helpful("pitless.depth"),
                helpful("service_line.burial_depth"),
                optional("pump.type"))
            .by(
                x ->
                    x[3] == JET || x[3] == HAND || x[3] == NO_PUMP
                        ? Double.NaN
                        : frostMargin(x[1], x[2], x[0])),
        Draft.of(
                "stickup_over_flood",
                Units.FOOT,
                Units.METRE,
                "height of the casing top above the highest known flood")
            .formula("{well.stickup} - {well.flood_level}")
            .reads(required("well.stickup"), required("well.flood_level"))
            .by(x -> x[0] - x[1]));
  }
}
