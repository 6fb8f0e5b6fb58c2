package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

class WestVirginiaTest {
  private static final Code WV = Code.of("west-virginia", "West Virginia, USA");

  @Test
  void table_64_46_a_doubled_below_the_source() {
    slope("septic tank", "septic-tank-distance", "septic_tank");
    slope("vault privy", "holding-tank-distance", "holding_tank");
    slope("vault privy", "privy-distance", "privy");
    slope("buried oil", "fuel-tank-distance", "fuel_tank");
    slope("cemetery", "cemetery-distance", "cemetery");
    WV.cannotTell("septic-tank-distance", "setback.septic_tank=60 ft");
  }

  private static void slope(String subject, String rule, String source) {
    WV.states("64-46 Table A", subject, "50 ft")
        .least(rule, "setback." + source, "50 ft", "site.slope=level");
    WV.states("64-46 Table A", subject, "100 ft")
        .least(rule, "setback." + source, "100 ft", "site.slope=well below source");
  }

  @Test
  void table_64_46_a_sewers_and_drains() {
    String rule = "sewer-line-distance";
    String entry = "setback.sewer_line";
    WV.states("64-46 Table A", "watertight sewer", "10 ft")
        .least(rule, entry, "10 ft", "site.sewer_watertight=yes", "site.slope=well below source");
    WV.states("64-46 Table A", "non-watertight drain", "50 ft")
        .least(rule, entry, "50 ft", "site.sewer_watertight=no", "site.slope=well above source");
    WV.states("64-46 Table A", "non-watertight drain", "100 ft")
        .least(rule, entry, "100 ft", "site.sewer_watertight=no", "site.slope=well below source");
  }

  @Test
  void table_64_46_a_other_sources() {
    row("absorption field", "100 ft", "absorption-field-distance", "absorption_field");
    row("barnyard", "100 ft", "animal-yard-distance", "animal_yard");
    row("stream", "25 ft", "surface-water-distance", "surface_water");
    row("impoundment", "25 ft", "pond-distance", "pond");
    row("existing building", "10 ft", "building-distance", "building");
    row("fertilizer", "150 ft", "chemical-storage-distance", "chemical_storage");
  }

  private static void row(String subject, String figure, String rule, String source) {
    WV.states("64-46 Table A", subject, figure).least(rule, "setback." + source, figure);
  }

  @Test
  void s_64_46_5_1_a() {
    WV.states("64-46-5.1.a", "up to 10 in", "0.188 in")
        .least(
            "steel-casing-wall",
            "well.casing_wall",
            "0.188 in",
            "well.casing_material=steel",
            "well.casing_diameter=10 in");
    WV.states("64-46-5.1.a", "over 10 in", "0.375 in")
        .least(
            "large-steel-casing-wall",
            "well.casing_wall",
            "0.375 in",
            "well.casing_material=steel",
            "well.casing_diameter=20 in");
    WV.doesNotApply(
        "large-steel-casing-wall",
        "well.casing_material=steel",
        "well.casing_diameter=24 in",
        "well.casing_wall=0.1 in");
  }

  @Test
  void s_64_46_6() {
    WV.states("64-46-6.1.a", "below ground", "19 ft")
        .least("casing-depth", "well.casing_depth", "19 ft");
    WV.states("64-46-6.1.b", "bedrock well", "19 ft")
        .least(
            "casing-into-rock",
            "well.casing_depth",
            "19 ft",
            "well.open_hole=yes",
            "well.rock_depth=3 ft");
    // At least 5 ft in unweathered rock.
    WV.least(
        "casing-into-rock",
        "well.casing_depth",
        "45 ft",
        "well.open_hole=yes",
        "well.rock_depth=40 ft");
    WV.states("64-46-6.1", "above finished grade", "1 ft")
        .least("casing-top-height", "well.stickup", "1 ft");
    WV.states("64-46-6.2", "top of well", "4 in")
        .least("bore-diameter", "well.bore_diameter", "4 in");
    WV.states("64-46-6.3", "grouted", "full casing depth")
        .least("grout-to-casing-foot", "grout.bottom", "33 ft", "well.casing_depth=33 ft");
    WV.most("grout-to-surface", "grout.top", "5 ft", "pitless.depth=5 ft");
    WV.most("grout-to-surface", "grout.top", "0 ft", "pitless.depth=n/a");
  }

  @Test
  void s_64_46_7() {
    WV.states("64-46-7.3", "check valves", "2 count")
        .fallsShort("two-check-valves", "pump.type=submersible", "pump.check_valves=1");
    WV.meets("two-check-valves", "pump.type=submersible", "pump.check_valves=2");
    WV.states("64-46-7.8", "relief", "required").fallsShort("relief-valve", "relief.fitted=no");
    WV.meets("relief-valve", "relief.fitted=yes");
    WV.states("64-46-7.7", "splices", "required")
        .fallsShort("watertight-splice", "pump.type=submersible", "pump.splice=none");
    WV.meets("watertight-splice", "pump.type=submersible", "pump.splice=heat shrink");
    WV.fallsShort("wire-in-conduit", "wire.conduit=no");
    WV.meets("wire-in-conduit", "wire.conduit=yes");
  }

  @Test
  void s_64_46_13_and_64_19_4() {
    WV.states("64-46-13.1", "local code", "stricter")
        .cannotTell("stricter-code", "well.use=commercial");
    WV.states("64-19-4.2", "permit application", "15 calendar days")
        .fallsShort(
            "notice-before-start",
            "dates.completed=2010-05-01",
            "dates.notice=2010-04-01",
            "dates.started=2010-04-15");
    WV.meets(
        "notice-before-start",
        "dates.completed=2010-05-01",
        "dates.notice=2010-04-01",
        "dates.started=2010-04-16");
  }
}
