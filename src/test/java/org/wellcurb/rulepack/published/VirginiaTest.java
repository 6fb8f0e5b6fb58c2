package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

class VirginiaTest {
  private static final String OLD = "dates.completed=2024-11-05";
  private static final String NEW = "dates.completed=2024-11-06";
  private static final Code VA = Code.of("virginia", "Virginia, USA");

  @Test
  void s_12vac5_630_410_casing_by_class() {
    VA.states("12VAC5-630-410 A 1", "Class IIIA", "100 ft")
        .least("class-3a-casing-depth", "well.casing_depth", "100 ft", OLD, "well.class=IIIA");
    VA.states("12VAC5-630-410 A 2", "Class IIIB", "50 ft")
        .least("class-3b-casing-depth", "well.casing_depth", "50 ft", OLD, "well.class=IIIB");
    VA.states("12VAC5-630-410 A 3", "Class IIIC", "20, or 1 ft into bedrock")
        .least(
            "class-3c-casing-depth",
            "well.casing_depth",
            "20 ft",
            OLD,
            "well.class=IIIC",
            "well.method=rotary",
            "well.rock_depth=40 ft");
    VA.least(
        "class-3c-casing-depth",
        "well.casing_depth",
        "13 ft",
        OLD,
        "well.class=IV",
        "well.method=rotary",
        "well.rock_depth=12 ft");
    VA.states("12VAC5-630-410 A 3 d", "driven", "10 ft")
        .least(
            "driven-well-casing-depth",
            "well.casing_depth",
            "10 ft",
            OLD,
            "well.class=IIIC",
            "well.method=driven");
    VA.doesNotApply("class-3b-casing-depth", OLD, "well.class=IIIC", "well.casing_depth=20 ft");
  }

  @Test
  void s_12vac5_630_350_wells_from_before_1990_09_01() {
    VA.states("12VAC5-630-350", "before 1990-09-01", "exempt")
        .doesNotApply("casing-top-height", "dates.completed=1990-08-31", "well.stickup=2 in");
    VA.states("12VAC5-630-410 A 4", "above ground", "12 in")
        .least("casing-top-height", "well.stickup", "12 in", "dates.completed=1990-09-01");
    VA.least(
        "casing-top-height-of-altered-well",
        "well.stickup",
        "12 in",
        "dates.completed=1970-01-01",
        "dates.altered=1990-09-01");
    VA.doesNotApply(
        "casing-top-height-of-altered-well", "dates.completed=1970-01-01", "well.stickup=2 in");
  }

  @Test
  void s_12vac5_630_360_from_2024_11_06() {
    VA.states("12VAC5-630-360", "Class IIIA", "20 ft grout")
        .least(
            "class-3a-grout-depth",
            "grout.bottom",
            "20 ft",
            NEW,
            "well.class=IIIA",
            "well.casing_depth=100 ft");
    VA.states("12VAC5-630-360", "Class IIIB", "50 ft casing and ft grout")
        .least(
            "class-3b-grout-depth",
            "grout.bottom",
            "50 ft",
            NEW,
            "well.class=IIIB",
            "well.casing_depth=50 ft");
    VA.least(
        "class-3b-grout-depth",
        "well.casing_depth",
        "50 ft",
        NEW,
        "well.class=IIIB",
        "grout.bottom=50 ft");
  }

  @Test
  void s_12vac5_630_400_and_431_from_2024_11_06() {
    VA.states("12VAC5-630-400 C 2", "steel", "allowed list")
        .fallsShort("casing-material", NEW, "well.method=rotary", "well.casing_material=other");
    VA.meets("casing-material", NEW, "well.method=rotary", "well.casing_material=fibreglass");
    VA.states("12VAC5-630-431 B", "tap", "required")
        .fallsShort("sample-tap", NEW, "pressure.sample_tap=no");
    VA.meets("sample-tap", NEW, "pressure.sample_tap=yes");
    VA.states("12VAC5-630-431 C", "whole system", "required")
        .fallsShort("disinfected", NEW, "disinfection.done=no");
    VA.meets("disinfected", NEW, "disinfection.done=yes");
    VA.states("12VAC5-630-431 E 1", "negative coliform", "1 sample")
        .fallsShort("clear-sample", NEW, "sample.coliform=present");
    VA.meets("clear-sample", NEW, "sample.coliform=absent");
    VA.states("12VAC5-630-431 A", "Class IV", "exempt")
        .doesNotApply("sample-tap", NEW, "well.class=IV", "pressure.sample_tap=no");
  }
}
