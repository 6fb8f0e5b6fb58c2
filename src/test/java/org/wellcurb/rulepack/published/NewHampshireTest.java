package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NewHampshireTest {
  private static final String ROCK = "well.open_hole=yes";
  private static final Code NH = Code.of("new-hampshire", "New Hampshire, USA");

  @ParameterizedTest
  @CsvSource({
    "0-750, 0, 75",
    "0-750, 750, 75",
    "751-1440, 751, 100",
    "751-1440, 1440, 100",
    "1441-4320, 4320, 125",
    "'4321-14,400', 14400, 150",
    "'14,401-28,800', 28800, 175",
    "'28,801-57,600', 57600, 200",
    "'57,601-86,400', 86400, 250",
    "'86,401-115,200', 115200, 300",
    "'115,201-144,000', 144000, 350",
    "'over 144,001', 144001, 400"
  })
  void env_wq_1008_06_table_1008_4(String step, String gallons, String feet) {
    NH.states("Env-Wq 1008.06(b) Table 1008-4", "sewage flow " + step, feet + " ft")
        .least(
            "absorption-field-distance",
            "setback.absorption_field",
            feet + " ft",
            "dates.completed=2016-10-01",
            "site.sewage_flow=" + gallons + " gpd");
  }

  @Test
  void env_wq_1008_06_flow_not_known() {
    NH.cannotTell(
        "absorption-field-distance",
        "dates.completed=2016-10-01",
        "setback.absorption_field=90 ft");
    NH.meets(
        "absorption-field-distance",
        "dates.completed=2016-10-01",
        "setback.absorption_field=400 ft");
    NH.fallsShort(
        "absorption-field-distance",
        "dates.completed=2016-10-01",
        "setback.absorption_field=70 ft");
  }

  @Test
  void we_602_22() {
    NH.states("We 602.22(a)", "bedrock well casing", "20 ft")
        .least("casing-length", "well.casing_length", "20 ft", ROCK);
    NH.least("casing-length", "well.casing_depth", "18 ft", ROCK, "well.stickup=2 ft");
  }

  @Test
  void we_602_22_b_c() {
    NH.states("We 602.22(b)(1)a", "above ground", "8 in")
        .least("casing-top-height", "well.stickup", "8 in", "well.use=household");
    NH.states("We 602.22(b)(1)b", "public", "18 in")
        .least("casing-top-height", "well.stickup", "18 in", "well.use=public");
    NH.states("We 602.22(b)(2)", "cover", "secure").fallsShort("well-cap", "well.cap=none");
    NH.meets("well-cap", "well.cap=sealed");
    NH.states("We 602.22(c)(1)-(2)", "competent bedrock", "10 ft")
        .least("casing-into-rock", "well.casing_depth", "25 ft", ROCK, "well.rock_depth=15 ft");
    NH.states("We 602.22(c)(3)", "drive shoe", "required")
        .fallsShort(
            "drive-shoe",
            ROCK,
            "well.casing_material=steel",
            "well.method=rotary",
            "well.drive_shoe=no");
    NH.meets(
        "drive-shoe",
        ROCK,
        "well.casing_material=steel",
        "well.method=rotary",
        "well.drive_shoe=yes");
  }

  @Test
  void we_702_05() {
    NH.states("We 702.05(a)", "check valves", "2 count")
        .fallsShort("two-check-valves", "pump.type=submersible", "pump.check_valves=1");
    NH.meets("two-check-valves", "pump.type=submersible", "pump.check_valves=2");
    NH.states("We 702.05(c)", "vent", "screened")
        .fallsShort("vent-screened", "well.vent_screened=no");
    NH.meets("vent-screened", "well.vent_screened=yes");
    NH.states("We 702.05(f)", "service pipe", "160 psi")
        .least("service-line-rating", "service_line.pressure_rating", "160 psi");
    NH.states("We 702.05(h)", "flexible plastic", "double clamped")
        .fallsShort("service-line-clamps", "service_line.material=pe", "service_line.clamps=1");
    NH.meets("service-line-clamps", "service_line.material=pe", "service_line.clamps=2");
    NH.states("We 702.05(i)", "4 to 12 in", "required")
        .fallsShort(
            "pitless-fitted",
            "well.use=household",
            "well.casing_diameter=4 in",
            "pitless.fitted=no");
    NH.meets(
        "pitless-fitted", "well.use=household", "well.casing_diameter=12 in", "pitless.fitted=yes");
    NH.states("We 702.05(k)", "burial", "4 ft")
        .least("service-line-depth", "service_line.burial_depth", "4 ft");
  }

  @Test
  void we_702_04() {
    NH.states("We 702.04(a)", "wire", "in conduit")
        .fallsShort("wire-in-conduit", "wire.conduit=no");
    NH.meets("wire-in-conduit", "wire.conduit=yes");
    NH.states("We 702.04(h)", "taped", "5-20 ft")
        .least("cable-ties", "pump.cable_tie_spacing", "5 ft");
    NH.most("cable-ties", "pump.cable_tie_spacing", "20 ft");
  }

  @Test
  void rsa_482_b_10() {
    NH.states("RSA 482-B:10 I", "well record", "90 days")
        .days("report-in-time", 90, LocalDate.of(2020, 1, 15));
    NH.fallsShort("position-datum", "site.position_datum=nad83");
    NH.meets("position-datum", "site.position_datum=wgs84");
    NH.asksFor(
        "report-well",
        "well.use=household",
        "well.depth=300 ft",
        "well.casing_depth=40 ft",
        "well.rock_depth=20 ft",
        "water.static_level=20 ft",
        "water.yield=3 gpm",
        "water.test_method=air lift",
        "water.test_duration=1 h");
  }
}
