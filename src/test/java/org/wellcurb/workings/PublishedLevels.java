package org.wellcurb.workings;

import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.GPM;
import static org.wellcurb.quantity.Units.GPM_PER_FOOT;

import java.util.Map;
import java.util.function.Consumer;

/** Published figures of levels and specific capacity. */
final class PublishedLevels {
  private PublishedLevels() {}

  static Map<String, Consumer<PublishedRow>> checks() {
    return Map.of(
        "drawdown",
        row -> row.check(levels(row.in("static_ft"), row.in("pumping_ft")).at("drawdown", FOOT)),
        "specific_capacity",
        row ->
            row.check(
                levels(row.in("static_ft", 0), row.in("pumping_ft", row.in("drawdown_ft", 0)))
                    .with("water.test_rate", row.in("flow_gpm"), GPM)
                    .at("specific_capacity", GPM_PER_FOOT)),
        // The published scaling has no limit of rate, so the test is put at the same rate.
        "drawdown_at_rate",
        row ->
            row.check(
                levels(0, row.in("flow_gpm") / row.in("specific_capacity_gpm_ft"))
                    .with("water.test_rate", row.in("flow_gpm"), GPM)
                    .with("pump.rated_flow", row.in("flow_gpm"), GPM)
                    .at("level_at_rated_flow", FOOT)));
  }

  private static Given levels(double staticFeet, double pumpingFeet) {
    return Given.nothing()
        .with("water.static_level", staticFeet, FOOT)
        .with("water.pumping_level", pumpingFeet, FOOT);
  }
}
