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
}
