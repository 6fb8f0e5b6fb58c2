package org.wellcurb.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a person types, and what comes back: exit codes, one line on errors, nothing half written.
 */
class ScreenCommandTest {
  private static final String PACKS = "src/test/resources/batch/packs/";
  private static final String HEADER =
      "record.id,record.jurisdiction,setback.septic_tank [ft],well.tag,tank.precharge [psi],"
          + "pressure.cut_in [psi]\n";
  private static final String GOOD = "W-1,alder,120,T1,38,40\n";
  private static final String BAD = "W-2,alder,40,,44,40\n";

  @TempDir Path dir;

  @Test
  void goodRunIsZeroAndSaysItsCounts() throws Exception {
    write("in.csv", HEADER + GOOD + BAD + "W-3,too few\n");
    Ran ran = screen("in.csv");
    assertEquals(0, ran.code(), ran.err());
    assertEquals("", ran.err());
    assertTrue(ran.out().startsWith("3 rows read: 2 screened, 1 set aside\n"), ran.out());
    assertTrue(
        ran.out()
            .contains(
                "1 record with findings: 1 deficiency, 0 discrepancies, 1 omission, 1 advisory"),
        ran.out());
    assertTrue(ran.out().endsWith("report: " + dir.resolve("out/index.html") + "\n"), ran.out());
  }

  @Test
  void aFileThatIsCutShortAndOnesNotReadAreNamed() throws Exception {
    StringBuilder rows = new StringBuilder(HEADER);
    for (int i = 0; i < 9000; i++) {
      rows.append("W-").append(i).append(",alder,").append(i * 7919 % 1000).append(",T,38,40\n");
    }
    java.io.ByteArrayOutputStream packed = new java.io.ByteArrayOutputStream();
    try (java.util.zip.GZIPOutputStream out = new java.util.zip.GZIPOutputStream(packed)) {
      out.write(rows.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
    Path folder = java.nio.file.Files.createDirectories(dir.resolve("both"));
    byte[] whole = packed.toByteArray();
    java.nio.file.Files.write(
        folder.resolve("torn.csv.gz"), java.util.Arrays.copyOf(whole, whole.length / 2));
    java.nio.file.Files.writeString(folder.resolve("old.xls"), "x");
    Ran ran = screen("both");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(
        ran.out().contains("\n1 file cut short, so the rows behind are missing: torn.csv.gz\n"),
        ran.out());
    assertTrue(ran.out().contains("\n1 file not read: old.xls: "), ran.out());
  }

  @Test
  void singleRecordSaysASentenceForEachFinding() throws Exception {
    write("in.csv", HEADER + BAD);
    Ran ran = screen("in.csv");
    assertEquals(3, ran.out().lines().filter(line -> line.startsWith("W-2: ")).count(), ran.out());
  }

  @Test
  void onePackGivenJudgesFormsOfOtherPlacesAndSaysSoOnEach() throws Exception {
    String header = HEADER.replace("record.id,", "record.id,driller.licence,");
    write(
        "in.csv",
        header
            + "W-1,D-1,Birch,40,,44,40\nW-2,D-1,alder,40,,44,40\nW-3,D-1,,40,,44,40\n"
            + "W-4,D-1,birch,120,T1,38,40\n");
    Ran ran = screen("in.csv", "--sheets", "all");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(
        ran.out()
            .contains(
                "\n2 records name another jurisdiction than the only pack given is for (Birch), "),
        ran.out());
    String said = "This form names the jurisdiction “";
    assertTrue(page("sheets/W-1.html").contains(said + "Birch”"));
    assertFalse(page("sheets/W-2.html").contains(said));
    assertFalse(page("sheets/W-3.html").contains(said));
    assertTrue(page("sheets/W-4.html").contains(said + "birch”"));
    assertEquals(2, page("notices/D-1.html").split(said, -1).length);
    assertTrue(page("index.html").contains("2 records name other jurisdictions (Birch)"));
    assertTrue(page("run.json").contains("\"namedElsewhere\": 2"));
  }

  @Test
  void whereNoRowCouldBeScreenedTheFirstReasonIsSaid() throws Exception {
    write("in.csv", HEADER + "W-3,too few\nW-4,too few\n");
    Ran ran = screen("in.csv");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(
        ran.out().contains("\nno row could be screened; the first: in.csv, row 2: "), ran.out());
    write("in.csv", HEADER + GOOD + "W-3,too few\n");
    assertFalse(screen("in.csv").out().contains("no row could be screened"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--position-accuracy=1e9",
        "--position-accuracy=20001",
        "--position-accuracy=Infinity",
        "--position-accuracy=NaN",
        "--reply-days=3661",
      })
  void whatIsOutOfBoundsIsRefused(String option) throws Exception {
    write("in.csv", HEADER + BAD);
    Ran ran = screen("in.csv", option);
    assertEquals(2, ran.code(), ran.out());
    assertTrue(ran.err().contains(option.substring(0, option.indexOf('=')) + ": must be at "));
    assertFalse(Files.exists(dir.resolve("out")));
  }

  @Test
  void theWholeBatchIsLookedAtUnlessItIsNotAskedFor() throws Exception {
    write("in.csv", "driller.licence," + HEADER + "D7," + BAD);
    assertEquals(0, screen("in.csv").code());
    assertTrue(Files.exists(dir.resolve("out/crosscheck.json")));
    assertEquals(0, screen("in.csv", "--crosscheck", "no").code());
    assertFalse(Files.exists(dir.resolve("out/crosscheck.json")));
    assertEquals(0, screen("in.csv", "--crosscheck=yes").code());
    assertTrue(Files.exists(dir.resolve("out/crosscheck.json")));
    assertEquals(2, screen("in.csv", "--crosscheck", "maybe").code());
  }

  @Test
  void noticesAreLeftOutIfNoneAreAskedFor() throws Exception {
    write("in.csv", "driller.licence," + HEADER + "D7," + BAD);
    screen("in.csv");
    assertTrue(Files.exists(dir.resolve("out/notices")));
    Ran ran = screen("in.csv", "--notices", "none");
    assertEquals(0, ran.code(), ran.err());
    assertFalse(Files.exists(dir.resolve("out/notices")));
    assertEquals(0, screen("in.csv", "--notices", "all").code());
    assertTrue(Files.exists(dir.resolve("out/notices")));
  }

  @Test
  void wholeBatchIsLookedAtUnlessItIsNotWanted() throws Exception {
    write("in.csv", HEADER + GOOD);
    screen("in.csv");
    String looked = Files.readString(dir.resolve("out/run.json"));
    Ran ran = screen("in.csv", "--crosscheck", "no");
    assertEquals(0, ran.code(), ran.err());
    String left = Files.readString(dir.resolve("out/run.json"));
    assertNotEquals(looked, left);
    assertEquals(0, screen("in.csv", "--crosscheck", "yes").code());
    assertEquals(looked, Files.readString(dir.resolve("out/run.json")));
    assertEquals(2, screen("in.csv", "--crosscheck", "perhaps").code());
  }

  @Test
  void quietSaysNothing() throws Exception {
    write("in.csv", HEADER + BAD);
    Ran ran = screen("in.csv", "--quiet");
    assertEquals(new Ran(0, "", ""), ran);
  }

  @ParameterizedTest
  @ValueSource(strings = {"deficiency", "omission", "advisory", "set-aside"})
  void gateThatIsTrippedIsOneAndTheReportIsWritten(String gate) throws Exception {
    write("in.csv", HEADER + BAD + "W-3,too few\n");
    Ran ran = screen("in.csv", "--gate", "discrepancy", "--gate", gate);
    assertEquals(1, ran.code(), ran.err());
    assertTrue(Files.exists(dir.resolve("out/index.html")));
  }

  @Test
  void gateThatIsNotTrippedIsZero() throws Exception {
    write("in.csv", HEADER + BAD);
    assertEquals(0, screen("in.csv", "--gate", "discrepancy", "--gate", "set-aside").code());
  }

  @Test
  void gateDoesNotChangeWhatIsWritten() throws Exception {
    write("in.csv", HEADER + BAD);
    screen("in.csv");
    String plain = Files.readString(dir.resolve("out/run.json"));
    screen("in.csv", "--gate", "omission");
    assertEquals(plain, Files.readString(dir.resolve("out/run.json")));
  }

  @Test
  void missingFileIsThree() throws Exception {
    assertFails(3, screen("absent.csv"), "absent.csv");
  }

  @Test
  void oneMissingFileAmongGoodOnesIsThreeAndNothingIsWritten() throws Exception {
    write("in.csv", HEADER + GOOD);
    assertFails(3, screen("in.csv", dir.resolve("absent.csv").toString()), "absent.csv");
  }

  @Test
  void folderWithoutRecordsIsThree() throws Exception {
    write("in/notes.md", "nothing");
    assertFails(3, screen("in"), "holds no records");
  }

  @Test
  void fileThatHoldsNoRecordsAtAllIsThree() throws Exception {
    write("in.csv", "a,b,c\n1,2,3\n");
    assertFails(3, screen("in.csv"), "in.csv: ");
  }

  @Test
  void emptyFileIsThree() throws Exception {
    write("in.csv", "");
    assertFails(3, screen("in.csv"), "in.csv: ");
  }

  @Test
  void headerWithoutRowsIsARunOfNoRecords() throws Exception {
    write("in.csv", HEADER);
    Ran ran = screen("in.csv");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().startsWith("0 rows read"), ran.out());
  }

  @Test
  void unknownPackIsTwoAndNamesTheNearest() throws Exception {
    write("in.csv", HEADER + GOOD);
    assertFails(
        2,
        Ran.with(
            "screen",
            dir.resolve("in.csv").toString(),
            "--rules",
            "no-such-pack",
            "--out",
            dir.resolve("out").toString()),
        "no-such-pack");
  }

  @Test
  void faultyPackIsTwoWithALineForEachFault() throws Exception {
    write("in.csv", HEADER + GOOD);
    Ran ran =
        Ran.with(
            "screen",
            dir.resolve("in.csv").toString(),
            "--rules",
            PACKS + "broken",
            "--out",
            dir.resolve("out").toString());
    assertEquals(2, ran.code());
    assertTrue(ran.err().lines().count() >= 2, ran.err());
    ran.err().lines().forEach(line -> assertTrue(line.startsWith(PACKS + "broken"), line));
    assertTrue(ran.err().contains("pressure") && ran.err().contains("length"), ran.err());
    assertTrue(ran.err().contains("relief.setting"), ran.err());
    assertNothingWritten();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--nonsense",
        "--workers=0",
        "--workers=many",
        "--as-of=yesterday",
        "--as-of=2026-02-30",
        "--sheets=some",
        "--most-sheets=-1",
        "--gate=everything",
        "--position-accuracy=-5",
        "--position-accuracy=NaN"
      })
  void optionThatCannotBeReadIsTwo(String option) throws Exception {
    write("in.csv", HEADER + GOOD);
    assertFails(2, screen("in.csv", option), option.split("=")[0]);
  }

  @Test
  void missingOptionsAreTwo() throws Exception {
    assertFails(2, Ran.with("screen", "x.csv"), "--out");
    assertFails(2, Ran.with("screen", "--rules", "x", "--out", "y"), "RECORDS");
  }

  @Test
  void folderThatHoldsSomethingElseIsTwoAndStaysAsItWas() throws Exception {
    write("in.csv", HEADER + GOOD);
    write("out/letter.txt", "mine");
    Ran ran = screen("in.csv");
    assertEquals(2, ran.code());
    assertEquals(1, ran.err().lines().count(), ran.err());
    assertTrue(ran.err().contains("letter.txt"), ran.err());
    assertEquals(List.of("in.csv", "out", "out/letter.txt"), below(dir));
  }

  @Test
  void folderThatCannotBeWrittenIsTwo() throws Exception {
    write("in.csv", HEADER + GOOD);
    write("file", "in the way");
    Ran ran =
        Ran.with(
            "screen",
            dir.resolve("in.csv").toString(),
            "--rules",
            PACKS + "alder",
            "--out",
            dir.resolve("file/out").toString());
    assertEquals(2, ran.code());
    assertEquals(1, ran.err().lines().count(), ran.err());
    assertTrue(ran.err().contains("cannot be written"), ran.err());
    assertEquals(List.of("file", "in.csv"), below(dir));
  }

  @Test
  void errorsShowNoStackTraceUnlessAsked() throws Exception {
    Ran plain = screen("absent.csv");
    assertFalse(plain.err().contains("\tat "), plain.err());
    Ran traced = screen("absent.csv", "--trace");
    assertTrue(traced.err().contains("\tat "), traced.err());
    assertTrue(traced.err().startsWith(plain.err()), traced.err());
  }

  @Test
  void brokenRowsAreSetAsideWithTheirReasonsAndTheRestGoesOn() throws Exception {
    String big = "x".repeat(10 << 20);
    write(
        "in.csv",
        HEADER
            + "W-11,\"alder\" x,1,,,\n"
            + "W-12,too few\n"
            + ",alder,1,,,\n"
            + "W-14,alder,1,"
            + big
            + ",,\n"
            + "W-15,al\0der,1,,,\n"
            + GOOD
            + "W-17,alder,120,\"never closed,38,40\n"
            + BAD);
    Ran ran = screen("in.csv");
    assertEquals(0, ran.code(), ran.err());
    List<String> aside = Files.readAllLines(dir.resolve("out/set-aside.csv"));
    assertEquals(7, aside.size(), () -> "" + aside);
    for (int i = 1; i < aside.size(); i++) {
      assertTrue(aside.get(i).length() < 600, "a quoted row is cut");
    }
    List<String> records = Files.readAllLines(dir.resolve("out/records.csv"));
    assertEquals(3, records.size(), () -> "" + records);
    assertTrue(records.get(1).startsWith("W-1,in.csv,"), records.get(1));
    assertTrue(records.get(2).startsWith("W-2,in.csv,"), records.get(2));
  }

  @Test
  void deepJsonIsSetAsideAndTheRestGoesOn() throws Exception {
    String deep = "[".repeat(5000) + "]".repeat(5000);
    write(
        "in.ndjson",
        "{\"record\":{\"id\":\"W-1\"},\"well\":"
            + deep
            + "}\n"
            + "{\"record\":{\"id\":\"W-2\"}}\n");
    Ran ran = screen("in.ndjson");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().startsWith("2 rows read: 1 screened, 1 set aside"), ran.out());
  }

  @Test
  void unitOfTheWrongDimensionIsQuotedAndItsRulesCannotBeTold() throws Exception {
    write("in.csv", HEADER + "W-1,alder,40 gpm,T1,38,40\n");
    Ran ran = screen("in.csv", "--outcomes");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(Files.readString(dir.resolve("out/sheets/W-1.html")).contains("40 gpm"));
    assertTrue(
        Files.readAllLines(dir.resolve("out/outcomes.csv"))
            .contains("W-1,in.csv,2,alder,septic-tank-distance,cannot tell,,setback.septic_tank"));
  }

  @Test
  void formulaInATextIsDefused() throws Exception {
    write("in.csv", HEADER + "=1+1,alder,40,T1,38,40\n");
    screen("in.csv");
    String findings = Files.readString(dir.resolve("out/findings.csv"));
    assertTrue(findings.contains("\n'=1+1,in.csv,2,alder,septic-tank-distance,"), findings);
    assertTrue(
        Files.readString(dir.resolve("out/findings.json")).contains("\"record_id\": \"=1+1\""));
  }

  private Ran screen(String records, String... more) {
    List<String> arguments = new ArrayList<>();
    arguments.add("screen");
    arguments.add(dir.resolve(records).toString());
    arguments.addAll(List.of("--rules", PACKS + "alder", "--out", dir.resolve("out").toString()));
    if (Stream.of(more).noneMatch(option -> option.startsWith("--as-of"))) {
      arguments.addAll(List.of("--as-of", "2026-01-01"));
    }
    arguments.addAll(List.of(more));
    return Ran.with(arguments.toArray(String[]::new));
  }

  private void assertFails(int code, Ran ran, String saying) throws IOException {
    assertEquals(code, ran.code(), ran.err());
    assertEquals(1, ran.err().lines().count(), ran.err());
    assertTrue(ran.err().contains(saying), ran.err());
    assertEquals("", ran.out());
    assertNothingWritten();
  }

  private void assertNothingWritten() throws IOException {
    assertTrue(
        below(dir).stream().noneMatch(name -> name.contains("out")), () -> "out was written");
  }

  private void write(String name, String text) throws IOException {
    Path file = dir.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private static List<String> below(Path folder) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      return walk.filter(path -> !path.equals(folder))
          .map(path -> folder.relativize(path).toString())
          .sorted()
          .toList();
    }
  }

  private String page(String name) throws IOException {
    return Files.readString(dir.resolve("out").resolve(name));
  }
}
