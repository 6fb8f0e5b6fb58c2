package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class MontanaTest {
  private static final String NEW = "dates.completed=2022-08-06";
  private static final Code MT = Code.of("montana", "Montana, USA");

  @Test
  void arm_36_21_638_1() {
    String s = "ARM 36.21.638(1)";
    MT.states(s, "septic tank", "50 ft")
        .least("septic-tank-distance", "setback.septic_tank", "50 ft", NEW);
    MT.states(s, "underground storage tank", "50 ft")
        .least("fuel-tank-distance", "setback.fuel_tank", "50 ft", NEW);
    MT.states(s, "drainfield", "100 ft")
        .least("absorption-field-distance", "setback.absorption_field", "100 ft", NEW);
    MT.states(s, "cesspool", "100 ft")
        .least("cesspool-distance", "setback.cesspool", "100 ft", NEW);
    // More where a risk is evident: only a person can judge it, and only where ground gives cause.
    MT.cannotTell("more-distance-where-risk-is-evident", NEW, "site.soil=creviced rock");
    MT.cannotTell("more-distance-where-risk-is-evident", NEW, "site.slope=well below source");
    MT.doesNotApply(
        "more-distance-where-risk-is-evident", NEW, "site.soil=sand", "site.slope=level");
    // The text in force from 2019-06-22 is the one that was read.
    MT.doesNotApply(
        "septic-tank-distance", "dates.completed=2019-06-21", "setback.septic_tank=10 ft");
    MT.fallsShort(
        "septic-tank-distance", "dates.completed=2019-06-22", "setback.septic_tank=10 ft");
  }

  @Test
  void arm_36_21_638_2_is_a_should() {
    String s = "ARM 36.21.638(2)";
    MT.states(s, "property line", "10 ft")
        .least("property-line-distance", "setback.property_line", "10 ft", NEW);
    MT.states(s, "watertight joints", "10 ft")
        .least(
            "sewer-line-distance", "setback.sewer_line", "10 ft", NEW, "site.sewer_watertight=yes");
    MT.states(s, "other sewer line", "50 ft")
        .least(
            "sewer-line-distance", "setback.sewer_line", "50 ft", NEW, "site.sewer_watertight=no");
    MT.cannotTell("sewer-line-distance", NEW, "setback.sewer_line=30 ft");
  }

  @Test
  void arm_36_21_647() {
    String s = "ARM 36.21.647";
    MT.states(s, "finished ground", "18 in")
        .least("casing-top-height", "well.stickup", "18 in", NEW);
    MT.states(s, "100-year", "18 in")
        .least(
            "casing-top-over-flood",
            "well.stickup",
            "30 in",
            NEW,
            "well.flood_level=12 in",
            "well.cap=none",
            "well.vent_height=0 in");
    MT.meets(
        "casing-top-over-flood",
        NEW,
        "well.flood_level=12 in",
        "well.stickup=6 in",
        "well.cap=sealed",
        "well.vent_height=13 in");
    MT.fallsShort(
        "casing-top-over-flood",
        NEW,
        "well.flood_level=12 in",
        "well.stickup=6 in",
        "well.cap=sealed",
        "well.vent_height=12 in");
  }

  @Test
  void arm_36_21_654() {
    MT.states("ARM 36.21.654(3)", "all new wells", "25 ft")
        .least(
            "seal-depth",
            "grout.bottom",
            "25 ft",
            "dates.completed=2010-07-16",
            "well.method=rotary");
    MT.states("ARM 36.21.654(3) superseded", "all new wells", "18 ft")
        .least(
            "seal-depth",
            "grout.bottom",
            "18 ft",
            "dates.completed=2010-07-15",
            "well.method=rotary");
    MT.states("ARM 36.21.654(1)(e)", "seal thickness", "1.5 in")
        .least(
            "seal-thickness",
            "well.bore_diameter",
            "7.5 in",
            NEW,
            "grout.material=neat cement",
            "well.casing_diameter=4.5 in",
            "well.casing_size_is=outside",
            "well.casing_material=steel");
    MT.states("ARM 36.21.654(1)(d)", "cement grout", "72 h")
        .least("cement-set-time", "grout.set_time", "72 h", NEW, "grout.material=neat cement");
  }

  @Test
  void arm_36_21_655_and_656() {
    String[] rock = {NEW, "well.open_hole=yes", "well.rock_depth=50 ft"};
    MT.states("ARM 36.21.655", "consolidated", "3 ft")
        .least("seal-into-sound-rock", "grout.bottom", "53 ft", rock);
    MT.least(
        "seal-into-sound-rock",
        "grout.bottom",
        "25 ft",
        NEW,
        "well.open_hole=yes",
        "well.rock_depth=5 ft");
    MT.states("ARM 36.21.656", "sand/gravel", "1 ft")
        .least(
            "casing-below-water-table",
            "well.casing_depth",
            "21 ft",
            "well.aquifer=sand and gravel",
            "water.static_level=20 ft");
  }

  @Test
  void arm_36_21_662() {
    MT.states("ARM 36.21.662(1)", "residual", "25 ppm")
        .least("chlorine-left", "disinfection.residual", "25 ppm", NEW);
    MT.least("chlorine-contact-time", "disinfection.contact_time", "24 h", NEW);
    MT.fallsShort(
        "disinfected-after-pump",
        NEW,
        "dates.pump_installed=2022-09-02",
        "dates.disinfected=2022-09-01");
    MT.meets(
        "disinfected-after-pump",
        NEW,
        "dates.pump_installed=2022-09-02",
        "dates.disinfected=2022-09-02");
  }

  @Test
  void yield_rule_between_663_and_665() {
    MT.states("yield rule in ARM 36.21.6xx (page RID=11990)(1)", "every well", "1 h")
        .least("yield-test-length", "water.test_duration", "1 h", "water.test_rate=12 gpm");
    MT.states("yield rule in ARM 36.21.6xx (page RID=11990)(4)", "100 gpm", "8 h")
        .least("yield-test-length", "water.test_duration", "8 h", "water.test_rate=100 gpm");
    MT.asksFor(
        "yield-test-record",
        "water.static_level=20 ft",
        "water.test_rate=12 gpm",
        "water.test_method=bailer",
        "water.pumping_level=40 ft");
  }

  @Test
  void arm_36_21_639_661_668() {
    MT.states("ARM 36.21.639", "well log", "60 days")
        .days("report-in-time", 60, LocalDate.of(2015, 3, 4));
    MT.states("ARM 36.21.661", "sanitary well cap", "required")
        .fallsShort("well-cap", NEW, "well.cap=none");
    MT.meets("well-cap", NEW, "well.cap=welded");
    MT.states("ARM 36.21.668", "bacteriological", "should").fallsShort("coliform-sampled", NEW);
    MT.most(
        "sample-without-chlorine", "sample.chlorine_residual", "0 mg/L", "sample.coliform=absent");
  }
}
