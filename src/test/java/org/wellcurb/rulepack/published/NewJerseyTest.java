package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class NewJerseyTest {
  private static final Code NJ = Code.of("new-jersey", "New Jersey, USA");

  @Test
  void table_4_3_distances() {
    NJ.states("7:9A-4.3 Table 4.3", "septic tank", "50 ft")
        .least("septic-tank-distance", "setback.septic_tank", "50 ft");
    NJ.states("7:9A-4.3 Table 4.3", "building sewer", "25 ft")
        .least("sewer-line-distance", "setback.sewer_line", "25 ft");
    NJ.states("7:9A-4.3 Table 4.3", "disposal field", "100 ft")
        .least(
            "absorption-field-distance",
            "setback.absorption_field",
            "100 ft",
            "well.casing_depth=60 ft",
            "well.confining_layer_thickness=0 ft");
  }

  @Test
  void note_4_deep_casing_halves_the_distance() {
    NJ.states("7:9A-4.3 note 4", "disposal field", "50 ft")
        .least(
            "absorption-field-distance",
            "setback.absorption_field",
            "50 ft",
            "well.casing_depth=100 ft",
            "well.confining_layer_thickness=0 ft");
  }

  @Test
  void n_7_9d_2_3_casing() {
    NJ.states("7:9D-2.3(a)4", "consolidated", "6 in")
        .least(
            "casing-diameter-in-rock",
            "well.casing_diameter",
            "6 in",
            "well.open_hole=yes",
            "well.use=household");
    NJ.states("7:9D-2.3(b)2", "casing above grade", "12 in")
        .least("casing-top-height", "well.stickup", "12 in", "well.head=pitless adapter");
    NJ.doesNotApply("casing-top-height", "well.head=pit", "well.stickup=2 in");
  }

  @Test
  void n_7_9d_2_3_pitless() {
    String[] well = {
      "pump.type=submersible", "well.use=household", "well.head=well seal above ground"
    };
    NJ.states("7:9D-2.3(b)2", "pitless", "required")
        .meets("pitless-fitted", Code.plus(well, "pitless.fitted", "yes"));
    NJ.fallsShort("pitless-fitted", Code.plus(well, "pitless.fitted", "no"));
  }

  @Test
  void n_7_9d_2_3_vent() {
    NJ.states("7:9D-2.3(b)2.ii", "vent above grade", "12 in")
        .least("vent-height", "well.vent_height", "12 in");
    NJ.states("7:9D-2.3(b)2.ii", "casing vent", "screened")
        .fallsShort("vent-screened", "well.vent_screened=no");
    NJ.meets("vent-screened", "well.vent_screened=yes");
  }

  @Test
  void n_7_9d_1_15_record() {
    NJ.states("7:9D-1.15(a)1", "well record", "90 days")
        .days("report-in-time", 90, LocalDate.of(2019, 3, 1));
  }
}
