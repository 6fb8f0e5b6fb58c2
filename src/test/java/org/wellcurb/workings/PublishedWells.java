package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.wellcurb.quantity.Units.CUBIC_FOOT;
import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.GPM;
import static org.wellcurb.quantity.Units.INCH;
import static org.wellcurb.quantity.Units.LITRE;
import static org.wellcurb.quantity.Units.METRE;
import static org.wellcurb.quantity.Units.MILLIMETRE;
import static org.wellcurb.quantity.Units.MINUTE;
import static org.wellcurb.quantity.Units.PERCENT;
import static org.wellcurb.quantity.Units.POUND;
import static org.wellcurb.quantity.Units.POUND_PER_GALLON;
import static org.wellcurb.quantity.Units.US_GALLON;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.wellcurb.quantity.Unit;

/** Published figures of casing sizes, volumes, grout and recovery. */
final class PublishedWells {
  private PublishedWells() {}

  static Map<String, Consumer<PublishedRow>> checks() {
    Map<String, Consumer<PublishedRow>> checks = new HashMap<>();
    checks.put(
        "casing_volume_per_ft",
        row -> row.check(standing(row.in("diameter_in"), INCH, 0, 1, FOOT, US_GALLON)));
    checks.put(
        "casing_volume",
        row ->
            row.check(
                standing(row.in("diameter_in"), INCH, 0, row.in("length_ft"), FOOT, US_GALLON)));
    // The allowance over the pump is water that is not counted, as if the well ended there.
    checks.put(
        "well_storage",
        row ->
            row.check(
                standing(
                    row.in("diameter_mm"),
                    MILLIMETRE,
                    row.in("static_m"),
                    row.in("depth_m") - row.in("pump_allowance_m"),
                    METRE,
                    LITRE)));
    checks.put("annulus_volume", row -> row.check(annulus(row).at("annulus_volume", unit(row))));
    checks.put("cement_grout_yield", row -> row.check(cement(row).at("grout_placed", CUBIC_FOOT)));
    checks.put(
        "cement_grout_density",
        row -> row.check(cement(row).at("grout_density", POUND_PER_GALLON)));
    checks.put(
        "bentonite_grout_yield", row -> row.check(bentonite(row).at("grout_placed", US_GALLON)));
    checks.put(
        "bentonite_solids_percent", row -> row.check(bentonite(row).at("grout_solids", PERCENT)));
    checks.put("recovery_rate", PublishedWells::recovery);
    checks.put("steel_casing_id", row -> row.check(steel(row).at("casing_inside_diameter", INCH)));
    checks.put("steel_casing_weight", PublishedWells::weight);
    checks.put(
        "pvc_casing_min_wall",
        row ->
            row.check(
                INCH.fromSi(
                    CasingSize.wall(
                        INCH.toSi(row.in("od_in")),
                        Double.NaN,
                        WallClass.of("sdr " + row.in("sdr")),
                        Choices.place("well.casing_material", "pvc")))));
    return checks;
  }

  private static Unit unit(PublishedRow row) {
    return row.unit().startsWith("US gal") ? US_GALLON : CUBIC_FOOT;
  }

  private static double standing(
      double diameter, Unit of, double level, double bottom, Unit length, Unit volume) {
    return Given.nothing()
        .with("well.casing_diameter", diameter, of)
        .with("well.casing_size_is", "inside")
        .with("water.static_level", level, length)
        .with("well.depth", bottom, length)
        .at("casing_water_volume", volume);
  }

  private static Given annulus(PublishedRow row) {
    return Given.nothing()
        .with("well.bore_diameter", row.in("borehole_in"), INCH)
        .with("well.casing_diameter", row.in("casing_od_in"), INCH)
        .with("well.casing_size_is", "outside")
        .with("grout.top", 0, FOOT)
        .with("grout.bottom", row.in("length_ft"), FOOT);
  }

  private static Given cement(PublishedRow row) {
    return Given.nothing()
        .with("grout.material", "neat cement")
        .si("grout.bags", 1, 1)
        .with("grout.bag_mass", row.in("cement_lb"), POUND)
        .with("grout.water_per_bag", row.in("water_gal"), US_GALLON);
  }

  private static Given bentonite(PublishedRow row) {
    return Given.nothing()
        .with("grout.material", "bentonite slurry")
        .si("grout.bags", 1, 1)
        .with("grout.bag_mass", row.in("bentonite_lb"), POUND)
        .with("grout.water_per_bag", row.in("water_gal"), US_GALLON);
  }

  /**
   * The printed rule, rise x gallons a foot / minutes, is what a small share of recovery tends to.
   */
  private static void recovery(PublishedRow row) {
    double area = US_GALLON.toSi(row.in("gal_per_ft")) / FOOT.toSi(1);
    double rise = FOOT.toSi(row.in("rise_ft"));
    row.check(GPM.fromSi(Recovery.inflow(area, 1e6 * rise, rise, MINUTE.toSi(row.in("minutes")))));
  }

  private static Given steel(PublishedRow row) {
    return Given.nothing()
        .with("well.casing_diameter", row.in("nominal_in"), INCH)
        .with("well.casing_size_is", "nominal")
        .with("well.casing_material", "steel")
        .with("well.casing_schedule", "schedule 40");
  }

  /** The printed weight gives the printed wall; and the wall, put back, the weight. */
  private static void weight(PublishedRow row) {
    Given given = steel(row).with("well.casing_schedule", row.expected() + " lb/ft");
    double wall =
        (given.at("casing_outside_diameter", INCH) - given.at("casing_inside_diameter", INCH)) / 2;
    assertEquals(row.in("wall_in"), wall, 0.0006, row.id());
    row.check(10.68 * (row.in("od_in") - wall) * wall);
  }
}
