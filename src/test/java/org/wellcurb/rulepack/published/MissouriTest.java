package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

class MissouriTest {
  private static final Code MO = Code.of("missouri", "Missouri, USA");

  @Test
  void n_23_3_010_casing_top() {
    MO.states("10 CSR 23-3.010(1)(A)1", "finished grade", "1 ft")
        .least("casing-top-height", "well.stickup", "1 ft");
    MO.states("10 CSR 23-3.010(1)(A)6", "flood", "2 ft")
        .least("casing-top-over-flood", "well.stickup", "3 ft", "well.flood_level=1 ft");
  }

  @Test
  void n_23_3_030_table_3_2_wall() {
    for (int size : new int[] {4, 5, 6, 8, 10, 12, 14, 16}) {
      MO.states("10 CSR 23-3.030 Table 3.2", size + " in nominal", "0.188 in")
          .least(
              "steel-casing-wall",
              "well.casing_wall",
              "0.188 in",
              "dates.completed=2024-11-30",
              "well.casing_material=steel",
              "well.casing_diameter=" + size + " in");
    }
  }

  @Test
  void n_23_3_090_area_1_rock() {
    MO.states("10 CSR 23-3.090(1)(A)1", "bedrock well", "80 ft")
        .least(
            "area-1-casing-depth",
            "well.casing_depth",
            "80 ft",
            "dates.completed=2024-11-30",
            "site.zone=area 1",
            "well.open_hole=yes",
            "well.rock_depth=50 ft");
    MO.states("10 CSR 23-3.090(1)(A)1", "into solid bedrock", "30 ft")
        .least(
            "area-1-casing-depth",
            "well.casing_depth",
            "90 ft",
            "dates.completed=2024-11-30",
            "site.zone=area 1",
            "well.open_hole=yes",
            "well.rock_depth=60 ft");
    MO.states("10 CSR 23-3.090(1)(A)2", "hole over casing", "2 in")
        .least(
            "area-1-bore-in-rock",
            "well.bore_diameter",
            "8 in",
            "dates.completed=2024-11-30",
            "site.zone=area 1",
            "well.open_hole=yes",
            "well.casing_diameter=6 in",
            "well.casing_size_is=outside");
    MO.states("10 CSR 23-3.090(1)(A)4.A", "lowermost casing", "30 ft")
        .least(
            "area-1-grout-in-rock",
            "grout.bottom",
            "90 ft",
            "dates.completed=2024-11-30",
            "site.zone=area 1",
            "well.open_hole=yes",
            "well.casing_depth=80 ft",
            "grout.top=60 ft");
  }

  @Test
  void n_23_3_090_area_1_loose_ground() {
    MO.states("10 CSR 23-3.090(1)(B)1", "above screen", "20 ft")
        .least(
            "area-1-casing-in-loose-ground",
            "well.casing_depth",
            "20 ft",
            "dates.completed=2024-11-30",
            "site.zone=Area 1",
            "well.aquifer=sand and gravel");
    MO.states("10 CSR 23-3.090(1)(B)2", "hole over casing", "4 in")
        .least(
            "area-1-bore-in-loose-ground",
            "well.bore_diameter",
            "10 in",
            "dates.completed=2024-11-30",
            "site.zone=Area 1",
            "well.aquifer=sand and gravel",
            "well.casing_diameter=6 in",
            "well.casing_size_is=outside");
    MO.states("10 CSR 23-3.090(1)(B)4.A", "upper casing grouted", "20 ft")
        .least(
            "area-1-grout-in-loose-ground",
            "grout.bottom",
            "20 ft",
            "dates.completed=2024-11-30",
            "site.zone=Area 1",
            "well.aquifer=sand and gravel");
  }
}
