package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

class SouthDakotaTest {
  private static final Code SD = Code.of("south-dakota", "South Dakota, USA");

  @Test
  void arsd_74_02_04_60_2_formula() {
    // 12 gpm / (8 gpm / 40 ft) = 60 ft below 50 ft, and 10 ft more.
    SD.states("ARSD 74:02:04:60(2)", "pump setting", "yield / specific capacity + 10 ft")
        .least(
            "pump-setting",
            "pump.intake_depth",
            "120 ft",
            "pump.type=submersible",
            "water.static_level=50 ft",
            "water.pumping_level=90 ft",
            "water.test_rate=8 gpm",
            "pump.rated_flow=12 gpm");
    SD.cannotTell(
        "pump-setting",
        "pump.type=submersible",
        "pump.intake_depth=120 ft",
        "water.static_level=50 ft");
  }

  @Test
  void arsd_74_02_04_20_6_lesser_of_two() {
    SD.states("ARSD 74:02:04:20(6)", "inlet", "20 ft")
        .least(
            "pump-into-aquifer",
            "pump.intake_depth",
            "70 ft",
            "pump.type=submersible",
            "well.depth=200 ft",
            "water.static_level=50 ft");
    SD.least(
        "pump-into-aquifer",
        "pump.intake_depth",
        "55 ft",
        "pump.type=submersible",
        "well.depth=60 ft",
        "water.static_level=50 ft");
  }

  @Test
  void arsd_74_02_04_31_driven_wells() {
    SD.states("ARSD 74:02:04:31", "driven well", "required")
        .fallsShort(
            "driven-well-bentonite",
            "dates.completed=1992-07-16",
            "well.method=driven",
            "grout.material=neat cement");
    SD.meets(
        "driven-well-bentonite",
        "dates.completed=1992-07-16",
        "well.method=driven",
        "grout.material=bentonite chips");
    SD.doesNotApply(
        "driven-well-bentonite",
        "dates.completed=1992-07-15",
        "well.method=driven",
        "grout.material=none");
  }

  private static final String[] HARD_ROCK = {
    "dates.completed=2010-06-01", "well.aquifer=crystalline rock", "well.open_hole=yes"
  };

  @Test
  void arsd_74_02_04_32_hard_rock_casing() {
    SD.states("ARSD 74:02:04:32", "casing length", "20 ft")
        .least(
            "hard-rock-casing-length",
            "well.casing_length",
            "20 ft",
            Code.plus(Code.plus(HARD_ROCK, "pitless.fitted", "no"), "well.casing_depth", "18 ft"));
    SD.states("ARSD 74:02:04:32", "casing below pitless", "20 ft")
        .least(
            "hard-rock-casing-below-pitless",
            "well.casing_depth",
            "25 ft",
            Code.plus(Code.plus(HARD_ROCK, "pitless.fitted", "yes"), "pitless.depth", "5 ft"));
    SD.doesNotApply(
        "hard-rock-casing-length",
        "dates.completed=1992-07-15",
        "well.aquifer=crystalline rock",
        "well.open_hole=yes",
        "pitless.fitted=no",
        "well.casing_depth=10 ft");
  }

  @Test
  void arsd_74_02_04_32_hard_rock_grout() {
    String[] rotary = Code.plus(HARD_ROCK, "well.method", "rotary");
    SD.states("ARSD 74:02:04:32", "grout material", "cement grout")
        .meets("hard-rock-cement-grout", Code.plus(rotary, "grout.material", "neat cement"));
    SD.fallsShort("hard-rock-cement-grout", Code.plus(rotary, "grout.material", "bentonite chips"));
    String[] cased =
        Code.plus(Code.plus(HARD_ROCK, "well.casing_depth", "40 ft"), "grout.top", "0 ft");
    SD.states(
            "ARSD 74:02:04:32", "grouted interval", "bottom of casing to ground surface or pitless")
        .least(
            "hard-rock-grout-reach",
            "grout.bottom",
            "40 ft",
            Code.plus(cased, "pitless.fitted", "no"));
  }

  @Test
  void arsd_74_02_04_28_pressure_grouting() {
    SD.states("ARSD 74:02:04:28", "grouting", "pressure-grouted")
        .meets(
            "grout-under-pressure",
            "well.method=rotary",
            "well.casing_material=pvc",
            "grout.method=pumped");
    SD.fallsShort(
        "grout-under-pressure",
        "well.method=rotary",
        "well.casing_material=pvc",
        "grout.method=poured");
    SD.doesNotApply("grout-under-pressure", "well.method=driven", "grout.method=poured");
  }

  @Test
  void arsd_74_02_04_76_flowing_wells() {
    SD.states("ARSD 74:02:04:76", "flow", "5 gpm")
        .cannotTell("flowing-well-shuts-off", "dates.completed=1992-07-16", "water.flowing=yes");
    SD.doesNotApply("flowing-well-shuts-off", "dates.completed=1992-07-15", "water.flowing=yes");
    SD.doesNotApply("flowing-well-shuts-off", "dates.completed=2010-07-15", "water.flowing=no");
  }

  @Test
  void arsd_74_02_04_60_3_access_port() {
    SD.states("ARSD 74:02:04:60(3)", "threaded hole", "1 in")
        .cannotTell(
            "access-port-for-a-large-pump",
            "pump.rated_flow=18.1 gpm",
            "well.casing_diameter=8 in");
    SD.doesNotApply(
        "access-port-for-a-large-pump", "pump.rated_flow=18 gpm", "well.casing_diameter=8 in");
    SD.doesNotApply(
        "access-port-for-a-large-pump", "pump.rated_flow=20 gpm", "well.casing_diameter=7.9 in");
  }
}
