package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class OregonTest {
  private static final Code OR = Code.of("oregon", "Oregon, USA");

  @Test
  void oar_690_210_0030_distances() {
    OR.states("OAR 690-210-0030(1)", "septic tank", "50 ft")
        .least("septic-tank-distance", "setback.septic_tank", "50 ft");
    OR.states("OAR 690-210-0030(1)", "septic drainline", "100 ft")
        .least("absorption-field-distance", "setback.absorption_field", "100 ft");
    OR.states("OAR 690-210-0030(1)", "closed sewage", "50 ft")
        .least("sewer-line-distance", "setback.sewer_line", "50 ft");
    OR.states("OAR 690-210-0030(1)", "confined animal", "50 ft")
        .least("animal-yard-distance", "setback.animal_yard", "50 ft");
    OR.states("OAR 690-210-0030(1)", "animal waste holding", "50 ft")
        .least("manure-storage-distance", "setback.manure_storage", "50 ft");
  }

  @Test
  void oar_690_215_0015_building() {
    OR.states("OAR 690-215-0015", "permanent structure", "5 ft")
        .least("building-distance", "setback.building", "5 ft");
  }

  @Test
  void oar_690_210_0190_2_wall_of_wide_casing() {
    OR.states("OAR 690-210-0190(2)", "larger than 20 in", "0.375 in")
        .least(
            "steel-casing-wall",
            "well.casing_wall",
            "0.375 in",
            "well.casing_material=steel",
            "well.casing_diameter=24 in");
  }

  @Test
  void oar_690_210_0190_3_depth_of_thin_casing() {
    OR.states("OAR 690-210-0190(3)(a)", "0.250 in wall", "500 ft")
        .most(
            "thin-steel-casing-depth",
            "well.casing_depth",
            "500 ft",
            "well.casing_material=steel",
            "well.casing_wall=0.25 in",
            "well.casing_diameter=12 in");
    OR.states("OAR 690-210-0190(3)(b)", "0.250 in wall", "250 ft")
        .most(
            "thin-steel-casing-depth",
            "well.casing_depth",
            "250 ft",
            "well.casing_material=steel",
            "well.casing_wall=0.25 in",
            "well.casing_diameter=16 in");
    OR.states("OAR 690-210-0190(3)(c)", "0.250 in wall", "100 ft")
        .most(
            "thin-steel-casing-depth",
            "well.casing_depth",
            "100 ft",
            "well.casing_material=steel",
            "well.casing_wall=0.25 in",
            "well.casing_diameter=20 in");
  }

  @Test
  void oar_690_210_0310_1_water_a_sack() {
    OR.states("OAR 690-210-0310(1)(a)", "water per sack, Portland", "4.5-6 gal")
        .least(
            "cement-water",
            "grout.water_per_bag",
            "4.5 gal",
            "grout.material=neat cement",
            "grout.bag_mass=94 lb");
    OR.states("OAR 690-210-0310(1)(b)", "Type III", "5.5-6.5 gal")
        .most(
            "cement-water",
            "grout.water_per_bag",
            "6.5 gal",
            "grout.material=neat cement",
            "grout.bag_mass=94 lb");
    OR.states("OAR 690-210-0310(1)(c)", "high-alumina", "4.5-6 gal");
  }

  @Test
  void oar_690_210_0380_contact_time() {
    OR.states("OAR 690-210-0380", "contact time", "24 h")
        .least("chlorine-contact-time", "disinfection.contact_time", "24 h");
  }

  @Test
  void oar_690_205_0210_3_report() {
    OR.states("OAR 690-205-0210(3)", "well log", "30 days")
        .days("report-in-time", 30, LocalDate.of(2019, 3, 1));
  }
}
