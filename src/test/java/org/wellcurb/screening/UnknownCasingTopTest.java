package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.PackLoader;

/** Depths from a casing top of no stated height: what is shown is the usual height, and says so. */
class UnknownCasingTopTest {
  private static final Map<String, String> FORM =
      Map.of(
          "record.datum", "casing top",
          "pump.type", "jet",
          "pump.ejector", "at the pump",
          "water.static_level", "20 ft",
          "water.pumping_level", "36 ft",
          "pressure.switch_height", "4 ft");

  @Test
  void theUsualHeightIsTakenAndNamed() throws Exception {
    WorkingShown lift = shown("suction_lift");
    assertEquals("40 ft", lift.result());
    assertTrue(
        lift.assumed().stream().anyMatch(a -> a.endsWith("was measured from 0 ft above ground")),
        lift.assumed().toString());
  }

  @Test
  void aDifferenceDoesNotDependOnIt() throws Exception {
    assertEquals(
        List.of(),
        shown("drawdown").assumed().stream().filter(a -> a.contains("above ground")).toList());
  }

  private static WorkingShown shown(String name) throws Exception {
    Screener screener = new Screener(PackLoader.load("common-practice"), LocalDate.of(2026, 1, 1));
    return screener.result(RecordReader.of(FORM)).workings().stream()
        .filter(w -> w.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
