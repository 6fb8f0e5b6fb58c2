package org.wellcurb.rulepack.published;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.PackLoader;

class WisconsinTest {
  private static final String NEW = "dates.completed=2020-07-01";
  private static final String TABLE_E = "NR 812.42(1)(a) Table E";
  private static final String SAND = "well.aquifer=sand and gravel";
  private static final Code WI = Code.of("wisconsin", "Wisconsin, USA");

  @Test
  void nr_812_42_table_e_absorption_unit_in_every_column() {
    WI.states(TABLE_E, "soil absorption unit", "50 ft");
    for (String year : new String[] {"1970", "1980", "1990", "1993", "2005", "2016", "2020"}) {
      WI.least(
          "absorption-field-distance",
          "setback.absorption_field",
          "50 ft",
          "dates.completed=" + year + "-06-01");
    }
  }

  @Test
  void nr_812_42_table_e_absorption_unit_only_advises_after_its_last_day() throws Exception {
    String later = "absorption-field-distance-since-2020";
    for (String day : new String[] {"2020-07-01", "2022-06-01"}) {
      WI.doesNotApply(
          "absorption-field-distance", "dates.completed=" + day, "setback.absorption_field=3 ft");
      WI.least(later, "setback.absorption_field", "50 ft", "dates.completed=" + day);
    }
    WI.doesNotApply(later, "dates.completed=2020-06-30", "setback.absorption_field=3 ft");
    assertTrue(
        PackLoader.load("wisconsin").rules().stream()
            .anyMatch(
                rule ->
                    rule.id().equals(later)
                        && rule.kind() == FindingKind.ADVISORY
                        && rule.because().contains("was not read")));
  }

  @Test
  void nr_812_42_table_e_graves_by_the_milder_of_then_and_now() {
    WI.states(TABLE_E, "cemetery", "100 ft").states(TABLE_E, "cemetery", "50 ft");
    // 100 ft when it was built in 1985, 50 ft in the last column: the milder holds.
    WI.least("cemetery-distance", "setback.cemetery", "50 ft", "dates.completed=1985-06-01");
    WI.least("cemetery-distance", "setback.cemetery", "50 ft", "dates.completed=1991-02-01");
    WI.doesNotApply("cemetery-distance", "dates.completed=1975-09-30", "setback.cemetery=3 ft");
  }

  @Test
  void nr_812_42_1_a_a_source_that_came_later_is_judged_by_its_own_day() {
    String[] well = {"dates.completed=1960-05-01"};
    WI.least(
        "cemetery-after-well-distance",
        "setback.cemetery",
        "100 ft",
        Code.plus(well, "dates.source_installed", "1991-01-31"));
    WI.least(
        "cemetery-after-well-distance",
        "setback.cemetery",
        "50 ft",
        Code.plus(well, "dates.source_installed", "1991-02-01"));
    WI.doesNotApply(
        "cemetery-distance",
        "dates.completed=1960-05-01",
        "dates.source_installed=1991-01-31",
        "setback.cemetery=60 ft");
    WI.doesNotApply(
        "cemetery-after-well-distance",
        "dates.completed=1995-05-01",
        "dates.source_installed=1991-01-31",
        "setback.cemetery=60 ft");
    WI.states(TABLE_E, "animal yard", "50 ft")
        .least(
            "animal-yard-after-well-distance",
            "setback.animal_yard",
            "50 ft",
            Code.plus(well, "dates.source_installed", "1975-10-01"));
    WI.least("animal-yard-distance", "setback.animal_yard", "50 ft", "dates.completed=1975-10-01");
    WI.doesNotApply(
        "animal-yard-distance", "dates.completed=1975-09-30", "setback.animal_yard=3 ft");
  }

  @Test
  void nr_812_42_table_e_crop_field_is_recommended() {
    WI.states(TABLE_E, "agricultural crop field", "25 (recommended only) ft")
        .least("crop-field-distance", "setback.crop_field", "25 ft", "dates.completed=2016-01-05");
    WI.doesNotApply("crop-field-distance", "dates.completed=2014-09-30", "setback.crop_field=3 ft");
  }

  @Test
  void nr_812_08() {
    WI.states("NR 812.08(4)(a)", "sanitary/storm", "8 ft")
        .least("sewer-line-distance", "setback.sewer_line", "8 ft", "dates.completed=2010-01-05");
    WI.states("NR 812.08(1)(d)", "not named elsewhere", "8 ft");
    WI.least("pond-distance", "setback.pond", "8 ft");
    WI.least("fuel-tank-distance", "setback.fuel_tank", "8 ft");
    WI.least("chemical-storage-distance", "setback.chemical_storage", "8 ft");
    WI.least("silage-distance", "setback.silage", "8 ft");
  }

  @Test
  void nr_812_29_and_42_7() {
    WI.states("NR 812.29(1)", "above established ground", "12 in")
        .least("casing-top-height", "well.stickup", "12 in", NEW);
    WI.states("NR 812.42(7)(a)1", "existing low-capacity", "8 in")
        .least("casing-top-height", "well.stickup", "8 in", "dates.completed=1991-01-31");
    WI.doesNotApply("casing-top-height", "dates.completed=2000-01-01", "well.stickup=1 in");
    WI.states("NR 812.29(3)", "floodplain", "2 ft")
        .least("casing-top-over-flood", "well.stickup", "5 ft", NEW, "well.flood_level=3 ft");
    WI.fallsShort("no-well-pit", NEW, "well.head=pit");
    WI.meets("no-well-pit", NEW, "well.head=pitless adapter");
  }

  @Test
  void nr_812_13_depth_follows_the_static_level() {
    WI.states("NR 812.13(2)", "15 ft or shallower", "25 ft")
        .least(
            "casing-depth-in-loose-ground",
            "well.casing_depth",
            "25 ft",
            NEW,
            SAND,
            "water.static_level=15 ft");
    WI.states("NR 812.13(2)", "deeper than 15 ft", "static water level + 10 ft")
        .least(
            "casing-depth-in-loose-ground",
            "well.casing_depth",
            "30 ft",
            NEW,
            SAND,
            "water.static_level=20 ft");
    WI.states("NR 812.42(1)(b)4", "unconsolidated", "25 ft")
        .least(
            "casing-depth-in-loose-ground",
            "well.casing_depth",
            "25 ft",
            SAND,
            "dates.completed=1960-01-01");
    WI.states("NR 812.13(1)", "unconsolidated", "2 in")
        .least("casing-diameter-in-loose-ground", "well.casing_diameter", "2 in", NEW, SAND);
  }

  @Test
  void nr_812_14_rock() {
    rock("(a)", "sandstone", "sandstone", "30 ft", "5 ft");
    rock("(b)", "crystalline", "crystalline rock", "40 ft", "5 ft");
    rock("(c)1", "20 ft or more down", "limestone or dolomite", "40 ft", "20 ft");
    rock("(c)2", "under 20 ft down", "limestone or dolomite", "60 ft", "19 ft");
    WI.states("NR 812.14(1)", "bedrock", "6 in")
        .least(
            "casing-diameter-in-rock", "well.casing_diameter", "6 in", NEW, "well.aquifer=shale");
    WI.states("NR 812.14(3)(e)", "crystalline", "prohibited")
        .fallsShort(
            "no-plastic-in-crystalline-rock",
            NEW,
            "well.aquifer=crystalline rock",
            "well.casing_material=pvc");
    WI.meets(
        "no-plastic-in-crystalline-rock",
        NEW,
        "well.aquifer=crystalline rock",
        "well.casing_material=steel");
    String[] bore = {
      NEW,
      "well.aquifer=sandstone",
      "grout.material=neat cement",
      "grout.method=pumped",
      "well.casing_diameter=6 in"
    };
    WI.states("NR 812.14(5)(a)1", "coupled", "nominal casing + 4")
        .least(
            "bore-in-rock",
            "well.bore_diameter",
            "10 in",
            Code.plus(bore, "well.casing_joint", "threaded"));
    WI.states("NR 812.14(5)(a)2", "welded", "nominal casing + 2")
        .least(
            "bore-in-rock",
            "well.bore_diameter",
            "8 in",
            Code.plus(bore, "well.casing_joint", "welded"));
  }

  private static void rock(String part, String subject, String aquifer, String figure, String top) {
    WI.states("NR 812.14(2)" + part, subject, figure)
        .least(
            "casing-depth-in-rock",
            "well.casing_depth",
            figure,
            NEW,
            "well.aquifer=" + aquifer,
            "well.rock_depth=" + top);
  }

  @Test
  void nr_812_20() {
    WI.states("NR 812.20(2)(b)1", "ground surface", "full length")
        .most("grout-to-surface", "grout.top", "0 ft", NEW, "pitless.depth=n/a");
    WI.states("NR 812.20(4)", "shallower than", "100 ft")
        .fallsShort("poured-grout-depth", NEW, "grout.method=poured", "grout.bottom=100 ft");
    WI.meets("poured-grout-depth", NEW, "grout.method=poured", "grout.bottom=99.9 ft");
  }

  @Test
  void nr_812_12_and_41_driller_and_pump_installer_differ() {
    WI.states("NR 812.12(17)(a)1", "solution strength", "100 mg/L")
        .least("chlorine-dose", "disinfection.dose", "100 mg/L", NEW);
    WI.states("NR 812.12(17)(a)3", "after drilling", "2 h")
        .least(
            "chlorine-contact-time", "disinfection.contact_time", "2 h", NEW, "record.covers=well");
    WI.states("NR 812.41(1)(c)", "contact time in system", "8 h")
        .least(
            "chlorine-contact-time-after-pump",
            "disinfection.contact_time",
            "8 h",
            "record.covers=pump");
  }

  @Test
  void nr_812_44_46_and_091() {
    WI.states("NR 812.44(5)(b)13", "driven-point", "25 ft")
        .least("driven-point-casing-depth", "well.casing_depth", "25 ft", "well.method=driven");
    WI.asksFor(
        "new-well-sampled",
        "record.covers=well",
        "sample.coliform=absent",
        "sample.nitrate=1 mg/L");
    WI.fallsShort("sample-tap", "pressure.sample_tap=no");
    WI.meets("sample-tap", "pressure.sample_tap=yes");
    WI.fallsShort("wire-in-conduit", "wire.conduit=no");
    WI.meets("wire-in-conduit", "wire.conduit=yes");
    WI.fallsShort("well-cap", "well.cap=none");
    WI.meets("well-cap", "well.cap=vented sealed");
  }
}
