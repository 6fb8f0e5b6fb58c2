package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class DelawareTest {
  private static final Code DE = Code.of("delaware", "Delaware, USA");

  @Test
  void n_5_1_1_4_sewage() {
    DE.states("7301-5.1.1.4", "septic tank", "50 ft")
        .least(
            "septic-tank-distance", "setback.septic_tank", "50 ft", "dates.completed=2016-09-11");
    DE.states("7301-5.1.1.4", "holding tank", "50 ft")
        .least(
            "holding-tank-distance", "setback.holding_tank", "50 ft", "dates.completed=2016-09-11");
    DE.states("7301-5.1.1.4", "absorption", "100 ft")
        .least(
            "absorption-field-distance",
            "setback.absorption_field",
            "100 ft",
            "dates.completed=2016-09-11");
    DE.doesNotApply(
        "septic-tank-distance", "dates.completed=2016-09-10", "setback.septic_tank=10 ft");
  }

  @Test
  void n_5_1_1_5_sewer() {
    DE.states("7301-5.1.1.5", "underground sewer (force", "50 ft")
        .least(
            "sewer-line-distance",
            "setback.sewer_line",
            "50 ft",
            "dates.completed=2020-01-01",
            "well.use=household",
            "well.confining_layer_thickness=0 ft",
            "well.casing_depth=60 ft");
    DE.states("7301-5.1.1.5", "reduced", "10 ft")
        .least(
            "sewer-line-distance",
            "setback.sewer_line",
            "10 ft",
            "dates.completed=2020-01-01",
            "well.use=household",
            "well.confining_layer_thickness=0 ft",
            "well.casing_depth=100 ft",
            "grout.bottom=100 ft");
  }

  @Test
  void n_5_1_1_1_any_source() {
    for (String source :
        new String[] {"fuel-tank", "chemical-storage", "animal-yard", "manure-storage"}) {
      String entry = "setback." + source.replace('-', '_');
      DE.states("7301-5.1.1.1", "existing contamination source", "100 ft")
          .least(
              source + "-distance",
              entry,
              "100 ft",
              "dates.completed=2020-01-01",
              "well.use=household");
      DE.states("7301-5.1.1.1", "public well", "150 ft")
          .least(
              source + "-distance",
              entry,
              "150 ft",
              "dates.completed=2020-01-01",
              "well.use=public");
      DE.states("7301-5.1.1.2", "heat-pump", "50 ft")
          .least(
              source + "-distance",
              entry,
              "50 ft",
              "dates.completed=2020-01-01",
              "well.use=heat exchange");
    }
  }

  @Test
  void n_8_1_1_report() {
    DE.states("7301-8.1.1", "completion report", "30 days")
        .days("report-in-time", 30, LocalDate.of(2019, 3, 1));
    DE.states("7301", "rewritten", "2016-09-11");
  }
}
