package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Honest regions as poorer exports have them: contractors work around their yards, so that without
 * positions each has figures of its own for honest reasons.
 */
class UnplacedRegionTest {
  @TempDir Path folder;

  /** What is taken off a form, or put on it. */
  private interface Poorer {
    void form(Map<String, String> record);
  }

  private void saysNothing(Poorer poorer) throws Exception {
    for (long seed = 5001; seed <= 5003; seed++) {
      CrossResult result = new Area(seed, 6000).each(poorer::form).check(folder);
      assertEquals(List.of(), result.figures(), "seed " + seed);
      assertEquals(List.of(), result.slips(), "seed " + seed);
    }
  }

  @Test
  void withoutPositions() throws Exception {
    saysNothing(record -> record.keySet().removeAll(List.of("site.latitude", "site.longitude")));
  }

  @Test
  void withoutPositionsAndZones() throws Exception {
    saysNothing(
        record ->
            record.keySet().removeAll(List.of("site.latitude", "site.longitude", "site.zone")));
  }

  /** Depth, casing, level and yield in fives and tens: among so many wells some agree in all. */
  @Test
  void ofFewMeasuredEntriesHoldNoCopies() throws Exception {
    long seed = 5004;
    CrossResult result =
        new Area(seed, 10_000)
            .each(
                record ->
                    record
                        .keySet()
                        .removeAll(
                            List.of(
                                "well.drilled_depth",
                                "grout.bottom",
                                "water.pumping_level",
                                "water.test_rate",
                                "pump.intake_depth")))
            .check(folder);
    assertTrue(result.duplicates().nearCopyTotal() <= 3, "seed " + seed + ": " + result);
  }

  @Test
  void allAtOnePoint() throws Exception {
    saysNothing(
        record -> record.putAll(Map.of("site.latitude", "44.5", "site.longitude", "-76.5")));
  }

  /** Crews of many contractors under few licences round each in its own way. */
  @Test
  void ofFewLicences() throws Exception {
    saysNothing(
        record -> {
          int crew = record.getOrDefault("driller.licence", "").hashCode();
          record.put("driller.licence", "D-" + (crew & 3));
        });
  }
}
