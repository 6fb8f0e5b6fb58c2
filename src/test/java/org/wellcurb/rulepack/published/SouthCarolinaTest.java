package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

class SouthCarolinaTest {
  private static final Code SC = Code.of("south-carolina", "South Carolina, USA");

  @Test
  void n_61_56_200_distance() {
    SC.states("61-56.200.6(1)(b)", "onsite wastewater", "75 ft")
        .least("septic-tank-distance", "setback.septic_tank", "75 ft", "well.use=household");
    SC.states("61-56.200.6(1)(b)", "onsite wastewater", "75 ft")
        .least(
            "absorption-field-distance", "setback.absorption_field", "75 ft", "well.use=household");
    SC.states("61-56.200.6(1)(c)", "onsite wastewater", "100 ft")
        .least("septic-tank-distance", "setback.septic_tank", "100 ft", "well.use=public");
    SC.states("61-56.200.6(1)(c)", "onsite wastewater", "100 ft")
        .least(
            "absorption-field-distance", "setback.absorption_field", "100 ft", "well.use=public");
  }

  @Test
  void n_61_71_f_2_grout() {
    SC.states("61-71.F.2.a", "annulus", "1.5 in")
        .least(
            "ring-for-tremie",
            "well.bore_diameter",
            "9 in",
            "well.use=household",
            "grout.method=tremie",
            "well.casing_diameter=6 in",
            "well.casing_size_is=outside");
    SC.states("61-71.F.2.b(1)", "neat cement", "7")
        .most(
            "cement-water",
            "grout.water_per_bag",
            "7 gal",
            "grout.material=neat cement",
            "grout.bag_mass=94 lb");
    SC.states("61-71.F.2.c", "land surface", "20 ft")
        .least("grout-depth", "grout.bottom", "20 ft", "well.use=household", "well.method=rotary");
    SC.states("61-71.G.2.d", "bored well", "15 ft")
        .least(
            "bored-well-grout-depth",
            "grout.bottom",
            "15 ft",
            "well.use=household",
            "well.method=bored");
  }
}
