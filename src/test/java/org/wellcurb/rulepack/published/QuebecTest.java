package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class QuebecTest {
  private static final String OLD = "dates.completed=2013-12-31";
  private static final String NEW = "dates.completed=2015-03-02";
  private static final String[] ROCK_AT_3_M = {"well.depth=50 m", "well.rock_depth=3 m"};
  private static final Code QC = Code.of("quebec", "Quebec, Canada");

  @Test
  void r35_2_s_17() {
    QC.states("r. 35.2 s. 17 par. 1(1)", "watertight", "15 m")
        .least("septic-tank-distance", "setback.septic_tank", "15 m", NEW);
    QC.least("holding-tank-distance", "setback.holding_tank", "15 m", NEW);
    QC.states("r. 35.2 s. 17 par. 1(2)", "non-watertight", "30 m")
        .least(
            "absorption-field-distance",
            "setback.absorption_field",
            "30 m",
            NEW,
            "grout.bottom=0 m");
    QC.states("r. 35.2 s. 17 par. 1(2)", "non-watertight", "15 m")
        .least(
            "absorption-field-distance",
            "setback.absorption_field",
            "15 m",
            NEW,
            "well.casing_depth=5 m",
            "grout.bottom=5 m",
            "well.bore_diameter=25 cm",
            "well.casing_diameter=15 cm");
    QC.least("privy-distance", "setback.privy", "30 m", NEW, "grout.bottom=0 m");
    QC.states("r. 35.2 s. 17 par. 1(3)", "manure store", "30 m")
        .least("manure-storage-distance", "setback.manure_storage", "30 m", NEW);
    QC.least("animal-yard-distance", "setback.animal_yard", "30 m", NEW);
    QC.least("cemetery-distance", "setback.cemetery", "30 m", NEW);
    QC.least("crop-field-distance", "setback.crop_field", "30 m", NEW);
    QC.states("r. 35.2 s. 17 par. 1(4)", "final ground", "30 cm")
        .least("casing-top-height", "well.stickup", "30 cm", NEW);
  }

  @Test
  void r35_2_s_19_what_a_sealed_well_is() {
    QC.states("r. 35.2 s. 19(1)", "borehole diameter", "10 cm")
        .states("r. 35.2 s. 19(2)", "casing", "5 m")
        .states("r. 35.2 s. 19(3)", "sealed well", "5 m");
    String[] near = {NEW, "setback.absorption_field=20 m", "well.casing_diameter=15 cm"};
    QC.meets(
        "absorption-field-distance",
        Code.plus(
            Code.plus(Code.plus(near, "well.casing_depth", "5 m"), "grout.bottom", "5 m"),
            "well.bore_diameter",
            "25 cm"));
    QC.fallsShort(
        "absorption-field-distance",
        Code.plus(
            Code.plus(Code.plus(near, "well.casing_depth", "4.9 m"), "grout.bottom", "5 m"),
            "well.bore_diameter",
            "25 cm"));
    QC.fallsShort(
        "absorption-field-distance",
        Code.plus(
            Code.plus(Code.plus(near, "well.casing_depth", "5 m"), "grout.bottom", "4.9 m"),
            "well.bore_diameter",
            "25 cm"));
    QC.fallsShort(
        "absorption-field-distance",
        Code.plus(
            Code.plus(Code.plus(near, "well.casing_depth", "5 m"), "grout.bottom", "5 m"),
            "well.bore_diameter",
            "24.9 cm"));
    QC.cannotTell("absorption-field-distance", NEW, "setback.absorption_field=20 m");
  }

  @Test
  void r6_s_5_1_half_the_distance_only_where_the_whole_was_impossible() {
    String rule = "absorption-field-half-distance";
    QC.cannotTell(rule, sealed("2010-06-01", "20 m"));
    QC.cannotTell(rule, sealed("2010-06-01", "15 m"));
    QC.doesNotApply(rule, sealed("2010-06-01", "30 m"));
    QC.doesNotApply(rule, sealed("2020-06-01", "20 m"));
    QC.meets("absorption-field-distance", sealed("2020-06-01", "20 m"));
    QC.fallsShort("absorption-field-distance", sealed("2010-06-01", "14.9 m"));
  }

  private static String[] sealed(String completed, String distance) {
    return new String[] {
      "dates.completed=" + completed,
      "setback.absorption_field=" + distance,
      "well.casing_depth=5 m",
      "grout.bottom=5 m",
      "well.bore_diameter=25 cm",
      "well.casing_diameter=15 cm"
    };
  }

  @Test
  void r35_2_s_24_rock_wells() {
    QC.states("r. 35.2 s. 24(1)", "anchored", "0.6 m")
        .least(
            "casing-into-rock",
            "well.casing_depth",
            "10.6 m",
            NEW,
            "well.depth=50 m",
            "well.rock_depth=10 m");
    QC.fallsShort(
        "drive-shoe", NEW, "well.depth=50 m", "well.rock_depth=10 m", "well.drive_shoe=no");
    QC.states("r. 35.2 s. 24(3)", "bedrock is within 5 m", "5 m")
        .least(
            "seal-where-rock-is-shallow",
            "grout.bottom",
            "5 m",
            NEW,
            ROCK_AT_3_M[0],
            ROCK_AT_3_M[1]);
    QC.least(
        "casing-where-rock-is-shallow",
        "well.casing_depth",
        "5 m",
        NEW,
        ROCK_AT_3_M[0],
        ROCK_AT_3_M[1]);
    QC.least(
        "bore-where-rock-is-shallow",
        "well.bore_diameter",
        "25 cm",
        NEW,
        ROCK_AT_3_M[0],
        ROCK_AT_3_M[1],
        "well.casing_diameter=15 cm");
    QC.doesNotApply(
        "seal-where-rock-is-shallow",
        NEW,
        "well.depth=50 m",
        "well.rock_depth=5 m",
        "grout.bottom=1 m");
  }

  @Test
  void r35_2_s_18_and_schedule_1() {
    QC.states("r. 35.2 s. 18", "cover", "required").fallsShort("well-cap", NEW, "well.cap=none");
    QC.meets("well-cap", NEW, "well.cap=sealed");
    QC.states("r. 35.2 Schedule I", "field list", "see regulations.md");
    QC.asksFor(
        "report-well",
        NEW,
        "driller.licence=D-9",
        "well.use=household",
        "well.method=rotary",
        "well.depth=50 m",
        "well.casing_material=steel",
        "well.casing_diameter=15 cm",
        "well.stickup=40 cm");
    QC.asksFor(
        "report-location",
        NEW,
        "site.latitude=46.1",
        "site.longitude=-71.2",
        "site.position_datum=nad83");
    QC.asksFor(
        "report-seal",
        NEW,
        "grout.material=bentonite slurry",
        "grout.top=0 m",
        "grout.bottom=5 m",
        "grout.method=pumped");
    QC.fallsShort("position-datum", NEW, "site.position_datum=nad27");
  }

  @Test
  void r6_s_5_and_8_before_2015() {
    QC.states("r. 6 s. 5(2) (superseded)", "watertight", "15 m")
        .least("septic-tank-distance", "setback.septic_tank", "15 m", OLD);
    QC.states("r. 6 s. 5(1) (superseded)", "non-watertight", "30 m")
        .least(
            "absorption-field-distance",
            "setback.absorption_field",
            "30 m",
            OLD,
            "grout.bottom=0 m");
    QC.states("r. 6 s. 5(1) (superseded)", "non-watertight", "15 m");
    QC.fallsShort(
        "absorption-field-distance", sealed(OLD.substring(OLD.indexOf('=') + 1), "14.9 m"));
    QC.cannotTell(
        "absorption-field-half-distance", sealed(OLD.substring(OLD.indexOf('=') + 1), "15 m"));
    QC.states("r. 6 s. 8 (superseded)", "cultivated", "30 m")
        .least("crop-field-distance", "setback.crop_field", "30 m", OLD);
    QC.doesNotApply("animal-yard-distance", OLD, "setback.animal_yard=3 m");
  }

  @Test
  void r6_s_9_length_before_2015() {
    QC.states("r. 6 s. 9 (superseded)", "tube well casing", "5.3 m")
        .least("casing-length", "well.casing_length", "5.3 m", OLD, "well.method=rotary");
    // Where the length is not given, it is the depth and the stick-up.
    QC.least(
        "casing-length",
        "well.casing_depth",
        "5 m",
        OLD,
        "well.method=rotary",
        "well.stickup=30 cm");
  }

  @Test
  void r6_s_9_and_10_before_2015() {
    QC.states("r. 6 s. 9 (superseded)", "inside diameter", "8 cm")
        .fallsShort(
            "casing-inside-diameter",
            OLD,
            "well.method=rotary",
            "well.casing_size_is=inside",
            "well.casing_diameter=8 cm");
    QC.meets(
        "casing-inside-diameter",
        OLD,
        "well.method=rotary",
        "well.casing_size_is=inside",
        "well.casing_diameter=8.1 cm");
    QC.states("r. 6 s. 9 (superseded)", "above ground", "30 cm")
        .least("casing-top-height", "well.stickup", "30 cm", OLD);
    QC.states("r. 6 s. 10 (superseded)", "rock within 5 m", "5 m")
        .least(
            "casing-where-rock-is-shallow",
            "well.casing_depth",
            "5 m",
            OLD,
            ROCK_AT_3_M[0],
            ROCK_AT_3_M[1]);
    QC.states("r. 6 s. 10 (superseded)", "anchored", "60 cm")
        .least(
            "casing-into-rock",
            "well.casing_depth",
            "10.6 m",
            OLD,
            "well.depth=50 m",
            "well.rock_depth=10 m");
    QC.doesNotApply("casing-length", NEW, "well.method=rotary", "well.casing_length=2 m");
  }

  @Test
  void r6_s_19_20_and_schedule_1_before_2015() {
    QC.states("r. 6 s. 19 (superseded)", "tube well", "30 min")
        .least("yield-test-length", "water.test_duration", "30 min", OLD, "well.method=rotary");
    QC.states("r. 6 s. 20 (superseded)", "report", "30 days")
        .days("report-in-time", 30, LocalDate.of(2011, 5, 6));
    QC.asksFor(
        "report-sketch-distances",
        OLD,
        "setback.absorption_field=40 m",
        "setback.road=20 m",
        "setback.building=12 m");
    QC.asksFor(
        "report-yield-test",
        OLD,
        "water.static_level=4 m",
        "water.test_method=bailer",
        "water.test_rate=20 L/min",
        "water.test_duration=1 h");
    QC.meets("position-datum", OLD, "site.position_datum=nad27");
    QC.doesNotApply("report-sketch-distances", NEW);
    QC.doesNotApply("report-seal", OLD);
  }
}
