package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.Pack;
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

  /** A form calls a rule what its people call it. */
  @Test
  void aNameThatIsNoRuleLeadsToTheOneMeant() throws Exception {
    Pack pack = PackLoader.load("montana");
    assertEquals("septic-tank-distance", NearRule.of("variance 12 septic", pack));
    assertEquals("septic-tank-distance", NearRule.of("Septic tank distance", pack));
    assertEquals("septic-tank-distance", NearRule.of("septic-tank-distanse", pack));
    assertEquals("property-line-distance", NearRule.of("waiver of property line", pack));
    // More than one rule may be meant, or none.
    assertEquals("", NearRule.of("distance", pack));
    assertEquals("", NearRule.of("2023-117", pack));
    assertEquals("", NearRule.of("variance", pack));
  }

  @Test
  void aPackMayListTheRulesThatAVarianceMayWaive(@TempDir Path folder) throws Exception {
    Path pack = Files.createDirectories(folder.resolve("sound-whole")).resolve("pack.json");
    String text =
        Files.readString(Path.of("src/test/resources/bad-packs/sound-base/pack.json"))
            .replace("\"rules\": [", "\"waivable\": [WAIVABLE], \"rules\": [");
    String rule = "septic-tank-distance";
    Map<String, String> form =
        Map.of("setback.septic_tank", "20 ft", "record.variances", rule + ": B-18");
    assertEquals(VarianceUse.Does.NOT_ALLOWED, does(pack, text.replace("WAIVABLE", ""), form));
    String listed = text.replace("WAIVABLE", "\"" + rule + "\"");
    assertEquals(VarianceUse.Does.WAIVES, does(pack, listed, form));
    String any = text.replace("\"waivable\": [WAIVABLE], ", "");
    assertEquals(VarianceUse.Does.WAIVES, does(pack, any, form));
  }

  private static VarianceUse.Does does(Path at, String pack, Map<String, String> form)
      throws Exception {
    Files.writeString(at, pack);
    Screener screener = new Screener(PackLoader.load(at.toString()), LocalDate.of(2026, 1, 1));
    RecordResult result = screener.result(RecordReader.of(form));
    VarianceUse.Does does = screener.variances().get(0).does();
    assertEquals(
        does == VarianceUse.Does.WAIVES ? 0 : 1, result.findings().size(), "it falls short");
    return does;
  }

  @Test
  void whatWaivesNothingSaysWhy() throws Exception {
    Screener screener = new Screener(PackLoader.load("fenwick-county"), LocalDate.of(2026, 1, 1));
    Map<String, String> form = new HashMap<>(FORM);
    form.put("relief.setting", "75 psi");
    form.put("record.variances", "relief-ten-above-cut-out: B-17; septic tank: B-18");
    screener.outcomes(RecordReader.of(form));
    assertEquals(
        List.of(VarianceUse.Does.MET, VarianceUse.Does.NO_RULE),
        screener.variances().stream().map(VarianceUse::does).toList());
    form.put("pump.control", "n/a");
    form.put("relief.setting", "n/a");
    form.put("record.variances", "relief-ten-above-cut-out: B-17");
    screener.outcomes(RecordReader.of(form));
    assertEquals(VarianceUse.Does.NOT_APPLICABLE, screener.variances().get(0).does());
  }
}
