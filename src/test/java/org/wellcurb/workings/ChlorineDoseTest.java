package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.wellcurb.quantity.Units;

/** What is to be put in does not repeat a dose that was found wrong. */
class ChlorineDoseTest {
  private static Given well(double dose) {
    return new Given()
        .with("water.static_level", 0, Units.FOOT)
        .with("well.depth", 100, Units.FOOT)
        .with("well.casing_diameter", 6, Units.INCH)
        .with("well.casing_size_is", "inside")
        .with("disinfection.dose", dose, Units.MILLIGRAM_PER_LITRE);
  }

  private static double pounds(double dose) {
    return well(dose).at("chlorine_needed", Units.POUND);
  }

  @Test
  void aDoseThatIsEnoughIsTakenAsStated() {
    assertEquals(2, pounds(100) / pounds(50), 1e-9);
    assertEquals(4, pounds(200) / pounds(50), 1e-9);
  }

  @Test
  void aDoseThatIsTooWeakOrTooStrongIsNotRepeated() {
    assertEquals(pounds(50), pounds(10), 1e-12);
    assertEquals(pounds(200), pounds(1000), 1e-12);
    assertEquals(
        well(50).at("bleach_needed", Units.US_GALLON),
        well(10).at("bleach_needed", Units.US_GALLON),
        1e-12);
  }

  @Test
  void aPackMaySetWhatIsEnough() {
    double more =
        well(60).figure("chlorine_dose", 100, Units.MILLIGRAM_PER_LITRE).at("chlorine_needed");
    assertEquals(well(100).at("chlorine_needed"), more, 1e-12);
  }
}
