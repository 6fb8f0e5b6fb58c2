package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.PackLoader;

/** Sentences 13, 15 and 16 of "Truth and amounts": what is waived, what stands, what is found. */
class TruthInScreeningTest {
  private static Screener screener;

  @BeforeAll
  static void load(@TempDir Path dir) throws Exception {
    Path folder = Files.createDirectories(dir.resolve("short"));
    Files.writeString(
        folder.resolve("pack.json"),
        """
        { "pack": "short", "title": "Short (invented)", "authority": "Nobody (invented)",
          "jurisdictions": ["short"], "edition": "2024-01-01", "judgedBy": "dates.completed",
          "sources": { "s": { "basis": "invented", "title": "Short" } },
          "rules": [
        """
            + rule("mild", "advisory", "\"subject\": \"depth\", ", "20")
            + ","
            + rule("strict", "deficiency", "\"subject\": \"depth\", ", "50")
            + ","
            + rule("alone", "omission", "", "30")
            + "] }");
    screener = new Screener(PackLoader.load(folder.toString()), LocalDate.of(2026, 1, 1));
  }

  private static String rule(String id, String kind, String more, String feet) {
    return """
        { "id": "%s", "title": "Deep enough", "kind": "%s", %s"require": "well.depth >= %s ft",
          "because": "b", "remedy": "r", "source": "s",
          "examples": [ { "given": { "well.depth": "%s ft" }, "expect": "meets" },
                        { "given": { "well.depth": "5 ft" }, "expect": "falls short" } ] }
        """
        .formatted(id, kind, more, feet, feet);
  }

  private static WellRecord record(String depth, String variances) {
    return RecordReader.of(
        Map.of(
            "record.id",
            "1",
            "record.datum",
            "ground",
            "well.depth",
            depth,
            "record.variances",
            variances));
  }

  private static List<Outcome> outcomes(String depth, String variances) {
    byte[] outcomes = screener.outcomes(record(depth, variances));
    return List.of(Outcome.at(outcomes[0]), Outcome.at(outcomes[1]), Outcome.at(outcomes[2]));
  }

  @Test
  void s13_waivedReplacesFallsShortAndCannotTell() {
    assertEquals(Outcome.WAIVED, outcomes("25 ft", "alone: V-7").get(2));
    assertEquals(Outcome.WAIVED, outcomes("", "alone: V-7").get(2));
    assertEquals(Outcome.MEETS, outcomes("60 ft", "alone: V-7").get(2));
    assertEquals(Outcome.FALLS_SHORT, outcomes("25 ft", "").get(2));
  }

  @Test
  void s13_aVarianceThatNamesNoRuleOrOneThatWasMetIsReported() {
    assertEquals(1, screener.result(record("60 ft", "alone: V-7")).idleVariances().size());
    assertEquals(1, screener.result(record("25 ft", "nothing: V-8")).idleVariances().size());
    assertEquals(0, screener.result(record("25 ft", "alone: V-7")).idleVariances().size());
  }

  @Test
  void s15_theWorstOfASubjectStandsOnceAndNamesTheOthers() {
    assertEquals(
        List.of(Outcome.NOT_APPLICABLE, Outcome.FALLS_SHORT, Outcome.MEETS), outcomes("40 ft", ""));
    // Of equals what is required stands, and hides behind no recommendation.
    assertEquals(
        List.of(Outcome.NOT_APPLICABLE, Outcome.FALLS_SHORT, Outcome.FALLS_SHORT),
        outcomes("10 ft", ""));
    assertEquals(
        List.of(Outcome.MEETS, Outcome.NOT_APPLICABLE, Outcome.MEETS), outcomes("60 ft", ""));
    RecordResult result = screener.result(record("40 ft", ""));
    assertEquals("strict", result.results().get(0).standsFor());
    assertEquals("", result.results().get(1).standsFor());
  }

  @Test
  void s16_findingsAreExactlyTheShortfallsOfTheRulesKind() {
    screener.outcomes(record("10 ft", ""));
    assertEquals(
        List.of(FindingKind.DEFICIENCY, FindingKind.OMISSION),
        screener.findings().stream().map(finding -> finding.rule().kind()).toList());
    screener.outcomes(record("", ""));
    assertTrue(screener.findings().isEmpty());
  }
}
