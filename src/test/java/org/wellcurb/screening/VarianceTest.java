package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.PackLoader;

/** A variance is for the rule that it names, and for no other of its subject. */
class VarianceTest {
  private static final Map<String, String> FORM =
      Map.of(
          "pump.control", "switch",
          "relief.setting", "60 psi",
          "pressure.cut_out", "60 psi",
          "record.variances", "relief-ten-above-cut-out: B-17");

  @Test
  void anotherRuleOfTheSubjectStandsInItsPlace() throws Exception {
    Screener screener = new Screener(PackLoader.load("fenwick-county"), LocalDate.of(2026, 1, 1));
    RecordResult result = screener.result(RecordReader.of(FORM));
    List<String> shortOf = result.findings().stream().map(f -> f.rule().id()).toList();
    assertTrue(shortOf.contains("relief-above-cut-out"), shortOf.toString());
    for (RuleResult each : result.results()) {
      if (each.rule().id().equals("relief-ten-above-cut-out")) {
        assertEquals("waived", each.outcome().label());
      }
    }
    assertEquals(List.of(), result.idleVariances());
  }
}
