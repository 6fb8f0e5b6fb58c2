package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.wellcurb.quantity.Units.AMPERE;
import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.GALLON_PER_DAY;
import static org.wellcurb.quantity.Units.GPM;
import static org.wellcurb.quantity.Units.HORSEPOWER;
import static org.wellcurb.quantity.Units.HOUR;
import static org.wellcurb.quantity.Units.LITRE_PER_DAY;
import static org.wellcurb.quantity.Units.LITRE_PER_MINUTE;
import static org.wellcurb.quantity.Units.MEGOHM;
import static org.wellcurb.quantity.Units.PERCENT;
import static org.wellcurb.quantity.Units.US_GALLON;
import static org.wellcurb.quantity.Units.VOLT;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;

/** Published figures of need and supply, wiring, motors, and distance. */
final class PublishedHouse {
  private PublishedHouse() {}

  static Map<String, Consumer<PublishedRow>> checks() {
    Map<String, Consumer<PublishedRow>> checks = new HashMap<>();
    checks.put("daily_demand", PublishedHouse::daily);
    checks.put("minimum_supply_volume", row -> row.check(peakNeed(row.in("rate_gpm"), row)));
    checks.put(
        "intermediate_storage",
        row -> row.check(peakNeed(row.in("pressure_pump_minus_well_pump_gpm"), row)));
    checks.put("yield_volume", PublishedHouse::yieldVolume);
    checks.put("available_two_hour_supply", PublishedHouse::twoHours);
    checks.put("wire_resistance", PublishedHouse::wire);
    checks.put("voltage_drop", PublishedHouse::volts);
    checks.put("voltage_drop_percent", PublishedHouse::voltShare);
    checks.put("min_wire_size_for_drop", PublishedHouse::leastWire);
    checks.put(
        "motor_flc_single_phase",
        row ->
            row.check(
                MotorCurrent.fullLoad(
                    HORSEPOWER.toSi(horsepower(row.word("hp"))), row.in("volts"))));
    checks.put("current_ratio_240_vs_120", PublishedHouse::halfCurrent);
    checks.put("insulation_band_submersible_in_well", PublishedHouse::insulation);
    checks.put(
        "geodesic_distance",
        // The Australian line is on GRS 80, whose flattening differs from WGS 84's in the tenth
        // digit: a tenth of a millimetre over 55 km, within the row's millimetre.
        row ->
            row.check(
                Given.nothing()
                    .with("site.latitude", row.in("lat1"), Units.DEGREE)
                    .with("site.longitude", row.in("lon1"), Units.DEGREE)
                    .with("site.septic_latitude", row.in("lat2"), Units.DEGREE)
                    .with("site.septic_longitude", row.in("lon2"), Units.DEGREE)
                    .at("septic_distance")));
    return checks;
  }

  private static double horsepower(String text) {
    double sum = 0;
    for (String part : text.split("-")) {
      String[] fraction = part.split("/");
      double top = Double.parseDouble(fraction[0]);
      sum += fraction.length == 1 ? top : top / Double.parseDouble(fraction[1]);
    }
    return sum;
  }

  private static void daily(PublishedRow row) {
    if (row.inputs().has("gpcd_low")) {
      String[] ends = row.expected().split("\\.\\.");
      assertEquals(Double.parseDouble(ends[0]), people(row, "gpcd_low", GALLON_PER_DAY), 1e-9);
      assertEquals(Double.parseDouble(ends[1]), people(row, "gpcd_high", GALLON_PER_DAY), 1e-9);
    } else if (row.inputs().has("persons")) {
      row.check(people(row, "L_per_person", LITRE_PER_DAY));
    } else {
      row.check(
          Given.nothing()
              .si("site.bedrooms", row.in("bedrooms"), row.in("bedrooms"))
              .figure("use_per_bedroom", row.in("gpd_per_bedroom"), GALLON_PER_DAY)
              .at("daily_need", GALLON_PER_DAY));
    }
  }

  private static double people(PublishedRow row, String use, Unit unit) {
    return Given.nothing()
        .si("site.occupants", row.in("persons"), row.in("persons"))
        .figure("use_per_person", row.in(use), unit)
        .at("daily_need", unit);
  }

  private static double peakNeed(double gpm, PublishedRow row) {
    return Given.nothing()
        .figure("peak_rate", gpm, GPM)
        .figure("peak_length", row.in("hours"), HOUR)
        .at("peak_need", US_GALLON);
  }

  /** The row's hours are a part of the day of the working. */
  private static void yieldVolume(PublishedRow row) {
    double supply =
        Given.nothing()
            .with("water.yield", row.in("yield_L_min"), LITRE_PER_MINUTE)
            .at("daily_supply");
    row.check(Units.LITRE.fromSi(supply * HOUR.toSi(row.in("hours", 2))));
  }

  private static void twoHours(PublishedRow row) {
    double standing =
        Given.nothing()
            .with("well.casing_diameter", row.in("diameter_mm"), Units.MILLIMETRE)
            .with("well.casing_size_is", "inside")
            .with("water.static_level", row.in("static_m"), Units.METRE)
            .with("well.depth", row.in("depth_m") - row.in("pump_allowance_m"), Units.METRE)
            .at("casing_water_volume");
    row.check(Units.LITRE.fromSi(given(row, standing)));
  }

  /** With nothing stored, what is not lacking is what standing water and yield gave. */
  private static double given(PublishedRow row, double standing) {
    double length = HOUR.toSi(row.in("hours", 2));
    double rate = 1;
    return rate * length
        - Supply.peakShortfall(
            rate, length, rate, LITRE_PER_MINUTE.toSi(row.in("yield_L_min")), standing, 0);
  }

  private static void wire(PublishedRow row) {
    // One ampere along 500 ft and back is volts of the same number as ohms of 1000 ft.
    row.check(
        Given.nothing()
            .si("wire.gauge", row.in("awg"), row.in("awg"))
            .with("wire.length", 500, FOOT)
            .with("pump.phase", "1")
            .with("pump.nameplate_current", 1, AMPERE)
            .at("voltage_drop", VOLT));
  }

  private static Given cable(PublishedRow row, double gauge) {
    return Given.nothing()
        .si("wire.gauge", gauge, gauge)
        .with("wire.length", row.in("length_ft"), FOOT)
        .with("pump.phase", "1")
        .with("pump.voltage", row.in("volts", 1), VOLT)
        .with("pump.nameplate_current", row.in("amps"), AMPERE);
  }

  /**
   * The gauge whose published resistance the row states; the lesson's No. 16 is not named there.
   */
  private static double gauge(PublishedRow row) {
    assertTrue(row.inputs().has("awg") || row.in("ohm_per_kft") == 4.99, row.id());
    return row.in("awg", 16);
  }

  private static void volts(PublishedRow row) {
    row.check(cable(row, gauge(row)).at("voltage_drop", VOLT));
  }

  private static void voltShare(PublishedRow row) {
    row.check(cable(row, gauge(row)).at("voltage_drop_share", PERCENT));
  }

  private static void leastWire(PublishedRow row) {
    double gauge = Double.parseDouble(row.expected());
    double most = row.in("max_pct");
    assertTrue(cable(row, gauge).at("voltage_drop_share", PERCENT) <= most, row.id());
    assertTrue(cable(row, gauge + 2).at("voltage_drop_share", PERCENT) > most, row.id());
  }

  private static void halfCurrent(PublishedRow row) {
    row.check(
        Given.nothing()
            .with(
                "pump.running_current",
                MotorCurrent.fullLoad(HORSEPOWER.toSi(1), row.in("volts_hi")),
                AMPERE)
            .with("pump.power", 1, HORSEPOWER)
            .with("pump.voltage", row.in("volts_lo"), VOLT)
            .with("pump.phase", "1")
            .at("current_ratio_table"));
  }

  /**
   * The rows know three bands by the breakpoints 2 and 0.5 Mohm; here the lowest is parted once
   * more, at 0.02, for a reading of 0.3 is a reason to look and not yet proof of damage.
   */
  private static void insulation(PublishedRow row) {
    double band =
        Given.nothing()
            .with("pump.insulation_resistance", row.in("Mohm"), MEGOHM)
            .at("insulation_band");
    if (row.expected().startsWith("normal")) {
      assertEquals(4, band, row.id());
    } else {
      assertTrue(row.expected().startsWith("damaged") && band <= 2, row.id());
    }
  }
}
