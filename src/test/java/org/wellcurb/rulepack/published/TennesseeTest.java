package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TennesseeTest {
  private static final Code TN = Code.of("tennessee", "Tennessee, USA");

  @Test
  void chapter_0400_45_09_10_table_a() {
    row("septic tank", "50 ft", "septic-tank-distance", "septic_tank");
    row("drain field", "50 ft", "absorption-field-distance", "absorption_field");
    row("pit privy", "75 ft", "privy-distance", "privy");
    row("leaching pit", "200 ft", "cesspool-distance", "cesspool");
    row("animal pen", "100 ft", "animal-yard-distance", "animal_yard");
    TN.states("0400-45-09-.10 Table A", "sewer line", "50 ft")
        .least("sewer-line-distance", "setback.sewer_line", "50 ft", "site.sewer_watertight=no");
    TN.states("0400-45-09-.10 Table A", "tight line", "10 ft")
        .least("sewer-line-distance", "setback.sewer_line", "10 ft", "site.sewer_watertight=yes");
  }

  private static void row(String subject, String figure, String rule, String source) {
    TN.states("0400-45-09-.10 Table A", subject, figure).least(rule, "setback." + source, figure);
  }

  @ParameterizedTest
  @CsvSource({
    "3.500, 0.125",
    "4.000, 0.134",
    "4.500, 0.142",
    "5.500, 0.154",
    "6.000, 0.164",
    "6.625, 0.185",
    "8.625, 0.188"
  })
  void chapter_0400_45_09_10_table_b(String outside, String wall) {
    TN.states("0400-45-09-.10 Table B", "casing " + outside + " in outside", wall + " in")
        .least(
            "steel-casing-wall",
            "well.casing_wall",
            wall + " in",
            "well.casing_material=steel",
            "well.casing_size_is=outside",
            "well.casing_diameter=" + outside + " in");
  }

  @Test
  void chapter_0400_45_09_10_table_b_nominal_and_missing_sizes() {
    // The table goes by the outside diameter: what a nominal size comes to is an advisory.
    TN.least(
        "steel-casing-wall-by-nominal-size",
        "well.casing_wall",
        "0.185 in",
        "well.casing_material=steel",
        "well.casing_size_is=nominal",
        "well.casing_diameter=6 in");
    TN.doesNotApply(
        "steel-casing-wall",
        "well.casing_wall=0.1 in",
        "well.casing_material=steel",
        "well.casing_size_is=nominal",
        "well.casing_diameter=6 in");
    TN.cannotTell(
        "steel-casing-wall",
        "well.casing_wall=0.25 in",
        "well.casing_material=steel",
        "well.casing_size_is=outside",
        "well.casing_diameter=16 in");
  }

  @Test
  void chapter_0400_45_09_10() {
    String[] casing = {
      "grout.material=neat cement",
      "well.casing_material=steel",
      "well.casing_size_is=outside",
      "well.casing_diameter=4.5 in"
    };
    TN.states("0400-45-09-.10", "tremie", "1.5 in")
        .least(
            "annulus-width",
            "well.bore_diameter",
            "7.5 in",
            Code.plus(casing, "grout.method", "tremie"));
    TN.states("0400-45-09-.10", "other grout methods", "2 in")
        .least(
            "annulus-width",
            "well.bore_diameter",
            "8.5 in",
            Code.plus(casing, "grout.method", "poured"));
    TN.states("0400-45-09-.10(1)(b)", "completion report", "60 days")
        .days("report-in-time", 60, LocalDate.of(2015, 11, 30));
  }

  @Test
  void chapter_0400_45_09_11_12_14_15() {
    TN.states("0400-45-09-.11(5)", "vent", "screened")
        .fallsShort("vent-screened", "well.vent_screened=no");
    TN.meets("vent-screened", "well.vent_screened=yes");
    TN.states("0400-45-09-.12(1)(a)", "residual", "100 ppm")
        .least("chlorine-dose", "disinfection.dose", "100 ppm");
    TN.states("0400-45-09-.14(1)", "tag", "before rig leaves")
        .asksFor("well-tag", "dates.completed=2013-01-14", "well.tag=R-5");
    TN.asksFor("report-location", "site.latitude=35.5", "site.longitude=-86.1");
    TN.asksFor(
        "report-well",
        "well.casing_material=steel",
        "well.casing_diameter=6 in",
        "well.casing_wall=0.188 in",
        "water.static_level=40 ft");
    TN.states("0400-45-09-.15(2)(j)", "septic tank", "confirmed")
        .asksFor(
            "report-septic-distances",
            "setback.septic_tank=60 ft",
            "setback.absorption_field=80 ft");
  }
}
