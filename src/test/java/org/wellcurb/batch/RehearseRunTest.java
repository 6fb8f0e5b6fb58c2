package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.report.PageStyle;
import org.wellcurb.report.RehearsalView.Turns;

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
            InputOptions.of(List.of(dir.resolve("wells.csv").toString())),
            dir.resolve(before).toString(),
            dir.resolve(after).toString(),
            dir.resolve(out),
            LocalDate.of(2026, 1, 1),
            workers,
            100,
            PageStyle.PLAIN);
    return new RehearseRun(request, rows -> {}, new Stop()).run();
  }

  @Test
  void saysWhichOutcomesChange() throws Exception {
    RehearseSummary summary = run("old", "new", 2, "out");
    assertEquals(6, summary.rowsRead());
    assertEquals(5, summary.screened());
    assertEquals(1, summary.setAside());
    // A: 60 ft from the tank; E: 20 ft from the privy.
    Turns turns = summary.turns();
    assertEquals(2, turns.newlyShort());
    // C is short of the tank both ways; A and E were clean.
    assertEquals(2, turns.firstShort());
    // D: 1 ft from the building, which the new pack does not ask about.
    assertEquals(1, turns.noLongerShort());
    assertEquals(1, turns.noneShort());
    assertEquals(3, turns.changed());
    assertEquals(3, summary.differences());
    assertEquals(
        """
        record_id,file,row,completed,rule,kind,title,entry,written,value,unit,in_use,\
        in_use_limit,tried,tried_limit
        A,wells.csv,2,,tank,deficiency,Far enough: tank,setback.septic_tank,60,60,ft,meets,50,\
        falls short,75
        D,wells.csv,5,,building,deficiency,Far enough: building,setback.building,1,1,ft,\
        falls short,10,no such rule,
        E,wells.csv,6,,privy,deficiency,Far enough: privy,setback.privy,20,20,ft,no such rule,,\
        falls short,50
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
    assertTrue(text.contains("Text Distance to septic tank is at least 50 ft"), text);
    assertTrue(text.contains("50 ft Distance to septic tank is at least 75 ft"), text);
    assertTrue(text.contains("nothing Distance to privy is at least 50 ft"), text);
    assertTrue(text.contains("It judges 5 records here; of these, changed: 1."), text);
    assertTrue(
        Files.readString(dir.resolve("out/index.html"))
            .contains("Distance to septic tank is at least <mark>75</mark> ft"),
        "what is not the same is marked");
  }

  /** A limit that nobody here comes near is changed all the same. */
  @Test
  void aRuleThatTouchesNobodyIsListed() throws Exception {
    pack(
        "milder",
        rule("tank", "setback.septic_tank", "30 ft"),
        rule("building", "setback.building", "9 ft"));
    RehearseSummary summary = run("old", "milder", 1, "out");
    assertEquals(2, summary.differences());
    assertEquals(1, summary.turns().noLongerShort());
    String page = Files.readString(dir.resolve("out/index.html"));
    String text = page.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    assertTrue(text.contains("(building) It judges 5 records here; of these, changed: 0."), text);
    assertTrue(page.contains("Distance to building is at least <mark>9</mark> ft"), page);
  }

  @Test
  void whatCanNoLongerBeToldIsCounted() throws Exception {
    pack("old-form", rule("building", "setback.building", "10 ft"));
    pack(
        "new-form",
        rule("tank", "setback.septic_tank", "50 ft"),
        rule("building", "setback.building", "10 ft"));
    // D has no distance to a tank: the new rule cannot be told of it.
    RehearseSummary summary = run("old-form", "new-form", 1, "out");
    assertEquals(1, summary.turns().newlyUnknown());
    assertEquals(0, summary.turns().noLongerUnknown());
    RehearseSummary back = run("new-form", "old-form", 1, "out");
    assertEquals(0, back.turns().newlyUnknown());
    assertEquals(1, back.turns().noLongerUnknown());
  }

  @Test
  void variancesWhoseEffectChangesAreCounted() throws Exception {
    Files.writeString(
        dir.resolve("wells.csv"),
        """
        record.id,record.variances,setback.septic_tank [ft],setback.building [ft]
        A,tank: V-1,60,20
        B,building: V-2,80,5
        C,building: V-3,80,1
        D,,80,20
        """);
    pack(
        "later",
        rule("tank", "setback.septic_tank", "75 ft"),
        rule("building", "setback.building", "3 ft"));
    RehearseSummary summary = run("old", "later", 1, "out");
    // A needs its variance only now; B needs it no more; C is waived under both.
    assertEquals(1, summary.turns().newlyWaived());
    assertEquals(1, summary.turns().noLongerWaived());
    List<String> changes = Files.readAllLines(dir.resolve("out/changes.csv"));
    assertEquals(3, changes.size());
    assertTrue(changes.get(1).startsWith("A,") && changes.get(1).endsWith(",waived,75"));
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("<dt>Waived by a variance now</dt><dd>1</dd>"), page);
    assertTrue(page.contains("<dt>A variance waives no longer</dt><dd>1</dd>"), page);
    JsonNode counts =
        new ObjectMapper().readTree(dir.resolve("out/run.json").toFile()).get("counts");
    assertEquals(1, counts.get("recordsNewlyWaived").asInt());
    assertEquals(1, counts.get("recordsNoLongerWaived").asInt());
  }

  /** What falls short under each pack differs by just what changes.csv has of the rule. */
  @Test
  void whatFallsShortOfEachRuleIsReconciledWithTheChanges() throws Exception {
    run("old", "new", 1, "out");
    String page = Files.readString(dir.resolve("out/index.html"));
    String text = page.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    Matcher said =
        Pattern.compile(
                "\\((tank|privy|building)\\) [^:]*: \\d+\\. Falling short: (\\d+) under the pack in use,"
                    + " (\\d+) under the pack tried\\.")
            .matcher(text);
    List<String> changes = Files.readAllLines(dir.resolve("out/changes.csv"));
    int rules = 0;
    while (said.find()) {
      String rule = "," + said.group(1) + ",";
      long worse =
          changes.stream()
              .filter(line -> line.contains(rule) && line.matches(".*,falls short,[^,]*$"))
              .count();
      long better =
          changes.stream()
              .filter(
                  line -> line.contains(rule) && line.matches(".*,falls short,[^,]*,[^,]+,[^,]*$"))
              .count();
      assertEquals(
          worse - better,
          Long.parseLong(said.group(3)) - Long.parseLong(said.group(2)),
          said.group());
      rules++;
    }
    assertEquals(3, rules, text);
  }

  @Test
  void yearsOfCompletionSayHowFarItReachesBack() throws Exception {
    Files.writeString(
        dir.resolve("wells.csv"),
        """
        record.id,dates.completed,setback.septic_tank [ft]
        A,1990-05-01,60
        B,2023-12-31,60
        C,2024-01-01,60
        D,1990,60
        E,,60
        F,1990,80
        """);
    pack("tank-only", rule("tank", "setback.septic_tank", "50 ft"));
    pack("tank-more", rule("tank", "setback.septic_tank", "75 ft"));
    RehearseSummary summary = run("tank-only", "tank-more", 1, "out");
    assertEquals(5, summary.turns().newlyShort());
    // Not C, of the day of the edition, nor E, of which nobody knows.
    assertEquals(3, summary.turns().older());
    String page = Files.readString(dir.resolve("out/index.html")).replaceAll("<[^>]*>", " ");
    String text = page.replaceAll("\\s+", " ");
    assertTrue(
        text.contains("3 wells that are newly short were completed before 2024-01-01"), text);
    assertTrue(text.contains("2024 1 1 1 0 2023 1 1 1 0 1990 3 2 2 0 not given 1 1 1 0"), text);
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
    assertEquals(0, summary.turns().changed());
    assertEquals(0, summary.differences());
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("the same byte for byte"), page);
    assertTrue(page.contains("No rule differs between the two packs"), page);
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
    assertTrue(
        Files.readString(dir.resolve("out/changes.csv")).contains("falls short,75,meets,50"));
  }
}
