package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.PackLoader;

class PositionShownTest {
  /** At five digits both points are one, and the distance printed beside them cannot be redone. */
  @Test
  void positionsAreShownToSixDecimals() throws Exception {
    Screener screener = new Screener(PackLoader.load("common-practice"), LocalDate.of(2026, 1, 1));
    RecordResult result =
        screener.result(
            RecordReader.of(
                Map.of(
                    "site.latitude", "44.249123",
                    "site.longitude", "-38.637012",
                    "site.septic_latitude", "44.249321",
                    "site.septic_longitude", "-38.6374")));
    assertEquals(
        "shortest line from 44.249123 deg, -38.637012 deg to 44.249321 deg, -38.6374 deg",
        result.workings().stream()
            .filter(w -> w.name().equals("septic_distance"))
            .findFirst()
            .orElseThrow()
            .withNumbers());
  }
}
