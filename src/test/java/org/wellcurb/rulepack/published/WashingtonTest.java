package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class WashingtonTest {
  private static final String NEW = "dates.completed=2009-01-19";
  private static final Code WA = Code.of("washington", "Washington, USA");

  @Test
  void wac_173_160_171_3_b() {
    String s = "WAC 173-160-171(3)(b)";
    WA.states(s, "building structure", "5 ft")
        .least("building-distance", "setback.building", "5 ft", NEW);
    WA.states(s, "septic tank", "50 ft")
        .least("septic-tank-distance", "setback.septic_tank", "50 ft", NEW);
    WA.states(s, "holding tank", "50 ft")
        .least("holding-tank-distance", "setback.holding_tank", "50 ft", NEW);
    WA.states(s, "building sewer", "50 ft")
        .least("sewer-line-distance", "setback.sewer_line", "50 ft", NEW);
    WA.states(s, "drainfield", "100 ft")
        .least("absorption-field-distance", "setback.absorption_field", "100 ft", NEW);
    WA.doesNotApply(
        "septic-tank-distance", "dates.completed=2009-01-18", "setback.septic_tank=10 ft");
  }

  @Test
  void wac_173_160_171_3_b_v_any_other_source() {
    WA.states("WAC 173-160-171(3)(b)", "other (potential)", "100 ft");
    for (String source :
        new String[] {
          "privy",
          "cesspool",
          "animal_yard",
          "fuel_tank",
          "chemical_storage",
          "landfill",
          "cemetery"
        }) {
      WA.least(source.replace('_', '-') + "-distance", "setback." + source, "100 ft", NEW);
    }
    WA.least("manure-storage-distance", "setback.manure_storage", "100 ft", NEW);
  }

  @Test
  void wac_173_160_291() {
    WA.states("WAC 173-160-291(1)", "above ground", "6 in")
        .least("casing-top-height", "well.stickup", "6 in", NEW);
    WA.fallsShort("no-well-pit", NEW, "well.head=pit");
    WA.meets("no-well-pit", NEW, "well.head=pitless unit");
    WA.states("WAC 173-160-291(2)", "flood", "2 ft")
        .least("casing-top-over-flood", "well.stickup", "5 ft", NEW, "well.flood_level=3 ft");
    WA.states("WAC 173-160-291(3)", "cap", "required")
        .fallsShort("well-cap", NEW, "well.cap=other");
    WA.meets("well-cap", NEW, "well.cap=welded");
    WA.states("WAC 173-160-291(4)", "terminal", "6 in")
        .least("vent-height", "well.vent_height", "6 in", NEW);
    WA.states("WAC 173-160-291(5)", "above static water level", "required")
        .fallsShort(
            "pitless-above-water",
            NEW,
            "pitless.fitted=yes",
            "pitless.depth=8 ft",
            "water.static_level=8 ft");
    WA.meets(
        "pitless-above-water",
        NEW,
        "pitless.fitted=yes",
        "pitless.depth=8 ft",
        "water.static_level=8.5 ft");
  }

  @Test
  void wac_173_160_331_5() {
    WA.states("WAC 173-160-331(5)", "residual", "50 ppm")
        .least("chlorine-dose", "disinfection.dose", "50 ppm", NEW);
    WA.states("WAC 173-160-331(5)", "contact time", "24 h")
        .least("chlorine-contact-time", "disinfection.contact_time", "24 h", NEW);
    WA.least("chlorine-left", "disinfection.residual", "1 ppm", NEW);
  }

  @Test
  void wac_173_160_141_and_151() {
    WA.states("WAC 173-160-141(1)", "report", "30 days")
        .days("report-in-time", 30, LocalDate.of(2012, 2, 20));
    WA.states("WAC 173-160-151(1)", "notice", "72 h")
        .fallsShort(
            "notice-before-start", NEW, "dates.notice=2009-01-05", "dates.started=2009-01-07");
    WA.meets("notice-before-start", NEW, "dates.notice=2009-01-05", "dates.started=2009-01-08");
    WA.asksFor(
        "report-well",
        "driller.licence=D-9",
        "well.use=household",
        "well.method=rotary",
        "well.depth=90 ft",
        "well.tag=X-1");
    WA.asksFor(
        "report-casing-and-seal",
        "well.casing_material=steel",
        "well.casing_diameter=6 in",
        "well.stickup=2 ft",
        "grout.material=bentonite slurry",
        "grout.bottom=20 ft",
        "grout.method=pumped");
    WA.asksFor(
        "report-yield-test",
        "water.static_level=20 ft",
        "water.test_method=bailer",
        "water.test_rate=12 gpm",
        "water.test_duration=1 h");
  }

  @Test
  void wac_173_160_261_dug_wells() {
    WA.states("WAC 173-160-261", "dug well", "18 ft")
        .least(
            "dug-well-seal", "grout.bottom", "18 ft", NEW, "well.method=dug", "well.depth=40 ft");
    WA.least("dug-well-seal", "grout.bottom", "9 ft", NEW, "well.method=dug", "well.depth=12 ft");
    WA.doesNotApply("dug-well-seal", NEW, "well.method=rotary", "grout.bottom=2 ft");
  }

  @Test
  void wac_173_160_201() {
    WA.states("WAC 173-160-201(4)", "steel or plastic", "enum")
        .fallsShort("casing-material", "well.method=rotary", "well.casing_material=other");
    WA.states("WAC 173-160-201(6)", "lower end of casing", "2 ft")
        .most("liner-overlap", "well.liner_top", "98 ft", "well.casing_depth=100 ft");
    WA.states("WAC 173-160-201(9)", "larger than 30 in", "0.375 in")
        .least(
            "large-steel-casing-wall",
            "well.casing_wall",
            "0.375 in",
            "well.casing_material=steel",
            "well.casing_diameter=31 in");
  }
}
