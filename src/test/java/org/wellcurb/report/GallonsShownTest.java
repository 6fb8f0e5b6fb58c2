package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A page says whose gallons it means where it holds any, and only there. */
final class GallonsShownTest {
  @ParameterizedTest
  @CsvSource({
    "62 gal of it,true",
    "12 gpm/ft,true",
    "330 gpd,true",
    "5 gph,true",
    "12\u00a0gal/min,true",
    "<td>gpm</td>,true",
    "62gal,true",
    "3 galleries,false",
    "galvanized steel,false",
    "a gal,false",
    "6 g,false",
    "'',false"
  })
  void gallonsAreFound(String page, boolean isShown) {
    assertEquals(isShown, GallonsShown.in(page));
  }
}
