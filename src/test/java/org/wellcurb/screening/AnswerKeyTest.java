package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;

/** Every fault planted in the sample records is found, and nothing else is. */
class AnswerKeyTest {
  private static final LocalDate AS_OF = LocalDate.of(2026, 1, 1);

  private static ReadRecords samples;
  private static Map<String, Screener> byJurisdiction;

  @BeforeAll
  static void read() throws PackException {
    samples = ReadRecords.in(Path.of("sample-records"));
    byJurisdiction =
        Map.of(
            "fenwick", new Screener(PackLoader.load("rules/fenwick-county"), AS_OF),
            "tarn", new Screener(PackLoader.load("rules/tarn-district"), AS_OF));
  }

  @Test
  void everyPlantedFaultIsFoundAndNothingElse() throws IOException {
    Set<String> planted = new TreeSet<>(key());
    Set<String> found = new TreeSet<>();
    for (WellRecord record : samples.records) {
      screener(record).outcomes(record);
      for (Finding finding : screener(record).findings()) {
        found.add(record.id() + "," + finding.rule().id() + "," + finding.rule().kind().label());
      }
    }
    Set<String> missed = new TreeSet<>(planted);
    missed.removeAll(found);
    found.removeAll(planted);
    assertEquals("missed [], not planted []", "missed " + missed + ", not planted " + found);
  }

  @Test
  void noLineOfTheKeyStandsTwice() throws IOException {
    List<String> key = key();
    assertEquals(key.size(), Set.copyOf(key).size());
  }

  @Test
  void mostSamplesAreGood() throws IOException {
    Set<String> faulty = key().stream().map(line -> line.split(",")[0]).collect(Collectors.toSet());
    long good = samples.records.stream().filter(r -> !faulty.contains(r.id())).count();
    assertTrue(good > faulty.size(), good + " good, " + faulty.size() + " faulty");
  }

  @Test
  void everyCellOfTheSamplesCanBeRead() {
    List<String> unreadable =
        samples.records.stream()
            .flatMap(
                r ->
                    r.catalogue().entries().stream()
                        .filter(e -> r.state(e.index()) == WellRecord.UNREADABLE)
                        .map(e -> r.id() + " " + e.key() + " " + r.written(e.index())))
            .toList();
    assertEquals(List.of(), unreadable);
  }

  @Test
  void thereAreSixtyFromTablesAndTwelveFromJsonEachWithItsOwnId() {
    assertEquals(82, samples.records.size());
    assertEquals(82, samples.records.stream().map(WellRecord::id).distinct().count());
  }

  @Test
  void theSpoiledRowsAreSetAside() {
    assertEquals(
        List.of(
            "fenwick-spoiled-rows.csv:3",
            "fenwick-spoiled-rows.csv:5",
            "fenwick-spoiled-rows.csv:6"),
        samples.setAside.stream().map(s -> s.file() + ":" + s.row()).toList());
  }

  private static Screener screener(WellRecord record) {
    String jurisdiction = record.text(record.catalogue().index("record.jurisdiction"));
    Screener screener = byJurisdiction.get(jurisdiction);
    if (screener == null) {
      throw new AssertionError(record.id() + " is of " + jurisdiction);
    }
    return screener;
  }

  private static List<String> key() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("src/test/resources/answer-key.csv"));
    assertEquals("record_id,rule,kind", lines.get(0));
    return lines.subList(1, lines.size());
  }
}
