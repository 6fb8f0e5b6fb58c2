package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No row is lost, none is made up, and every file of a run says the same. */
class ReconcileTest {
  private static final long SEED = 42;
  private static final int ROWS = 4_000;

  @TempDir static Path dir;
  private static Path out = Path.of("");
  private static ScreenSummary summary;

  @BeforeAll
  static void once() throws Exception {
    new Region(SEED).write(dir.resolve("in/a.csv"), ROWS);
    new Region(SEED + 1).write(dir.resolve("in/b.csv"), 300);
    out = dir.resolve("out");
    ScreenRequest plain = Runs.request(out, List.of(Runs.ALDER, Runs.BIRCH), dir.resolve("in"));
    summary = Runs.run(Runs.withWorkers(plain, 2));
  }

  @Test
  void rowsReadAreScreenedOrSetAside() throws Exception {
    assertEquals(ROWS + 300, summary.rowsRead());
    assertEquals(summary.rowsRead(), summary.screened() + summary.setAside());
    assertTrue(summary.setAside() > 0);
    assertEquals(summary.screened(), Runs.rows(out.resolve("records.csv")).size());
    assertEquals(summary.setAside(), Runs.rows(out.resolve("set-aside.csv")).size());
    JsonNode counts = runJson().get("counts");
    assertEquals(summary.rowsRead(), counts.get("rowsRead").asLong());
    assertEquals(summary.screened(), counts.get("screened").asLong());
    assertEquals(summary.setAside(), counts.get("setAside").asLong());
    long byInput = 0;
    for (JsonNode input : runJson().get("inputs")) {
      assertEquals(
          input.get("rowsRead").asLong(),
          input.get("screened").asLong() + input.get("setAside").asLong());
      byInput += input.get("rowsRead").asLong();
    }
    assertEquals(summary.rowsRead(), byInput);
  }

  @Test
  void everyRowOfAnInputIsInOneListOnce() throws Exception {
    Set<String> places = new HashSet<>();
    for (String list : List.of("records.csv", "set-aside.csv")) {
      for (Map<String, String> row : Runs.rows(out.resolve(list))) {
        assertTrue(places.add(row.get("file") + ":" + row.get("row")), () -> list + row);
      }
    }
    assertEquals(summary.rowsRead(), places.size());
  }

  @Test
  void findingsAreTheOutcomesThatFallShort() throws Exception {
    Set<String> findings = new HashSet<>();
    for (Map<String, String> row : Runs.rows(out.resolve("findings.csv"))) {
      findings.add(row.get("file") + ":" + row.get("row") + " " + row.get("rule"));
    }
    Set<String> shortfalls = new HashSet<>();
    for (Map<String, String> row : Runs.rows(out.resolve("outcomes.csv"))) {
      if (row.get("outcome").equals("falls short")) {
        shortfalls.add(row.get("file") + ":" + row.get("row") + " " + row.get("rule"));
      }
    }
    assertEquals(shortfalls, findings);
    assertFalse(findings.isEmpty());
  }

  @Test
  void rulesAndRecordsCountTheSameOutcomes() throws Exception {
    List<String> columns =
        List.of("meets", "falls_short", "cannot_tell", "not_applicable", "waived");
    Map<String, Long> byRule = new HashMap<>();
    for (Map<String, String> row : Runs.rows(out.resolve("rules.csv"))) {
      long all = 0;
      for (String column : columns) {
        byRule.merge(column, Long.parseLong(row.get(column)), Long::sum);
        all += Long.parseLong(row.get(column));
      }
      assertTrue(all > 0, () -> "no record was judged by " + row);
    }
    Map<String, Long> byRecord = new HashMap<>();
    long kinds = 0;
    for (Map<String, String> row : Runs.rows(out.resolve("records.csv"))) {
      for (String column : columns) {
        byRecord.merge(column, Long.parseLong(row.get(column)), Long::sum);
      }
      for (String kind : List.of("deficiency", "discrepancy", "omission", "advisory")) {
        kinds += Long.parseLong(row.get(kind));
      }
    }
    assertEquals(byRule, byRecord);
    assertEquals(byRule.get("falls_short"), kinds);
    assertEquals(summary.findings().total(), kinds);
    assertEquals(Runs.rows(out.resolve("findings.csv")).size(), kinds);
  }

  @Test
  void recordsAreJudgedByThePackOfTheirJurisdiction() throws Exception {
    Map<String, Integer> packs = new HashMap<>();
    for (Map<String, String> row : Runs.rows(out.resolve("records.csv"))) {
      packs.merge(row.get("pack"), 1, Integer::sum);
    }
    assertEquals(Set.of("alder", "birch"), packs.keySet());
  }

  @Test
  void mapHoldsEveryRecordWithFindings() throws Exception {
    JsonNode map = new ObjectMapper().readTree(out.resolve("findings.geojson").toFile());
    assertEquals(summary.withFindings(), map.get("features").size());
    for (JsonNode feature : map.get("features")) {
      JsonNode at = feature.get("geometry").get("coordinates");
      assertEquals(-71, at.get(0).asDouble(), 1.01);
      assertEquals(44, at.get(1).asDouble(), 1.01);
      assertEquals(100, feature.get("properties").get("accuracy_m").asDouble());
    }
  }

  /** What was set aside comes back under its own header, so that it can be mended and run again. */
  @Test
  void setAsideRowsAreReadAgainOnceCorrected() throws Exception {
    Path again = dir.resolve("again/a.csv");
    Files.createDirectories(again.getParent());
    String raw = Files.readString(out.resolve("set-aside/a.csv"));
    List<String> lines = raw.lines().toList();
    assertEquals(setAsideOf("a.csv") + 1, lines.size());
    StringBuilder mended = new StringBuilder(lines.get(0)).append('\n');
    int commas = lines.get(0).split(",").length - 1;
    for (int i = 1; i < lines.size(); i++) {
      mended.append("M-").append(i).append(",alder").append(",".repeat(commas - 1)).append('\n');
    }
    Files.writeString(again, mended.toString());
    ScreenSummary second = Runs.run(Runs.request(dir.resolve("out2"), List.of(Runs.ALDER), again));
    assertEquals(setAsideOf("a.csv"), second.screened());
    assertEquals(0, second.setAside());
  }

  @Test
  void setAsideRowsRunAgainAsTheyAreAreSetAsideAgain() throws Exception {
    ScreenSummary second =
        Runs.run(
            Runs.request(
                dir.resolve("out3"), List.of(Runs.ALDER), copy("set-aside/a.csv", "same/a.csv")));
    assertEquals(setAsideOf("a.csv"), second.setAside());
    assertEquals(0, second.screened());
    assertEquals(
        Files.readString(out.resolve("set-aside/a.csv")),
        Files.readString(dir.resolve("out3/set-aside/a.csv")));
  }

  private static Path copy(String from, String to) throws Exception {
    Path copy = dir.resolve(to);
    Files.createDirectories(copy.getParent());
    return Files.copy(out.resolve(from), copy);
  }

  private static long setAsideOf(String file) throws Exception {
    return Runs.rows(out.resolve("set-aside.csv")).stream()
        .filter(row -> row.get("file").equals(file))
        .count();
  }

  private static JsonNode runJson() throws Exception {
    return new ObjectMapper().readTree(out.resolve("run.json").toFile());
  }
}
