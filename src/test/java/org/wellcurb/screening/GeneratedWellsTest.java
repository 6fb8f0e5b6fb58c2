package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.PackLoader;

/** Two thousand generated wells that hang together: nothing is said against one of them. */
class GeneratedWellsTest {
  private static final long SEED = 20260117;
  private static final int EACH = 112;

  @Test
  void noDeficiencyNoDiscrepancyNoReading() throws Exception {
    Screener screener = new Screener(PackLoader.load("common-practice"), LocalDate.of(2026, 1, 1));
    Random random = new Random(SEED);
    Map<String, String> said = new TreeMap<>();
    int met = 0;
    int wells = 0;
    for (GoodWell kind : GoodWell.values()) {
      for (int i = 0; i < EACH; i++) {
        Map<String, String> form = kind.form(kind + "-" + i, random);
        byte[] outcomes = screener.outcomes(RecordReader.of(form));
        wells++;
        for (byte outcome : outcomes) {
          met += outcome == Outcome.MEETS.ordinal() ? 1 : 0;
        }
        for (Finding finding : screener.findings()) {
          boolean isAgainst =
              finding.rule().kind() == FindingKind.DEFICIENCY
                  || finding.rule().kind() == FindingKind.DISCREPANCY
                  || !finding.possibleReading().isEmpty();
          if (isAgainst) {
            said.putIfAbsent(finding.rule().id(), kind + " " + form);
          }
        }
      }
    }
    assertTrue(wells >= 2000, wells + " wells");
    assertTrue(met > 30 * wells, met + " outcomes of " + wells + " wells meet");
    assertEquals(Map.of(), said, "seed " + SEED);
  }
}
