package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.report.PageStyle;

/** The same records under two packs that differ in one limit, one new rule and one old rule. */
class RehearseRunTest {
  private static final String RULE =
      """
      { "id": "%s", "title": "%s", "kind": "deficiency", "require": "%s >= %s",
        "because": "b", "remedy": "r", "source": "s",
        "examples": [ { "given": { "%s": "1 ft" }, "expect": "falls short" },
                      { "given": { "%s": "900 ft" }, "expect": "meets" } ] }""";

  private static final String RECORDS =
      """
      record.id,site.zone,driller.licence,site.latitude,site.longitude,setback.septic_tank [ft],\
      setback.privy [ft],setback.building [ft]
      A,hill,D1,45.1,-75.2,60,80,20
      B,hill,D1,,,80,80,20
      C,plain,D2,45.3,-75.4,40,80,20
      D,plain,D2,,,,80,1
      E,plain,,,,80,20,20
      ,plain,D2,,,1,1,1
      """;

  @TempDir Path dir;

  @BeforeEach
  void packsAndRecords() throws IOException {
    pack(
        "old",
        rule("tank", "setback.septic_tank", "50 ft"),
        rule("building", "setback.building", "10 ft"));
    pack(
        "new",
        rule("tank", "setback.septic_tank", "75 ft"),
        rule("privy", "setback.privy", "50 ft"));
    Files.writeString(dir.resolve("wells.csv"), RECORDS);
  }

  private static String rule(String id, String entry, String limit) {
    return RULE.formatted(id, "Far enough: " + id, entry, limit, entry, entry);
  }

  private void pack(String id, String... rules) throws IOException {
    String text =
        """
        { "pack": "%s", "title": "t", "authority": "a", "jurisdictions": ["x"],
          "edition": "2024-01-01", "judgedBy": "as-of",
          "sources": { "s": { "basis": "invented", "title": "t", "section": "1" } },
          "rules": [ %s ] }""";
    Path folder = Files.createDirectories(dir.resolve(id));
    Files.writeString(folder.resolve("pack.json"), text.formatted(id, String.join(",", rules)));
  }

  private RehearseSummary run(String before, String after, int workers, String out)
      throws Exception {
    RehearseRequest request =
        new RehearseRequest(
            List.of(dir.resolve("wells.csv").toString()),
            dir.resolve(before).toString(),
            dir.resolve(after).toString(),
            dir.resolve(out),
            LocalDate.of(2026, 1, 1),
            100,
            PageStyle.PLAIN,
            workers,
            InputStream.nullInputStream(),
            null);
    return new RehearseRun(request, rows -> {}, new Stop()).run();
  }

  @Test
  void saysWhichOutcomesChange() throws Exception {
    RehearseSummary summary = run("old", "new", 2, "out");
    assertEquals(6, summary.rowsRead());
    assertEquals(5, summary.screened());
    assertEquals(1, summary.setAside());
    // A: 60 ft from the tank; E: 20 ft from the privy.
    assertEquals(2, summary.newlyShort());
    // D: 1 ft from the building, which the new pack does not ask about.
    assertEquals(1, summary.noLongerShort());
    assertEquals(3, summary.changed());
    assertEquals(
        """
        record_id,file,row,rule,kind,title,in_use,tried
        A,wells.csv,2,tank,deficiency,Far enough: tank,meets,falls short
        D,wells.csv,5,building,deficiency,Far enough: building,falls short,no such rule
        E,wells.csv,6,privy,deficiency,Far enough: privy,no such rule,falls short
        """,
        Files.readString(dir.resolve("out/changes.csv")));
  }

  @Test
  void pageCountsRulesThatComeAndAreMetInTheTableAlone() throws Exception {
    run("old", "new", 1, "out");
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("3 of 5 records change"), page);
    assertTrue(page.contains("no such rule"), page);
    assertTrue(page.contains("One row could not be read as a record"), page);
    assertFalse(page.contains("${"), page);
  }

  @Test
  void pageSaysWhatEachRuleAskedAndAsks() throws Exception {
    run("old", "new", 1, "out");
    String page = Files.readString(dir.resolve("out/index.html")).replaceAll("<[^>]*>", " ");
    String text = page.replaceAll("\\s+", " ");
    assertTrue(text.contains("In use: Distance to septic tank is at least 50 ft."), text);
    assertTrue(text.contains("Tried: Distance to septic tank is at least 75 ft."), text);
    assertTrue(text.contains("Tried: Distance to privy is at least 50 ft."), text);
  }

  @Test
  void recordsWithAPositionArePoints() throws Exception {
    run("old", "new", 1, "out");
    JsonNode points = new ObjectMapper().readTree(dir.resolve("out/changes.geojson").toFile());
    assertEquals(1, points.path("features").size());
    JsonNode properties = points.path("features").path(0).path("properties");
    assertEquals("A", properties.path("record_id").asText());
    assertEquals("tank", properties.path("newly_short").path(0).asText());
    assertEquals(0, properties.path("no_longer_short").size());
  }

  @Test
  void onePackAgainstItselfChangesNothing() throws Exception {
    RehearseSummary summary = run("new", "new", 1, "out");
    assertEquals(0, summary.changed());
    assertEquals(1, Files.readAllLines(dir.resolve("out/changes.csv")).size());
    assertTrue(Files.readString(dir.resolve("out/index.html")).contains("No outcome changes."));
  }

  @Test
  void threadsDoNotShowInTheBytes() throws Exception {
    run("old", "new", 1, "one");
    run("old", "new", 3, "three");
    try (Stream<Path> files = Files.list(dir.resolve("one"))) {
      for (Path file : files.toList()) {
        assertArrayEquals(
            Files.readAllBytes(file),
            Files.readAllBytes(dir.resolve("three").resolve(file.getFileName())),
            file.toString());
      }
    }
  }

  @Test
  void aPackThatDoesNotLoadWritesNothing() {
    RunFailure failure = assertThrows(RunFailure.class, () -> run("old", "none", 1, "out"));
    assertEquals(RunFailure.Kind.UNUSABLE, failure.kind());
    assertFalse(Files.exists(dir.resolve("out")));
  }

  @Test
  void aFileThatIsNoTableWritesNothing() throws Exception {
    Files.writeString(dir.resolve("wells.csv"), "");
    RunFailure failure = assertThrows(RunFailure.class, () -> run("old", "new", 1, "out"));
    assertEquals(RunFailure.Kind.NO_INPUT, failure.kind());
    assertFalse(Files.exists(dir.resolve("out")));
  }

  @Test
  void aSecondRunReplacesTheFirst() throws Exception {
    run("old", "new", 1, "out");
    run("new", "old", 1, "out");
    assertTrue(Files.readString(dir.resolve("out/changes.csv")).contains("falls short,meets"));
  }
}
