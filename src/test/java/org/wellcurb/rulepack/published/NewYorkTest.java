package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

class NewYorkTest {
  private static final String NEW = "dates.completed=2005-11-23";
  private static final String[] GRAVEL = {
    NEW, "well.aquifer=sand and gravel", "grout.material=neat cement", "well.casing_diameter=6 in"
  };
  private static final Code NY = Code.of("new-york", "New York, USA");

  @Test
  void appendix_5b_table_1() {
    row("septic tank", "50 ft", "septic-tank-distance", "septic_tank");
    row("absorption field or bed", "100 ft", "absorption-field-distance", "absorption_field");
    row("sanitary or combined sewer", "50 ft", "sewer-line-distance", "sewer_line");
    row("privy with watertight vault", "50 ft", "privy-distance", "privy");
    row("sanitary privy pit", "100 ft", "pit-privy-distance", "privy");
    row("seepage pit after septic tank", "150 ft", "cesspool-distance", "cesspool");
    row("cesspool", "200 ft", "cesspool-without-tank-distance", "cesspool");
    row("barnyard", "100 ft", "animal-yard-distance", "animal_yard");
    row("manure pile", "200 ft", "manure-storage-distance", "manure_storage");
    row("silo", "100 ft", "silage-distance", "silage");
    row("single-walled", "150 ft", "fuel-tank-distance", "fuel_tank");
    row("contained, covered chemical", "100 ft", "chemical-storage-distance", "chemical_storage");
    row("chemical storage exposed", "300 ft", "open-chemical-store-distance", "chemical_storage");
    row("landfill", "300 ft", "landfill-distance", "landfill");
    row("cemetery", "100 ft", "cemetery-distance", "cemetery");
    row("stream", "25 ft", "surface-water-distance", "surface_water");
    row("manure spreading", "200 ft", "crop-field-distance", "crop_field");
    row("all other known", "100 ft", "holding-tank-distance", "holding_tank");
    NY.doesNotApply(
        "septic-tank-distance", "dates.completed=2005-11-22", "setback.septic_tank=10 ft");
  }

  private static void row(String subject, String figure, String rule, String source) {
    NY.states("App. 5-B Table 1", subject, figure).least(rule, "setback." + source, figure, NEW);
  }

  @Test
  void appendix_5b_table_1_field_in_coarse_gravel() {
    NY.states("App. 5-B Table 1", "coarse gravel", "200 ft")
        .least(
            "absorption-field-in-gravel-distance",
            "setback.absorption_field",
            "200 ft",
            NEW,
            "site.soil=gravel");
    NY.doesNotApply(
        "absorption-field-in-gravel-distance",
        NEW,
        "site.soil=clay or loam",
        "setback.absorption_field=100 ft");
  }

  @Test
  void appendix_5b_1_older_approvals() {
    NY.states("App. 5-B.1(a)(2)", "2005-12-01", "exception")
        .cannotTell(
            "approval-before-2005", "dates.permit=2005-11-30", "dates.completed=2006-03-01");
    NY.doesNotApply(
        "approval-before-2005", "dates.permit=2005-12-01", "dates.completed=2006-03-01");
  }

  @Test
  void appendix_5b_3() {
    NY.states("App. 5-B.3(b)(4)", "below finished grade", "19 ft")
        .least("casing-depth", "well.casing_depth", "19 ft", NEW);
    NY.states("App. 5-B.3(b)(4)", "above finished grade", "1 ft")
        .least("casing-top-height", "well.stickup", "1 ft", NEW);
  }

  @Test
  void appendix_5b_table_2_greater_of_two() {
    NY.states("App. 5-B Table 2 row 1", "sand/gravel", "max(19 ft, pumping level + 5 ft)")
        .least(
            "casing-below-pumping-level",
            "well.casing_depth",
            "19 ft",
            NEW,
            "well.aquifer=sand and gravel",
            "water.pumping_level=13 ft");
    NY.least(
        "casing-below-pumping-level",
        "well.casing_depth",
        "45 ft",
        NEW,
        "well.aquifer=sand and gravel",
        "water.pumping_level=40 ft");
    // Casing + 2 in where grout is placed under pressure, + 4 in where it only falls.
    NY.least(
        "bore-for-grout",
        "well.bore_diameter",
        "8 in",
        Code.plus(GRAVEL, "grout.method", "pumped"));
    NY.least(
        "bore-for-grout",
        "well.bore_diameter",
        "10 in",
        Code.plus(GRAVEL, "grout.method", "poured"));
  }

  @Test
  void appendix_5b_4() {
    NY.states("App. 5-B.4(b)(1)", "drawdown", "4 h")
        .least("yield-test-length", "water.test_duration", "4 h");
    NY.states("App. 5-B.4(a)(2)", "level and rate", "required")
        .asksFor(
            "report-yield-test",
            "water.static_level=20 ft",
            "water.pumping_level=60 ft",
            "water.test_rate=5 gpm",
            "water.yield=5 gpm");
  }
}
