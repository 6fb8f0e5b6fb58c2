package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.wellcurb.quantity.Units.GALLON_PER_DAY;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Use of a day by 75 gallons a person and 110 a bedroom, as the figures have it. */
class DailyNeedTest {
  /** Twelve homes of three bedrooms need twelve times one; forty bedrooms are those of all. */
  @ParameterizedTest
  @CsvSource({
    "3, 4, 1, 330",
    "3, 5, 1, 375",
    "3, 4, 12, 3960",
    "3, 5, 12, 4500",
    "40, 60, 12, 4500",
    "12, 12, 12, 1320"
  })
  void ofAllHomes(double bedrooms, double people, double dwellings, double gallons) {
    double need =
        Given.nothing()
            .si("site.bedrooms", bedrooms, bedrooms)
            .si("site.occupants", people, people)
            .si("site.dwellings", dwellings, dwellings)
            .at("daily_need", GALLON_PER_DAY);
    assertEquals(gallons, need, 1e-6);
  }
}
