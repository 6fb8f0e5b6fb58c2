package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;

/**
 * Forms as an office gets them: odd in two ways at once, or sparse, and good; and one good form
 * with one fault planted at a time.
 */
class OddWellsTest {
  private static final Path FOLDER = Path.of("src/test/resources/odd-wells");

  private static Screener screener;

  @BeforeAll
  static void load() throws PackException {
    screener = new Screener(PackLoader.load("common-practice"), LocalDate.of(2026, 1, 1));
  }

  private static List<WellRecord> wells(String folder) {
    return ReadRecords.in(FOLDER.resolve(folder)).records;
  }

  private static String found(WellRecord well, boolean advisoriesToo) {
    screener.outcomes(well);
    return screener.findings().stream()
        .filter(f -> advisoriesToo || f.rule().kind() != FindingKind.ADVISORY)
        .map(f -> f.rule().id())
        .sorted()
        .collect(Collectors.joining(" "));
  }

  @Test
  void goodOnesHaveNoDeficiencyNoDiscrepancyNoOmission() {
    List<WellRecord> wells = wells("good");
    assertTrue(wells.size() >= 30, wells.size() + " wells");
    Map<String, String> accused = new TreeMap<>();
    for (WellRecord well : wells) {
      String found = found(well, false);
      if (!found.isEmpty()) {
        accused.put(well.id(), found);
      }
    }
    assertEquals(Map.of(), accused);
  }

  /** One line a form: what is found of it, and nothing else. */
  @Test
  void theFaultPlantedIsWhatIsFound() throws Exception {
    StringBuilder found = new StringBuilder();
    for (WellRecord well : wells("one-fault")) {
      found.append((well.id() + ": " + found(well, true)).strip()).append('\n');
    }
    assertEquals(Files.readString(FOLDER.resolve("one-fault.txt")), found.toString());
  }
}
