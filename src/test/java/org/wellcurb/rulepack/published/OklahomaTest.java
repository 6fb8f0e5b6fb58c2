package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class OklahomaTest {
  private static final Code OK = Code.of("oklahoma", "Oklahoma, USA");

  @Test
  void n_252_624_3_1_distances() {
    OK.states("252:624-3-1(d)", "septic tank", "50 ft")
        .least(
            "septic-tank-distance",
            "setback.septic_tank",
            "50 ft",
            "well.use=public",
            "site.soil=clay or loam");
    OK.states("252:624-3-1(d)", "septic tank", "100 ft")
        .least(
            "septic-tank-distance",
            "setback.septic_tank",
            "100 ft",
            "well.use=public",
            "site.soil=gravel");
    // "Coarse sand, loamy coarse sand": a form says sand, and not which.
    OK.meets(
        "septic-tank-distance", "well.use=public", "site.soil=sand", "setback.septic_tank=50 ft");
    OK.cannotTell(
        "septic-tank-distance-in-sand",
        "well.use=public",
        "site.soil=sand",
        "setback.septic_tank=99.9 ft");
    OK.doesNotApply(
        "septic-tank-distance-in-sand",
        "well.use=public",
        "site.soil=sand",
        "setback.septic_tank=100 ft");
    OK.states("252:624-3-1(d)", "property line", "50 ft")
        .least("property-line-distance", "setback.property_line", "50 ft", "well.use=public");
    OK.states("252:624-3-1(d)", "sewer line", "50 ft")
        .least(
            "sewer-line-distance",
            "setback.sewer_line",
            "50 ft",
            "well.use=public",
            "site.sewer_watertight=no");
    OK.states("252:624-3-1(d)", "Schedule 40", "10 ft")
        .least(
            "sewer-line-distance",
            "setback.sewer_line",
            "10 ft",
            "well.use=public",
            "site.sewer_watertight=yes");
    OK.cannotTell(
        "sewer-line-near-is-schedule-40",
        "well.use=public",
        "setback.sewer_line=12 ft",
        "site.sewer_watertight=yes");
    OK.states("252:624-3-1(d)", "petroleum", "100 ft")
        .least("fuel-tank-distance", "setback.fuel_tank", "100 ft", "well.use=public");
    OK.states("252:624-3-1(d)", "all other sources", "100 ft")
        .least(
            "chemical-storage-distance", "setback.chemical_storage", "100 ft", "well.use=public");
  }

  @Test
  void n_785_35_9_1_pitless() {
    OK.states("785:35-9-1(b)(2)", "below ground", "pitless required")
        .meets(
            "low-connection-is-pitless",
            "pitless.fitted=yes",
            "service_line.burial_depth=4 ft",
            "well.head=pit");
    OK.fallsShort(
        "low-connection-is-pitless",
        "pitless.fitted=no",
        "service_line.burial_depth=4 ft",
        "well.head=pit");
  }

  @Test
  void n_785_35_5_1_report() {
    OK.states("785:35-5-1(5)", "completion report", "60")
        .days("report-in-time", 60, LocalDate.of(2019, 3, 1));
  }
}
