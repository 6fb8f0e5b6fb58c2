package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class NorthCarolinaTest {
  private static final Code NC = Code.of("north-carolina", "North Carolina, USA");

  @Test
  void ncac_15a_02c_0107() {
    away("A", "septic tank", "100 ft", "septic-tank-distance", "septic_tank");
    away("A", "drainfield", "100 ft", "absorption-field-distance", "absorption_field");
    away("F", "cesspool", "100 ft", "cesspool-distance", "cesspool");
    away("F", "privy", "100 ft", "privy-distance", "privy");
    away("G", "feedlot", "100 ft", "animal-yard-distance", "animal_yard");
    away("G", "manure", "100 ft", "manure-storage-distance", "manure_storage");
    away("H", "pesticide", "100 ft", "chemical-storage-distance", "chemical_storage");
    away("J", "landfill", "500 ft", "landfill-distance", "landfill");
    away("M", "building", "25 ft", "building-distance", "building");
    away("N", "pond", "50 ft", "pond-distance", "pond");
    away("O", "stream", "25 ft", "surface-water-distance", "surface_water");
    NC.states("15A NCAC 02C .0107(a)(2)(D)", "sewage collection line", "50 ft")
        .least("sewer-line-distance", "setback.sewer_line", "50 ft", "site.sewer_watertight=yes");
    NC.states("15A NCAC 02C .0107(a)(2)(E)", "other sewage", "100 ft")
        .least("sewer-line-distance", "setback.sewer_line", "100 ft", "site.sewer_watertight=no");
  }

  private static void away(
      String paragraph, String subject, String figure, String rule, String source) {
    NC.states("15A NCAC 02C .0107(a)(2)(" + paragraph + ")", subject, figure)
        .least(rule, "setback." + source, figure);
  }

  @Test
  void ncac_15a_02c_0111() {
    NC.states("15A NCAC 02C .0111(b)(1)(A)", "residual", "100 ppm")
        .least("chlorine-dose", "disinfection.dose", "100 ppm");
    NC.states("15A NCAC 02C .0111(b)(1)(E)", "contact time", "24 h")
        .least("chlorine-contact-time", "disinfection.contact_time", "24 h");
    NC.most("sample-without-chlorine", "sample.chlorine_residual", "0 mg/L");
  }

  @Test
  void ncac_15a_02c_0114_and_0307() {
    NC.states("15A NCAC 02C .0307(a)", "record", "30 days")
        .days("report-in-time", 30, LocalDate.of(2008, 7, 1));
    NC.doesNotApply("report-in-time", "dates.completed=2008-06-30", "dates.received=2009-01-01");
    NC.states("15A NCAC 02C .0114(2)", "record", "30 days")
        .days("report-to-division", 30, LocalDate.of(2019, 9, 1), "well.use=irrigation");
    NC.states("15A NCAC 02C .0114(1)(C)", "accuracy", "100 ft")
        .most(
            "position-accuracy", "site.position_accuracy", "100 ft", "dates.completed=2019-09-01");
    NC.asksFor(
        "report-location",
        "dates.completed=2019-09-01",
        "site.latitude=35.1",
        "site.longitude=-79.2");
    NC.asksFor(
        "report-well",
        "dates.completed=2019-09-01",
        "well.depth=120 ft",
        "well.casing_diameter=6 in",
        "water.yield=5 gpm");
  }

  @Test
  void ncac_15a_02c_0116_and_0117_areas() {
    NC.states("15A NCAC 02C .0117", "designated", "35 ft")
        .least(
            "casing-depth-in-designated-area",
            "well.casing_depth",
            "35 ft",
            "site.zone=Designated Area");
    NC.doesNotApply("casing-depth-in-designated-area", "well.casing_depth=20 ft");
    NC.states("15A NCAC 02C .0116", "coastal", "10 ft")
        .least(
            "source-depth",
            "well.casing_depth",
            "10 ft",
            "site.zone=coastal area",
            "dates.completed=2009-09-01");
    NC.least(
        "source-depth",
        "well.casing_depth",
        "20 ft",
        "site.zone=piedmont",
        "dates.completed=2009-09-01");
  }
}
