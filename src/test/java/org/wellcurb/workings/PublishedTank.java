package org.wellcurb.workings;

import static org.wellcurb.quantity.Units.GPM;
import static org.wellcurb.quantity.Units.MINUTE;
import static org.wellcurb.quantity.Units.PSI_UNIT;
import static org.wellcurb.quantity.Units.US_GALLON;

import java.util.Map;
import java.util.function.Consumer;

/** Published figures of pressure tanks. */
final class PublishedTank {
  private PublishedTank() {}

  static Map<String, Consumer<PublishedRow>> checks() {
    return Map.of(
        "tank_drawdown",
        row -> row.check(tank(row, row.in("volume_gal")).at("tank_usable_volume", US_GALLON)),
        "tank_drawdown_ratio",
        row -> row.check(tank(row, 1).at("tank_usable_volume", US_GALLON)),
        // A tank that gives just the printed drawdown runs the pump for just the printed time.
        "tank_min_drawdown",
        row ->
            row.check(
                MINUTE.toSi(row.in("min_run_min"))
                    / PressureTank.runTime(US_GALLON.toSi(1), GPM.toSi(row.in("pump_gpm")))));
  }

  private static Given tank(PublishedRow row, double gallons) {
    return Given.nothing()
        .with("tank.volume", gallons, US_GALLON)
        .with("tank.precharge", row.in("precharge_psig"), PSI_UNIT)
        .with("pressure.cut_in", row.in("cutin_psig"), PSI_UNIT)
        .with("pressure.cut_out", row.in("cutout_psig"), PSI_UNIT);
  }
}
