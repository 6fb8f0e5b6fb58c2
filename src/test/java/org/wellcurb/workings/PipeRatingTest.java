package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.wellcurb.quantity.Units.FAHRENHEIT;
import static org.wellcurb.quantity.Units.PSI_UNIT;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables of plastic pipe end at 140 degF: above that it has no rating at all. */
class PipeRatingTest {
  @ParameterizedTest
  @CsvSource({
    "pe,  60,  160",
    "pe,  140, 80",
    "pe,  141, 0",
    "pe,  164, 0",
    "pvc, 140, 35.2",
    "pvc, 164, 0",
    "galvanized steel, 164, 160"
  })
  void ratingEndsWithItsTable(String material, double fahrenheit, double psi) {
    double rating =
        Given.nothing()
            .with("drop_pipe.pressure_rating", 160, PSI_UNIT)
            .with("drop_pipe.material", material)
            .with("water.temperature", fahrenheit, FAHRENHEIT)
            .at("pipe_rating_at_temperature", PSI_UNIT);
    assertEquals(psi, rating, 1e-6);
  }
}
