package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;

/** Readings of depths and positions that a neighbour on the form speaks for or against. */
class LikelyReadingsTest {
  private static List<String> readings(Map<String, String> form) throws PackException {
    Screener screener = new Screener(PackLoader.load("common-practice"), LocalDate.of(2026, 1, 1));
    return screener.result(RecordReader.of(form)).readings().stream()
        .map(PossibleReading::reading)
        .toList();
  }

  @Test
  void aFinishedDepthThatIsTheDrilledOneInMetresIsTold() throws PackException {
    Map<String, String> form =
        Map.of(
            "record.id", "D",
            "well.depth", "91.4 ft",
            "well.drilled_depth", "300 ft",
            "water.static_level", "40 ft",
            "pump.intake_depth", "260 ft");
    assertEquals(List.of("well depth may be 91.4 m, not ft"), readings(form));
  }

  /** A hole filled up from 300 to 250 ft is deep enough for no reading. */
  @Test
  void aHoleThatWasFilledUpIsNotReadAsMetres() throws PackException {
    Map<String, String> form =
        Map.of(
            "record.id", "D",
            "well.depth", "250 ft",
            "well.drilled_depth", "300 ft",
            "water.static_level", "40 ft",
            "pump.intake_depth", "260 ft");
    assertEquals(List.of(), readings(form));
  }

  @Test
  void aScreenAndAHoleAreNotChangedOver() throws PackException {
    Map<String, String> form =
        Map.ofEntries(
            Map.entry("record.id", "S"),
            Map.entry("well.depth", "130 ft"),
            Map.entry("well.drilled_depth", "132 ft"),
            Map.entry("well.casing_depth", "110 ft"),
            Map.entry("well.screen_setting", "attached"),
            Map.entry("well.screen_top", "110 ft"),
            Map.entry("well.screen_bottom", "150 ft"),
            Map.entry("well.filter_pack_top", "100 ft"),
            Map.entry("well.filter_pack_bottom", "132 ft"));
    assertEquals(List.of(), readings(form));
  }

  /** Both of one sign would agree as well: it is the minus that was forgotten. */
  @Test
  void aLostSignOfALongitudeIsTold() throws PackException {
    Map<String, String> form =
        Map.ofEntries(
            Map.entry("record.id", "L"),
            Map.entry("site.latitude", "44.249072"),
            Map.entry("site.longitude", "38.637096"),
            Map.entry("site.septic_latitude", "44.248907"),
            Map.entry("site.septic_longitude", "-38.637438"),
            Map.entry("site.position_datum", "wgs84"),
            Map.entry("site.septic_position_of", "septic tank"),
            Map.entry("setback.septic_tank", "108 ft"));
    assertEquals(
        List.of("site longitude may be -38.637 deg: the sign may be lost"), readings(form));
  }
}
