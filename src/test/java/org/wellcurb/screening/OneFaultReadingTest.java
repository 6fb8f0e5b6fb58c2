package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;

/**
 * Readings that a single fault and the neighbours of the entry give, and those that it does not.
 */
class OneFaultReadingTest {
  private static Screener screener;

  @BeforeAll
  static void load() throws PackException {
    screener = new Screener(PackLoader.load("fenwick-county"), LocalDate.of(2026, 1, 1));
  }

  private static Map<String, String> well() {
    Map<String, String> form = new LinkedHashMap<>();
    form.put("record.id", "one");
    form.put("record.datum", "ground");
    form.put("well.depth", "130 ft");
    form.put("well.drilled_depth", "132 ft");
    form.put("well.stickup", "2 ft");
    form.put("well.casing_length", "120 ft");
    form.put("well.casing_depth", "118 ft");
    form.put("well.open_hole", "yes");
    form.put("pump.type", "submersible");
    form.put("pump.intake_depth", "108 ft");
    form.put("pitless.fitted", "yes");
    form.put("pitless.depth", "5 ft");
    form.put("drop_pipe.length", "101 ft");
    form.put("site.latitude", "44.190000");
    form.put("site.longitude", "-38.540000");
    form.put("site.septic_latitude", "44.190274");
    form.put("site.septic_longitude", "-38.540000");
    form.put("site.septic_position_of", "septic tank");
    form.put("setback.septic_tank", "100 ft");
    return form;
  }

  private static RecordResult result(String... changes) {
    Map<String, String> form = well();
    for (int i = 0; i < changes.length; i += 2) {
      form.put(changes[i], changes[i + 1]);
    }
    return screener.result(RecordReader.of(form));
  }

  @Test
  void theWellItselfHasNone() {
    assertEquals(List.of(), result().readings());
  }

  @ParameterizedTest
  @CsvSource({
    "well.casing_depth,   36 ft",
    "drop_pipe.length,    30.8 ft",
    "setback.septic_tank, 30.5 ft"
  })
  void metresUnderFeetAreToldWhereTheNeighboursAgree(String entry, String written) {
    List<PossibleReading> readings = result(entry, written).readings();
    assertEquals(1, readings.size(), entry);
    assertEquals(entry, readings.get(0).entry());
    assertTrue(readings.get(0).reading().endsWith(" m, not ft"), readings.get(0).reading());
  }

  /** As metres these come near enough to break nothing, but not to where the neighbours stand. */
  @ParameterizedTest
  @CsvSource({
    "well.casing_depth,   60 ft",
    "drop_pipe.length,    28 ft",
    "setback.septic_tank, 36 ft"
  })
  void nothingIsToldWhereTheyDoNot(String entry, String written) {
    assertEquals(List.of(), result(entry, written).readings(), entry);
  }

  /** 44.3 mg/L of nitrate are 10.0 mg/L of nitrogen (62.005 / 14.007); the finding stays. */
  @ParameterizedTest
  @CsvSource({"44.3 mg/L, 10 mg/L", "26 mg/L, 5.87 mg/L"})
  void nitrateMayBeStatedAsNitrate(String written, String asNitrogen) {
    RecordResult result = result("well.use", "household", "sample.nitrate", written);
    assertEquals(
        List.of(
            "sample nitrate may be stated as nitrate, not as nitrogen ("
                + asNitrogen
                + "): ask the laboratory which, and take it as written until it answers"),
        result.readings().stream().map(PossibleReading::reading).toList());
    assertTrue(
        result.findings().stream()
            .anyMatch(
                finding ->
                    finding.rule().kind() == FindingKind.DEFICIENCY
                        && finding.rule().id().equals("nitrate-limit")
                        && finding.possibleReading().equals(result.readings().get(0).reading())));
  }

  /** What contradicts itself elsewhere is not said to be a matter of nitrate. */
  @Test
  void itStandsWithItsOwnFindingOnly() {
    RecordResult result =
        result(
            "well.use", "household",
            "sample.nitrate", "26 mg/L",
            "well.method", "rotary",
            "well.bore_diameter", "6 in",
            "well.casing_diameter", "8 in");
    assertEquals(1, result.readings().size());
    assertEquals(
        List.of("nitrate-limit"),
        result.findings().stream()
            .filter(finding -> !finding.possibleReading().isEmpty())
            .map(finding -> finding.rule().id())
            .toList());
    assertTrue(
        result.findings().stream()
            .anyMatch(finding -> finding.rule().kind() == FindingKind.DISCREPANCY));
  }

  /** A common excess, and one that is an excess by either name. */
  @ParameterizedTest
  @CsvSource({"9 mg/L", "12 mg/L", "19.9 mg/L", "45 mg/L", "90 mg/L"})
  void otherNitrateIsTakenAsWritten(String written) {
    assertEquals(List.of(), result("well.use", "household", "sample.nitrate", written).readings());
  }
}
