package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.report.Cap;
import org.wellcurb.report.Cut;

class ScreenRunTest {
  private static final String HEADER =
      "record.id,record.jurisdiction,setback.septic_tank,well.tag\n";

  @TempDir Path dir;

  @Test
  void wellWithOneFindingGetsItsSentenceAndItsSheet() throws Exception {
    Path in = write("one.csv", HEADER + "W-1,alder,40 ft,T1\n");
    ScreenSummary summary = Runs.run(Runs.request(dir.resolve("out"), List.of(Runs.ALDER), in));
    assertEquals("W-1", summary.recordId());
    assertEquals(1, summary.sentences().size(), () -> "" + summary.sentences());
    assertTrue(summary.sentences().get(0).contains("40 ft"), summary.sentences().get(0));
    assertTrue(Files.exists(dir.resolve("out/sheets/W-1.html")));
  }

  @Test
  void onlyRecordOfARunGetsASheetThoughNothingFallsShort() throws Exception {
    Path in = write("one.csv", HEADER + "W-1,alder,140 ft,T1\n");
    ScreenSummary summary = Runs.run(Runs.request(dir.resolve("out"), List.of(Runs.ALDER), in));
    assertEquals(0, summary.withFindings());
    assertTrue(Files.exists(dir.resolve("out/sheets/W-1.html")));
  }

  /** They could be read: what keeps them from being judged stands with the rows set aside. */
  @Test
  void recordsOfNoPacksPlaceLeadToTheRowsSetAside() throws Exception {
    Path in = write("elsewhere.csv", HEADER + "W-1,elm,40 ft,T1\nW-2,elm,40 ft,T2\n");
    Runs.run(Runs.request(dir.resolve("out"), List.of(Runs.ALDER, Runs.BIRCH), in));
    String page = Files.readString(dir.resolve("out/index.html"));
    int first = page.indexOf("All 2 rows were set aside, so no record was judged.");
    assertTrue(first > 0, page);
    assertTrue(page.substring(Math.max(0, first - 300), first + 300).contains("href=\"#aside\""));
    assertFalse(page.contains("No record could be read"), page);
  }

  @Test
  void noSheetsWhereNoneAreAskedFor() throws Exception {
    Path in = write("one.csv", HEADER + "W-1,alder,40 ft,T1\n");
    Runs.run(
        Runs.withSheets(
            Runs.request(dir.resolve("out"), List.of(Runs.ALDER), in), SheetsFor.NONE, 500));
    assertFalse(Files.exists(dir.resolve("out/sheets")));
    assertEquals(
        0,
        new ObjectMapper()
            .readTree(dir.resolve("out/findings.json").toFile())
            .get("records")
            .size());
  }

  @Test
  void mostSheetsGoToTheWorstRecordsAndTheCutIsSaid() throws Exception {
    Path in =
        write(
            "many.csv",
            HEADER
                + "mild,alder,140 ft,\n"
                + "bad,alder,40 ft,T1\n"
                + "worst,alder,40 ft,\n"
                + "good,alder,140 ft,T1\n");
    ScreenRequest plain = Runs.request(dir.resolve("out"), List.of(Runs.ALDER), in);
    ScreenSummary summary = Runs.run(Runs.withSheets(plain, SheetsFor.FLAGGED, 2));
    assertEquals(List.of("bad.html", "worst.html"), names(dir.resolve("out/sheets")));
    assertEquals(List.of(new Cut(Cap.SHEETS, 2, 3)), summary.cuts());
    JsonNode cut = json("out/run.json").get("cuts").get(0);
    assertEquals("sheets", cut.get("cap").asText());
    assertEquals(2, cut.get("shown").asInt());
    assertEquals(3, cut.get("total").asInt());
    assertEquals(
        3,
        Runs.rows(dir.resolve("out/findings.csv")).stream()
            .map(r -> r.get("record_id"))
            .distinct()
            .count());
  }

  @Test
  void allSheetsHoldRecordsWithoutFindingsToo() throws Exception {
    Path in = write("two.csv", HEADER + "W-1,alder,40 ft,T1\nW-2,alder,140 ft,T1\n");
    ScreenRequest plain = Runs.request(dir.resolve("out"), List.of(Runs.ALDER), in);
    Runs.run(Runs.withSheets(plain, SheetsFor.ALL, 500));
    assertEquals(List.of("W-1.html", "W-2.html"), names(dir.resolve("out/sheets")));
  }

  @Test
  void sheetsOfRecordsWithHostileNumbersStayInTheirFolder() throws Exception {
    Path in =
        write(
            "hostile.csv",
            HEADER
                + "../../../escape,alder,40 ft,T1\n"
                + "W/1,alder,40 ft,T1\n"
                + "w\\1,alder,40 ft,T1\n"
                + "W 1,alder,40 ft,T1\n"
                + "NUL,alder,40 ft,T1\n"
                + "<script>,alder,40 ft,T1\n");
    Runs.run(Runs.request(dir.resolve("out"), List.of(Runs.ALDER), in));
    assertEquals(
        List.of(
            "W-1-3.html",
            "W-1.html",
            "escape.html",
            "record-NUL.html",
            "script.html",
            "w-1-2.html"),
        names(dir.resolve("out/sheets")));
    assertEquals(List.of("hostile.csv", "out"), names(dir));
  }

  @Test
  void memberOfAnArchiveCannotWriteElsewhere() throws Exception {
    Path zip = dir.resolve("a.zip");
    try (var out = new java.util.zip.ZipOutputStream(Files.newOutputStream(zip))) {
      out.putNextEntry(new java.util.zip.ZipEntry("../../evil.csv"));
      out.write(
          (HEADER + "W-1,alder\nW-2,alder,140 ft,T1\n")
              .getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
    ScreenSummary summary = Runs.run(Runs.request(dir.resolve("out"), List.of(Runs.ALDER), zip));
    assertEquals(1, summary.screened());
    assertEquals(1, summary.setAside());
    assertEquals(List.of("a.zip-evil.csv"), names(dir.resolve("out/set-aside")));
    assertEquals(List.of("a.zip", "out"), names(dir));
  }

  @Test
  void recordThatNoPackJudgesIsSetAsideWithTheReason() throws Exception {
    Path in = write("in.csv", HEADER + "W-1,alder,40 ft,T1\nW-2,oak,40 ft,T1\nW-3,,40 ft,T1\n");
    ScreenSummary summary =
        Runs.run(Runs.request(dir.resolve("out"), List.of(Runs.ALDER, Runs.BIRCH), in));
    assertEquals(1, summary.screened());
    List<Map<String, String>> aside = Runs.rows(dir.resolve("out/set-aside.csv"));
    assertEquals(2, aside.size());
    assertEquals("record.jurisdiction", aside.get(0).get("column"));
    assertTrue(aside.get(0).get("reason").contains("oak"), aside.get(0).get("reason"));
    assertTrue(aside.get(1).get("reason").contains("several"), aside.get(1).get("reason"));
    assertEquals(
        HEADER + "W-2,oak,40 ft,T1\nW-3,,40 ft,T1\n",
        Files.readString(dir.resolve("out/set-aside/in.csv")));
  }

  @Test
  void singlePackJudgesEveryRecord() throws Exception {
    Path in = write("in.csv", HEADER + "W-1,oak,40 ft,T1\nW-2,,40 ft,T1\n");
    assertEquals(2, Runs.run(Runs.request(dir.resolve("out"), List.of(Runs.ALDER), in)).screened());
  }

  @Test
  void packGivenTwiceIsRefused() throws Exception {
    Path in = write("in.csv", HEADER + "W-1,oak,40 ft,T1\n");
    assertFails(Runs.request(dir.resolve("out"), List.of(Runs.ALDER, Runs.ALDER), in), "alder");
  }

  @Test
  void findingsJsonIsOfItsSchema() throws Exception {
    new Region(3).write(dir.resolve("in.csv"), 300);
    Runs.run(
        Runs.request(dir.resolve("out"), List.of(Runs.ALDER, Runs.BIRCH), dir.resolve("in.csv")));
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(
                Files.readString(Path.of("rules/schema/findings.schema.json")), InputFormat.JSON);
    String text = Files.readString(dir.resolve("out/findings.json"));
    assertEquals(List.of(), schema.validate(text, InputFormat.JSON));
    JsonNode records = new ObjectMapper().readTree(text).get("records");
    assertTrue(records.size() > 20, "too few to be a test");
    for (JsonNode record : records) {
      assertTrue(Files.exists(dir.resolve("out").resolve(record.get("sheet").asText())));
      assertTrue(record.get("findings").size() > 0);
    }
  }

  @Test
  void runJsonSaysNothingOfFoldersWorkersOrTimes() throws Exception {
    Path in = write("in.csv", HEADER + "W-1,alder,40 ft,T1\n");
    Runs.run(Runs.request(dir.resolve("out"), List.of(Runs.ALDER), in));
    String text = Files.readString(dir.resolve("out/run.json"));
    assertFalse(text.contains(dir.toString()), text);
    assertFalse(text.contains("workers"), text);
    assertEquals(sha256(in), json("out/run.json").get("inputs").get(0).get("sha256").asText());
  }

  @Test
  void failureWhileWritingLeavesTheEarlierReport() throws Exception {
    Path in = write("in.csv", HEADER + "W-1,alder,40 ft,T1\n");
    ScreenRequest request = Runs.request(dir.resolve("out"), List.of(Runs.ALDER), in);
    Runs.run(request);
    Map<String, String> before = Runs.files(dir.resolve("out"));
    // The folder being written goes away under the run, as a disk that fails would have it.
    Progress saboteur =
        rows -> {
          try {
            Folders.delete(dir.resolve(".out.wellcurb-new"));
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        };
    RunFailure failure =
        assertThrows(RunFailure.class, () -> new ScreenRun(request, saboteur, new Stop()).run());
    assertEquals(RunFailure.Kind.UNUSABLE, failure.kind());
    assertEquals(1, failure.line().lines().count());
    assertEquals(before, Runs.files(dir.resolve("out")));
    assertEquals(List.of("in.csv", "out"), names(dir));
  }

  @Test
  void runThatIsStoppedLeavesTheEarlierReport() throws Exception {
    Path in = write("in.csv", HEADER + "W-1,alder,40 ft,T1\n");
    ScreenRequest request = Runs.request(dir.resolve("out"), List.of(Runs.ALDER), in);
    Runs.run(request);
    Map<String, String> before = Runs.files(dir.resolve("out"));
    Stop stop = new Stop();
    stop.ended();
    RunFailure failure =
        assertThrows(
            RunFailure.class, () -> new ScreenRun(request, rows -> stop.askAndWait(), stop).run());
    assertTrue(failure.line().startsWith("interrupted"), failure.line());
    assertEquals(before, Runs.files(dir.resolve("out")));
    assertEquals(List.of("in.csv", "out"), names(dir));
  }

  @Test
  void faultOfTheProgramLeavesTheEarlierReport() throws Exception {
    Path in = write("in.csv", HEADER + "W-1,alder,40 ft,T1\n");
    ScreenRequest request = Runs.request(dir.resolve("out"), List.of(Runs.ALDER), in);
    Runs.run(request);
    Map<String, String> before = Runs.files(dir.resolve("out"));
    Progress faulty =
        rows -> {
          throw new IllegalStateException("a fault");
        };
    assertThrows(
        IllegalStateException.class, () -> new ScreenRun(request, faulty, new Stop()).run());
    assertEquals(before, Runs.files(dir.resolve("out")));
    assertEquals(List.of("in.csv", "out"), names(dir));
  }

  @Test
  void inputInsideTheFolderToBeReplacedIsRefused() throws Exception {
    Path in = write("in.csv", HEADER + "W-1,alder\n");
    Runs.run(Runs.request(dir.resolve("out"), List.of(Runs.ALDER), in));
    Path aside = dir.resolve("out/set-aside/in.csv");
    assertFails(Runs.request(dir.resolve("out"), List.of(Runs.ALDER), aside), "copy it out");
    assertTrue(Files.exists(aside));
  }

  private void assertFails(ScreenRequest request, String saying) {
    RunFailure failure = assertThrows(RunFailure.class, () -> Runs.run(request));
    assertEquals(RunFailure.Kind.UNUSABLE, failure.kind());
    assertTrue(failure.line().contains(saying), failure.line());
    assertEquals(1, failure.line().lines().count());
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(dir.resolve(name), text);
  }

  private JsonNode json(String name) throws IOException {
    return new ObjectMapper().readTree(dir.resolve(name).toFile());
  }

  private static String sha256(Path file) throws Exception {
    return java.util.HexFormat.of()
        .formatHex(
            java.security.MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
  }

  private static List<String> names(Path folder) throws IOException {
    return Folders.list(folder).stream().map(p -> p.getFileName().toString()).toList();
  }
}
