package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.wellcurb.quantity.Units.INCH;
import static org.wellcurb.quantity.Units.MILLIMETRE;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CasingSizeTest {
  private static Given casing(double inches, String sizeIs, String schedule, String material) {
    Given given = Given.nothing().with("well.casing_diameter", inches, INCH);
    if (!sizeIs.equals("-")) {
      given.with("well.casing_size_is", sizeIs);
    }
    if (!schedule.equals("-")) {
      given.with("well.casing_schedule", schedule);
    }
    if (!material.equals("-")) {
      given.with("well.casing_material", material);
    }
    return given;
  }

  /** A dash is a blank; NaN is unknown. Sizes of iron pipe as the table has them. */
  @ParameterizedTest
  @CsvSource({
    "6,     nominal, sch 40,    steel,    6.625, 6.065",
    "6,     nominal, 40,        steel,    6.625, 6.065",
    "6,     -,       schedule 40, -,      6.625, 6.065",
    "6,     nominal, sdr-21,    pvc,      6.625, 5.994",
    "6,     nominal, 21,        pvc,      6.625, 5.994",
    "6,     nominal, class 200, pvc,      6.625, 5.994",
    "6,     nominal, 17.02 lb,  steel,    6.625, 6.125",
    "6,     nominal, 17,        steel,    6.625, 6.1257",
    "6,     nominal, .188 wall, steel,    6.625, 6.249",
    "6,     nominal, std,       steel,    6.625, 6.065",
    "6.625, -,       sch 40,    steel,    6.625, 6.065",
    "6.065, inside,  sch 40,    steel,    6.625, 6.065",
    "6.625, outside, sdr 26,    pvc,      6.625, 6.1154",
    "4.5,   -,       sdr 21,    pvc,      NaN,   NaN",
    "4.5,   outside, sdr 21,    pvc,      4.5,   4.0714",
    "4.5,   nominal, sch 40,    pvc,      4.95,  4.454",
    "36,    nominal, -,         concrete, NaN,   36",
    "36,    nominal, -,         steel,    36,    NaN",
    "36,    -,       -,         -,        NaN,   NaN",
    "7.3,   -,       sch 40,    steel,    NaN,   NaN",
    "6,     nominal, -,         other,    NaN,   NaN"
  })
  void sizes(
      double inches,
      String sizeIs,
      String schedule,
      String material,
      double outside,
      double inside) {
    Given given = casing(inches, sizeIs, schedule, material);
    assertEquals(outside, given.at("casing_outside_diameter", INCH), 0.0006);
    assertEquals(inside, given.at("casing_inside_diameter", INCH), 0.0006);
  }

  /**
   * Without a wall the inside may be any that is published for the size. Steel of 6 in: schedule 10
   * (0.134 in) to 80 (0.432 in); plastic: dimension ratio 41 (6.625 / 41) to 13.5 (6.625 / 13.5).
   */
  @ParameterizedTest
  @CsvSource({
    "6,     nominal, -,      steel, 5.761,  6.357",
    "6,     nominal, banana, steel, 5.761,  6.357",
    "6.625, outside, -,      steel, 5.761,  6.357",
    "6,     nominal, -,      pvc,   5.6435, 6.3018",
    "6,     -,       -,      -,     5.6435, 6.357",
    "4.5,   -,       -,      steel, 3.826,  4.26",
    "4.5,   nominal, -,      pvc,   4.2167, 4.7085",
    "16,    nominal, -,      steel, 14.312, 15.5"
  })
  void aWallThatIsNotStatedMayBeAnyPublishedOne(
      double inches,
      String sizeIs,
      String schedule,
      String material,
      double least,
      double greatest) {
    double[] inside = casing(inches, sizeIs, schedule, material).over("casing_inside_diameter");
    assertEquals(least, INCH.fromSi(inside[0]), 0.0006);
    assertEquals(greatest, INCH.fromSi(inside[1]), 0.0006);
  }

  @Test
  void aStatedWallLeavesNoRange() {
    Given given = casing(6, "nominal", "-", "pvc").with("well.casing_wall", 0.28, INCH);
    assertEquals(6.065, given.at("casing_inside_diameter", INCH), 1e-9);
  }

  @Test
  void oneHundredFiftyMillimetresIsSixInchNominal() {
    Given given = Given.nothing().with("well.casing_diameter", 150, MILLIMETRE);
    assertEquals(6.625, given.at("casing_outside_diameter", INCH), 1e-9);
  }

  @Test
  void aStatedWallOutranksTheSchedule() {
    Given given = casing(6, "nominal", "sch 40", "steel").with("well.casing_wall", 0.25, INCH);
    assertEquals(6.125, given.at("casing_inside_diameter", INCH), 1e-9);
  }

  @Test
  void aWallWiderThanTheCasingIsNoCasing() {
    Given given = casing(6, "nominal", "-", "steel").with("well.casing_wall", 4, INCH);
    assertTrue(Double.isNaN(given.at("casing_inside_diameter")));
  }

  @Test
  void theAnnulusGoesByTheTrueOutside() {
    Given given = casing(6, "nominal", "-", "steel").with("well.bore_diameter", 10, INCH);
    assertEquals(1.6875, given.at("annulus_width", INCH), 1e-9);
  }
}
