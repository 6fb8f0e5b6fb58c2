package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class IllinoisTest {
  private static final Code IL = Code.of("illinois", "Illinois, USA");
  private static final Code TABLE_C =
      Code.of("illinois", "Illinois, USA (77 IAC 920 Table C as published by Lake County)");

  @Test
  void table_920_c_as_a_county_restates_it() {
    row("septic tank", "50 ft", "septic-tank-distance", "septic_tank");
    row("septic field", "75 ft", "absorption-field-distance", "absorption_field");
    row("body of water", "25 ft", "surface-water-distance", "surface_water");
    // One entry stands for both: it falls short below the lesser, and between the two one asks.
    row("leaching pit", "100 ft", "cesspool-distance", "cesspool");
    Code cesspool = TABLE_C.states("920.Table C (via county page)", "cesspool", "150 ft");
    cesspool.cannotTell("cesspool-or-leaching-pit", "setback.cesspool=149.9 ft");
    cesspool.cannotTell("cesspool-or-leaching-pit", "setback.cesspool=100 ft");
    cesspool.doesNotApply("cesspool-or-leaching-pit", "setback.cesspool=150 ft");
    TABLE_C
        .states("920.Table C (via county page)", "clay pipe", "50 ft")
        .least("sewer-line-distance", "setback.sewer_line", "50 ft", "site.sewer_watertight=no");
    TABLE_C
        .states("920.Table C (via county page)", "Schedule 40", "10 ft")
        .least("sewer-line-distance", "setback.sewer_line", "10 ft", "site.sewer_watertight=yes");
  }

  private static void row(String subject, String figure, String rule, String source) {
    TABLE_C
        .states("920.Table C (via county page)", subject, figure)
        .least(rule, "setback." + source, figure);
  }

  @Test
  void s_920_30_60_70() {
    IL.states("920.30(b)", "construction report", "30 days")
        .days("report-in-time", 30, LocalDate.of(2020, 2, 1));
    IL.states("920.60(b)", "unconsolidated", "20 ft")
        .least(
            "casing-depth-in-loose-ground",
            "well.casing_depth",
            "20 ft",
            "well.aquifer=sand and gravel");
    IL.states("920.70(a)(1)", "under 30 ft", "40 ft")
        .least(
            "casing-depth-under-thin-cover",
            "well.casing_depth",
            "40 ft",
            "well.open_hole=yes",
            "well.rock_depth=29 ft");
    IL.doesNotApply(
        "casing-depth-under-thin-cover",
        "well.open_hole=yes",
        "well.rock_depth=30 ft",
        "well.casing_depth=31 ft");
    String[] casing = {
      "grout.material=neat cement",
      "well.method=rotary",
      "well.casing_material=steel",
      "well.casing_size_is=outside",
      "well.casing_diameter=4.5 in"
    };
    IL.states("920.70(a)(1)", "drill hole", "3 in diameter")
        .least(
            "bore-for-grout",
            "well.bore_diameter",
            "7.5 in",
            Code.plus(casing, "grout.method", "tremie"));
    IL.states("920 Illustration E note 2", "inside of casing", "2 in diameter")
        .least(
            "bore-for-grout",
            "well.bore_diameter",
            "6.5 in",
            Code.plus(casing, "grout.method", "displacement"));
  }

  @Test
  void s_920_100() {
    IL.states("920.100(a)", "finished ground", "8 in")
        .least("casing-top-height", "well.stickup", "8 in");
    IL.states("920.100(a)", "high water", "24 in")
        .least("casing-top-over-flood", "well.stickup", "60 in", "well.flood_level=36 in");
    IL.states("920.100(b)", "chlorine dose", "100 ppm")
        .least("chlorine-dose", "disinfection.dose", "100 ppm");
    IL.fallsShort(
        "disinfected-after-pump",
        "dates.pump_installed=2020-08-02",
        "dates.disinfected=2020-08-01");
    IL.meets(
        "disinfected-after-pump",
        "dates.pump_installed=2020-08-02",
        "dates.disinfected=2020-08-02");
  }

  @Test
  void s_920_40_120_and_925_40() {
    IL.states("920.40(f)", "below frost", "required")
        .least("pitless-below-frost", "pitless.depth", "42 in", "site.frost_depth=42 in");
    IL.states("920.120(a)(1)", "abandoned", "30 days")
        .fallsShort("old-well-sealed", "well.replacement=yes", "well.old_well=not sealed");
    IL.meets("old-well-sealed", "well.replacement=yes", "well.old_well=sealed");
    IL.states("925.40(b)(1)", "pit", "prohibited").fallsShort("no-well-pit", "well.head=pit");
    IL.meets("no-well-pit", "well.head=pitless unit");
  }
}
