package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

class GeorgiaTest {
  private static final Code GA = Code.of("georgia", "Georgia, USA");

  @Test
  void n_12_5_134_distances() {
    GA.states("12-5-134(1)(A)(i)(I)", "sewer line", "10 ft")
        .least("sewer-line-distance", "setback.sewer_line", "10 ft", "well.use=household");
    GA.states("12-5-134(1)(A)(i)(II)", "septic tank", "50 ft")
        .least("septic-tank-distance", "setback.septic_tank", "50 ft", "well.use=household");
    GA.states("12-5-134(1)(A)(i)(III)", "absorption", "100 ft")
        .least(
            "absorption-field-distance",
            "setback.absorption_field",
            "100 ft",
            "well.use=household");
    GA.states("12-5-134(1)(A)(i)(IV)", "cesspool", "150 ft")
        .least("cesspool-distance", "setback.cesspool", "150 ft", "well.use=household");
    GA.states("12-5-134(1)(A)(i)(V)", "animal", "100 ft")
        .least("animal-yard-distance", "setback.animal_yard", "100 ft", "well.use=household");
    GA.doesNotApply("septic-tank-distance", "well.use=public", "setback.septic_tank=10 ft");
  }

  @Test
  void n_12_5_134_flood() {
    GA.states("12-5-134(1)(A)(i)", "flood", "2 ft")
        .least(
            "casing-top-over-flood",
            "well.stickup",
            "3 ft",
            "well.use=household",
            "well.flood_level=1 ft");
  }
}
