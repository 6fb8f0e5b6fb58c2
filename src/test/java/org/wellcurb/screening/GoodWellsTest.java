package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;

/** Good wells, each odd in one way, are left alone. */
class GoodWellsTest {
  private static List<WellRecord> wells;

  @BeforeAll
  static void read() {
    wells = ReadRecords.in(Path.of("src/test/resources/good-wells")).records;
  }

  @ParameterizedTest
  @ValueSource(strings = {"rules/common-practice", "rules/fenwick-county"})
  void noDeficiencyNoDiscrepancyNoOmission(String pack) throws PackException {
    Screener screener = new Screener(PackLoader.load(pack), LocalDate.of(2026, 1, 1));
    assertTrue(wells.size() >= 20, wells.size() + " wells");
    for (WellRecord well : wells) {
      screener.outcomes(well);
      assertEquals(
          List.of(),
          screener.findings().stream()
              .filter(f -> f.rule().kind() != FindingKind.ADVISORY)
              .map(f -> f.rule().id())
              .toList(),
          well.id() + " under " + pack);
    }
  }

  /** No cap, no head, no casing: the bore of a closed loop is no well left open. */
  @ParameterizedTest
  @ValueSource(strings = {"rules/common-practice", "rules/fenwick-county"})
  void anUncasedLoopIsLeftAlone(String pack) throws PackException {
    Screener screener = new Screener(PackLoader.load(pack), LocalDate.of(2026, 1, 1));
    List<WellRecord> loops = ReadRecords.in(Path.of("src/test/resources/good-loops")).records;
    assertEquals(1, loops.size());
    screener.outcomes(loops.get(0));
    assertEquals(List.of(), screener.findings().stream().map(f -> f.rule().id()).toList());
  }

  /** Silence must come from rules that were met, not from forms that say nothing. */
  @ParameterizedTest
  @ValueSource(strings = {"rules/common-practice", "rules/fenwick-county"})
  void theyMeetMoreThanCannotBeTold(String pack) throws PackException {
    Screener screener = new Screener(PackLoader.load(pack), LocalDate.of(2026, 1, 1));
    for (WellRecord well : wells) {
      byte[] outcomes = screener.outcomes(well);
      int met = count(outcomes, Outcome.MEETS);
      int untold = count(outcomes, Outcome.CANNOT_TELL);
      assertTrue(
          met > 2 * untold && met >= 12,
          well.id() + " under " + pack + ": meets " + met + ", cannot tell " + untold);
    }
  }

  private static int count(byte[] outcomes, Outcome wanted) {
    int count = 0;
    for (byte outcome : outcomes) {
      count += outcome == wanted.ordinal() ? 1 : 0;
    }
    return count;
  }
}
