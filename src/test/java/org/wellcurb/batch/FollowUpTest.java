package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wellcurb.report.IdleVariance;
import org.wellcurb.report.KindCounts;
import org.wellcurb.report.SinceCounts;
import org.wellcurb.screening.VarianceUse.Does;

/** Earlier reports, settled findings and answers that came back with notices. */
class FollowUpTest {
  private static final String HEADER =
      "record.id,driller.licence,relief.setting [psi],pressure.cut_out [psi],pump.control\n";
  private static final String RULE = "relief-above-cut-out";

  @TempDir Path dir;

  private ScreenSummary run(String out, LookOptions looks, String... rows) throws Exception {
    return run(out, "common-practice", looks, rows);
  }

  private ScreenSummary run(String out, String pack, LookOptions looks, String... rows)
      throws Exception {
    Path records =
        Files.writeString(
            dir.resolve("wells.csv"), HEADER + String.join(",switch\n", rows) + ",switch\n");
    return Runs.run(Runs.request(dir.resolve(out), List.of(pack), records).with(looks));
  }

  private LookOptions earlier(String out) {
    return new LookOptions(true, null, null, dir.resolve(out));
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(dir.resolve(name), text);
  }

  private SinceCounts since(ScreenSummary summary) {
    SinceCounts since = summary.followUp().since();
    assertNotNull(since);
    return since;
  }

  @Test
  void saysWhatIsNewStillThereClearedAndGone() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,50,60", "B,D1,50,60", "C,D2,75,60", "D,D2,50,60");
    ScreenSummary second =
        run("second", earlier("first"), "A,D1,50,60", "B,D1,80,60", "C,D2,40,60", "E,D3,40,60");
    // A stays, B was mended, C is short now, D is not in the batch, E was not in the earlier one.
    assertEquals(new SinceCounts(1, 1, 1, 0, 0, 1, 0, 1, 0), since(second));
    List<Map<String, String>> lines = Runs.rows(dir.resolve("second/since.csv"));
    assertEquals(
        List.of(
            "A still there",
            "C new",
            "E record not in the earlier batch",
            "B cleared",
            "D record not in this batch"),
        lines.stream().map(line -> line.get("record_id") + " " + line.get("change")).toList());
    assertEquals("D1", lines.get(3).get("licence"), "whose it is, of a finding that is gone");
    assertTrue(Files.readString(dir.resolve("second/since.html")).contains("Cleared"));
    assertTrue(Files.readString(dir.resolve("second/index.html")).contains("since.html"));
  }

  @Test
  void aRecordThatReadsTheSameIsJudgedOtherwise() throws Exception {
    run("first", "common-practice", LookOptions.PLAIN, "A,D1,65,60");
    assertEquals(0, Runs.rows(dir.resolve("first/findings.csv")).size());
    ScreenSummary second = run("second", "fenwick-county", earlier("first"), "A,D1,65,60");
    assertTrue(since(second).judgedShort() > 0);
    assertEquals(0, since(second).added());
    String page = Files.readString(dir.resolve("second/since.html"));
    assertTrue(page.contains("Pack fenwick-county was not in the earlier run; "), page);
  }

  @Test
  void aChangedRecordIsNotJudgedOtherwise() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,75,60");
    SinceCounts since = since(run("second", earlier("first"), "A,D1,50,60"));
    assertEquals(new SinceCounts(1, 0, 0, 0, 0, 0, 0, 0, 0), since);
  }

  @Test
  void marksDoNotHangOnTheOrderOfColumns() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,75,60");
    Path records =
        file(
            "wells2.csv",
            "pump.control,pressure.cut_out,relief.setting,record.id,driller.licence\n"
                + "switch,60,75,A,D1\n");
    Runs.run(Runs.request(dir.resolve("second"), List.of("common-practice"), records));
    assertEquals(
        Files.readString(dir.resolve("first/marks.txt")),
        Files.readString(dir.resolve("second/marks.txt")));
  }

  /** A row moved is no finding that is new, nor one that is cleared. */
  @Test
  void whereANumberRepeatsWhatARecordSaysTellsItWhereverItStands() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,50,60", "A,D1,75,60", "B,D2,50,60", "A,D3,40,60");
    ScreenSummary second =
        run("second", earlier("first"), "A,D3,40,60", "A,D1,75,60", "A,D1,50,60");
    assertEquals(new SinceCounts(0, 2, 0, 0, 0, 1, 0, 0, 0), since(second));
    String page = Files.readString(dir.resolve("second/since.html"));
    assertTrue(page.contains("2 findings were laid beside the earlier record that says"), page);
  }

  /** One of two was mended and stands elsewhere: the only one left is the one it was. */
  @Test
  void whereANumberRepeatsTheOneThatIsLeftIsTheOneThatWasMended() throws Exception {
    run("first", LookOptions.PLAIN, "B,D2,75,60", "A,D1,50,60", "A,D1,40,60");
    ScreenSummary second = run("second", earlier("first"), "A,D1,80,60", "A,D1,50,60");
    assertEquals(new SinceCounts(0, 1, 1, 0, 0, 0, 0, 0, 0), since(second));
    assertEquals(
        List.of("A still there", "A cleared"),
        Runs.rows(dir.resolve("second/since.csv")).stream()
            .map(line -> line.get("record_id") + " " + line.get("change"))
            .toList());
    String page = Files.readString(dir.resolve("second/since.html"));
    assertTrue(page.contains("One finding is of the only record of its number"), page);
  }

  /** The limit was lowered and the record moved, changed in what the rule does not read. */
  @Test
  void whereANumberRepeatsWhatWentWithTheLimitIsNotCleared() throws Exception {
    String pack = limit("60");
    run("first", pack, LookOptions.PLAIN, "B,D2,75,60", "A,D1,50,60", "A,D1,30,60");
    limit("45");
    ScreenSummary second = run("second", pack, earlier("first"), "A,D3,50,60", "A,D1,30,60");
    assertEquals(new SinceCounts(0, 1, 0, 0, 1, 0, 0, 0, 0), since(second));
  }

  @Test
  void whereANumberRepeatsAndMoreThanOneIsUnlikeTheRowTells() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,50,60", "A,D1,75,60");
    SinceCounts since = since(run("second", earlier("first"), "A,D2,76,60", "A,D2,50,60"));
    assertEquals(new SinceCounts(1, 0, 1, 0, 0, 0, 0, 0, 0), since);
  }

  @Test
  void aRowThatIsAddedUnderANumberIsNew() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,50,60");
    ScreenSummary second = run("second", earlier("first"), "A,D1,45,60", "A,D1,50,60");
    assertEquals(new SinceCounts(0, 1, 0, 0, 0, 0, 0, 1, 0), since(second));
  }

  /** Two files, one number: what one licence mended and the other broke are two things. */
  @Test
  void whereANumberRepeatsInTwoFilesEachIsLaidBesideItsOwn() throws Exception {
    twoFiles("first", LookOptions.PLAIN, "A,LIC-A,50,60", "A,LIC-B,75,60");
    SinceCounts since =
        since(twoFiles("second", earlier("first"), "A,LIC-A,75,60", "A,LIC-B,50,60"));
    assertEquals(new SinceCounts(1, 0, 1, 0, 0, 0, 0, 0, 0), since);
    assertEquals(
        List.of("LIC-B b.csv new", "LIC-A a.csv cleared"),
        Runs.rows(dir.resolve("second/since.csv")).stream()
            .map(line -> line.get("licence") + " " + line.get("file") + " " + line.get("change"))
            .toList());
  }

  private ScreenSummary twoFiles(String out, LookOptions looks, String a, String b)
      throws Exception {
    Path one = file("a.csv", HEADER + a + ",switch\n");
    Path two = file("b.csv", HEADER + b + ",switch\n");
    return Runs.run(
        Runs.request(dir.resolve(out), List.of("common-practice"), one, two).with(looks));
  }

  /** A contractor whose records vanish does not vanish with them. */
  @Test
  void aRecordThatIsGoneKeepsItsLicence() throws Exception {
    run("first", LookOptions.PLAIN, "A,LIC-A,50,60", "B,LIC-B,50,60");
    run("second", earlier("first"), "A,LIC-A,50,60");
    Map<String, String> gone = Runs.rows(dir.resolve("second/since.csv")).get(1);
    assertEquals("record not in this batch", gone.get("change"));
    assertEquals("LIC-B", gone.get("licence"));
    assertTrue(Files.readString(dir.resolve("second/since.html")).contains("LIC-B"));
  }

  @Test
  void oneLicenceIsOneLineOfWhatChanged() throws Exception {
    run("first", LookOptions.PLAIN, "A,LIC-C,50,60", "B,lic-c ,50,60");
    run("second", earlier("first"), "A,LIC-C,50,60", "B,lic-c ,80,60");
    String page = Files.readString(dir.resolve("second/since.html"));
    String table =
        page.substring(page.indexOf("id=\"list-contractors\""), page.indexOf("id=\"list-rules\""));
    assertTrue(table.contains("LIC-C"), table);
    assertFalse(table.contains("lic-c"), table);
  }

  @Test
  void equalTitlesOfTwoPacksAreTwoRules() {
    GroupedChanges rules = new GroupedChanges();
    rules.add("one, r", "Relief valve set high enough", SinceCounts.Change.NEW);
    rules.add("two, r", "Relief valve set high enough", SinceCounts.Change.NEW);
    rules.add("two, s", "Casing", SinceCounts.Change.NEW);
    assertEquals(
        List.of(
            "Casing ()",
            "Relief valve set high enough (one, r)",
            "Relief valve set high enough (two, r)"),
        rules.lines().stream().map(each -> each.name() + " (" + each.apart() + ")").toList());
  }

  /** Who strikes out the figure that fell short, or writes a wide range, has cleared nothing. */
  @Test
  void whatCanNoLongerBeToldIsNotCleared() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,50,60", "B,D1,50,60", "C,D2,50,60", "D,D2,50,60");
    ScreenSummary second =
        run("second", earlier("first"), "A,D1,,60", "B,D1,80,60", "C,D2,40-90,60", "D,D2,50,");
    assertEquals(new SinceCounts(0, 0, 1, 0, 0, 0, 3, 0, 0), since(second));
    assertEquals(
        List.of(
            "A cannot be told any more",
            "B cleared",
            "C cannot be told any more",
            "D cannot be told any more"),
        Runs.rows(dir.resolve("second/since.csv")).stream()
            .map(line -> line.get("record_id") + " " + line.get("change"))
            .toList());
    String page = Files.readString(dir.resolve("second/since.html"));
    assertTrue(page.contains("cleared: 1; cannot be told any more: 3"), page);
    String index = Files.readString(dir.resolve("second/index.html"));
    assertTrue(
        index.contains("1 cleared, 0 said not to apply, 3 that cannot be told any more;"), index);
  }

  /** Nor has who writes n/a over it. */
  @Test
  void whatBecameNotApplicableIsNotCleared() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,50,60", "B,D1,50,60");
    ScreenSummary second = run("second", earlier("first"), "A,D1,n/a,60", "B,D1,80,60");
    assertEquals(new SinceCounts(0, 0, 1, 0, 0, 0, 1, 0, 0), since(second));
  }

  /** Rows were added under a number, and which is the old one nothing tells: it is not gone. */
  @Test
  void anEarlierRecordThatMayBeAnyOfSeveralIsNotGone() throws Exception {
    run("first", LookOptions.PLAIN, "B,D1,80,60", "A,D1,50,60");
    ScreenSummary second =
        run("second", earlier("first"), "B,D1,80,60", "C,D1,80,60", "A,D1,80,60", "A,D1,90,60");
    assertEquals(new SinceCounts(0, 0, 0, 0, 0, 0, 1, 0, 0), since(second));
  }

  /** The same where one number stands on several rows, and in a report that kept no marks. */
  @Test
  void whereANumberRepeatsWhatCanNoLongerBeToldIsThatOfItsRow() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,50,60", "A,D2,45,60", "B,D1,50,60");
    SinceCounts since =
        since(run("second", earlier("first"), "A,D1,80,60", "A,D2,,60", "B,D1,,60"));
    assertEquals(new SinceCounts(0, 0, 1, 0, 0, 0, 2, 0, 0), since);
    Path marks = dir.resolve("first/marks.txt");
    Files.write(
        marks, Files.readAllLines(marks).stream().map(line -> line.split("\t")[0]).toList());
    SinceCounts unmarked =
        since(run("third", earlier("first"), "A,D1,80,60", "A,D2,,60", "B,D1,,60"));
    assertEquals(new SinceCounts(0, 0, 1, 0, 0, 0, 2, 0, 0), unmarked);
  }

  /** Another entry was changed, and the limit was lowered: nobody cleared anything. */
  @Test
  void whatWentWithTheLimitIsNotClearedByAnUnrelatedChange() throws Exception {
    String pack = limit("60");
    run("first", pack, LookOptions.PLAIN, "A,D1,50,60", "B,D1,40,60", "C,D1,30,60");
    limit("45");
    // Of A the licence was corrected, of B what the rule reads, of C neither is enough.
    ScreenSummary second =
        run("second", pack, earlier("first"), "A,D2,50,60", "B,D1,80,60", "C,D2,35,60");
    assertEquals(new SinceCounts(0, 1, 1, 0, 1, 0, 0, 0, 0), since(second));
    assertEquals(
        List.of("C still there", "A no longer short, judged otherwise", "B cleared"),
        Runs.rows(dir.resolve("second/since.csv")).stream()
            .map(line -> line.get("record_id") + " " + line.get("change"))
            .toList());
  }

  /** A later day makes no relief valve fall short: what is new there is the record's doing. */
  @Test
  void onlyOfRulesThatReadTheDayANewFindingMayBeDueToIt() throws Exception {
    String header = "record.id,driller.licence,pump.control,pressure.cut_out [psi],";
    Path records = dir.resolve("wells.csv");
    for (String[] each :
        new String[][] {
          {"relief.setting [psi]", "80", "50", "no"},
          {"dates.received", "2025-03-01", "2090-01-01", "yes"}
        }) {
      Files.writeString(records, header + each[0] + "\nA,D1,switch,60," + each[1] + "\n");
      Path first = dir.resolve("first" + each[3]);
      Runs.run(Runs.request(first, List.of("common-practice"), records));
      Files.writeString(records, header + each[0] + "\nA,D1,switch,60," + each[2] + "\n");
      Path second = dir.resolve("second" + each[3]);
      ScreenSummary summary =
          Runs.run(
              ScreenRequest.plain(
                      List.of(records.toString()),
                      List.of("common-practice"),
                      second,
                      Runs.AS_OF.plusMonths(1))
                  .with(new LookOptions(true, null, null, first)));
      assertEquals(1, since(summary).added(), each[0]);
      String page = Files.readString(second.resolve("since.html"));
      assertTrue(page.contains("The as-of date was"), page);
      assertEquals(each[3].equals("yes"), page.contains("may be due to either"), page);
    }
  }

  /** Its record changed in something else, and the rule was not there before. */
  @Test
  void aFindingByARuleThatDidNotRunIsJudgedOtherwise() throws Exception {
    String pack = limit("60");
    run("first", pack, LookOptions.PLAIN, "A,D1,70,60");
    limit("80", "relief-higher");
    SinceCounts since = since(run("second", pack, earlier("first"), "A,D2,70,60"));
    assertEquals(new SinceCounts(0, 0, 0, 1, 0, 0, 0, 0, 0), since);
  }

  /** The limit was raised and the record changed: which of them made the finding is not kept. */
  @Test
  void whatMayBeDueToTheRulesIsNewAndSaidToBeUnsure() throws Exception {
    String pack = limit("60");
    run("first", pack, LookOptions.PLAIN, "A,D1,70,60", "B,D1,70,60");
    limit("80");
    SinceCounts since = since(run("second", pack, earlier("first"), "A,D2,70,60", "B,D1,70,60"));
    assertEquals(new SinceCounts(1, 0, 0, 1, 0, 0, 0, 0, 0), since);
    String page = Files.readString(dir.resolve("second/since.html"));
    assertTrue(page.contains("One of the new findings is in a record that was changed"), page);
    run("third", pack, earlier("first"), "A,D1,70,60", "B,D1,70,60");
    page = Files.readString(dir.resolve("third/since.html"));
    assertFalse(page.contains("One of the new findings"), page);
  }

  /** A pack of our own invention with one limit of so many psi. */
  private String limit(String psi) throws IOException {
    return limit(psi, "relief");
  }

  private String limit(String psi, String rule) throws IOException {
    Path folder = Files.createDirectories(dir.resolve("own"));
    Files.writeString(
        folder.resolve("pack.json"),
        """
        {"pack": "own", "title": "Own (invented)", "authority": "Own Office (invented)",
         "edition": "2024-04-01", "judgedBy": "dates.completed",
         "sources": {"s": {"basis": "invented", "title": "Own by-law", "section": "1"}},
         "rules": [{"id": "RULE", "title": "Relief valve opens high enough",
          "kind": "deficiency", "require": "relief.setting >= LIMIT psi", "because": "It drips.",
          "remedy": "Fit another valve.", "source": "s", "examples": [
           {"given": {"relief.setting": "LIMIT psi"}, "expect": "meets"},
           {"given": {"relief.setting": "1 psi"}, "expect": "falls short"}]}]}
        """
            .replace("LIMIT", psi)
            .replace("RULE", rule));
    return folder.toString();
  }

  /** Reports of before the marks by rule can still be laid beside. */
  @Test
  void anOlderReportIsReadAndSaysWhatItDoesNotKeep() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,50,60", "B,D2,50,60", "C,D3,50,60");
    Path marks = dir.resolve("first/marks.txt");
    Files.write(
        marks, Files.readAllLines(marks).stream().map(line -> line.split("\t")[0]).toList());
    ScreenSummary second = run("second", earlier("first"), "A,D1,50,60", "B,D2,80,60");
    assertEquals(new SinceCounts(0, 1, 1, 0, 0, 1, 0, 0, 0), since(second));
    List<Map<String, String>> lines = Runs.rows(dir.resolve("second/since.csv"));
    assertEquals("D2", lines.get(1).get("licence"), "from this run, where its record is here");
    assertEquals("", lines.get(2).get("licence"));
    String page = Files.readString(dir.resolve("second/since.html"));
    assertTrue(page.contains("does not keep what each rule read"), page);
  }

  /** Nothing is known of what its records said: the row is all there is. */
  @Test
  void anOlderReportTellsARepeatedNumberByItsRow() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,50,60", "A,D2,40,60");
    Files.delete(dir.resolve("first/marks.txt"));
    assertEquals(
        new SinceCounts(0, 2, 0, 0, 0, 0, 0, 0, 0),
        since(run("second", earlier("first"), "A,D1,50,60", "A,D2,40,60")));
    String page = Files.readString(dir.resolve("second/since.html"));
    assertTrue(page.contains("2 findings were told by file and row"), page);
  }

  @Test
  void anEarlierReportMayBeTheOneThatIsReplaced() throws Exception {
    run("out", LookOptions.PLAIN, "A,D1,50,60");
    assertEquals(1, since(run("out", earlier("out"), "A,D1,50,60")).still());
  }

  @Test
  void whatIsNoReportIsRefused() {
    RunFailure failure =
        assertThrows(RunFailure.class, () -> run("out", earlier("nothing"), "A,D1,50,60"));
    assertEquals(RunFailure.Kind.UNUSABLE, failure.kind());
    assertTrue(String.valueOf(failure.getMessage()).contains("findings.csv"));
  }

  /** Nothing falls short, so that no sheet says it. */
  @Test
  void variancesThatMatchNothingAreReported() throws Exception {
    Path records =
        file(
            "wells.csv",
            "record.id,record.variances,relief.setting,pressure.cut_out\n"
                + "A,relief above cutout: ZZ-9,75,60\nB,relief-above-cut-out: YY-8,75,60\n"
                + "C,relief-above-cut-out: YY-9,60,60\nD,variance 12,75,60\n");
    ScreenSummary summary =
        Runs.run(Runs.request(dir.resolve("out"), List.of("common-practice"), records));
    assertEquals(
        List.of(
            new IdleVariance(
                "A", "relief above cutout", "ZZ-9", Does.NO_RULE, "relief-above-cut-out"),
            new IdleVariance("B", "relief-above-cut-out", "YY-8", Does.MET, ""),
            new IdleVariance("D", "variance 12", "", Does.NO_RULE, "")),
        summary.followUp().idleVariances());
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(
        page.contains("3 variances waive nothing; 2 of them name a rule that the pack"), page);
    assertTrue(page.contains("Was this rule meant: relief-above-cut-out?"), page);
    assertTrue(
        page.contains("B, relief-above-cut-out: YY-8. It waives nothing here: the record meets"),
        page);
    assertEquals(
        """
        record_id,file,row,pack,rule,reference,does,near_rule
        A,wells.csv,2,common-practice,relief above cutout,ZZ-9,no such rule,relief-above-cut-out
        B,wells.csv,3,common-practice,relief-above-cut-out,YY-8,already met,
        C,wells.csv,4,common-practice,relief-above-cut-out,YY-9,waives,
        D,wells.csv,5,common-practice,variance 12,,no such rule,
        """,
        Files.readString(dir.resolve("out/variances.csv")));
  }

  @Test
  void settledFindingsStayFindingsAndAreNotOpen() throws Exception {
    Path settled =
        file(
            "settled.csv",
            "record_id,rule,decision,by,date,note\n"
                + "A,"
                + RULE
                + ",accepted,Inspector 4,2025-11-02,seen on site\n"
                + "Z,"
                + RULE
                + ",accepted,Inspector 4,2025-11-02,\n");
    ScreenSummary summary =
        run("out", new LookOptions(true, null, settled, null), "A,D1,50,60", "B,D1,50,60");
    assertEquals(1, summary.withFindings());
    assertEquals(new KindCounts(1, 0, 0, 0), summary.findings());
    assertEquals(1, summary.followUp().settled());
    assertEquals("Z", summary.followUp().settledUnmatched().get(0).recordId());
    assertEquals(2, Runs.rows(dir.resolve("out/findings.csv")).size());
    String sheet = Files.readString(dir.resolve("out/sheets/A.html"));
    assertTrue(sheet.contains("accepted (Inspector 4, 2025-11-02). seen on site"), sheet);
    String notice = Files.readString(dir.resolve("out/notices/D1.csv"));
    assertFalse(notice.contains("A,wells.csv"), notice);
    assertTrue(notice.contains("B,wells.csv"), notice);
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("One finding was settled"), page);
    assertTrue(page.contains("line 3: Z, " + RULE), page);
  }

  /** A decision on 50 psi says nothing of 55 psi: it holds until somebody looks, and is named. */
  @Test
  void whatWasSettledOfAnotherFigureIsNamed() throws Exception {
    Path settled =
        file(
            "settled.csv",
            "record_id,rule,decision,by,date,note,written\n"
                + ("A," + RULE + ",accepted,Inspector 4,2025-11-02,,50\n")
                + ("B," + RULE + ",accepted,Inspector 4,2025-11-02,,50\n")
                + ("C," + RULE + ",accepted,Inspector 4,2025-11-02,,\n"));
    ScreenSummary summary =
        run(
            "out",
            new LookOptions(true, null, settled, null),
            "A,D1,50,60",
            "B,D1,55,60",
            "C,D1,50,60");
    assertEquals(3, summary.followUp().settled());
    assertEquals(0, summary.withFindings());
    var otherwise = summary.followUp().settledOtherwise();
    assertEquals(1, otherwise.size(), otherwise::toString);
    assertEquals("B", otherwise.get(0).settlement().recordId());
    assertEquals("55", otherwise.get(0).now());
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(
        page.contains("line 3: B, " + RULE + ": \u201c50\u201d became \u201c55\u201d"), page);
    assertTrue(
        Files.readString(dir.resolve("out/sheets/B.html")).contains("look at it again"), "B");
    assertFalse(
        Files.readString(dir.resolve("out/sheets/A.html")).contains("look at it again"), "A");
    String json = Files.readString(dir.resolve("out/run.json"));
    assertTrue(json.contains("\"settledOtherwise\": 1"), json);
  }

  @Test
  void aReturnedTableShowsWhatItSettles() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,50,60", "B,D1,50,60");
    String table = Files.readString(dir.resolve("first/notices/D1.csv"));
    String[] lines = table.split("\n");
    assertTrue(lines[1].endsWith("relief.setting,50,,n/a,n/a,"), lines[1]);
    Path answers =
        file(
            "returned.csv",
            lines[0]
                + "\n"
                + lines[1].replace(",50,,", ",50,517 kPa,")
                + "typed wrong\n"
                + lines[2]
                + "it was read twice\n"
                + "9,Q,wells.csv,9,D1,x,,relief.setting,,75,,,\n");
    ScreenSummary summary =
        run(
            "second",
            new LookOptions(true, answers, null, dir.resolve("first")),
            "A,D1,50,60",
            "B,D1,50,60");
    assertEquals(new SinceCounts(0, 1, 1, 0, 0, 0, 0, 0, 0), since(summary));
    assertEquals(1, summary.followUp().corrections());
    assertEquals(List.of("4: Q"), summary.followUp().answersUnmatched());
  }

  @Test
  void aBareNumberIsInTheUnitThatStoodThere() throws Exception {
    Path answers = file("returned.csv", "record_id,entry,corrected\nA,relief.setting,450\n");
    Path records =
        file("wells.csv", "record.id,relief.setting,pressure.cut_out\nA,350 kPa,400 kPa\n");
    Runs.run(
        Runs.request(dir.resolve("out"), List.of("common-practice"), records)
            .with(new LookOptions(true, answers, null, null)));
    assertEquals(0, Runs.rows(dir.resolve("out/findings.csv")).size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"record_id,rule\\nA,x|:1: --settled needs a column decision", "''|is empty"})
  void aTableOfSettledFindingsThatCannotBeUsed(String text, String said) throws Exception {
    Path settled = file("settled.csv", text.replace("\\n", "\n"));
    RunFailure failure =
        assertThrows(
            RunFailure.class,
            () -> run("out", new LookOptions(true, null, settled, null), "A,D1,50,60"));
    assertTrue(String.valueOf(failure.getMessage()).contains(said), failure.getMessage());
    assertFalse(Files.exists(dir.resolve("out")));
  }

  /** One fault after the other, run by run, is no way to mend a table. */
  @Test
  void linesOfTheTableThatAreFaultyAreNamedAllAtOnceAndTheOthersHold() throws Exception {
    String end = RULE + ",ok,me,2025-01-01,n\n";
    Path settled =
        file(
            "settled.csv",
            "record_id,rule,decision,by,date,note\n"
                + "A,"
                + end
                + "A,"
                + RULE
                + ",,me,2025-01-01,\n"
                + "A,"
                + RULE
                + ",ok,me,31/31/2024,\n"
                + "\"B,"
                + end
                + "A,"
                + RULE
                + "\n"
                + "\"A\"b,"
                + end
                + "A,"
                + RULE
                + ",ok,me,2026-01-02,\n"
                + "c,"
                + end
                + "D,"
                + end
                + "D,"
                + end.replace("ok", "no")
                + "E,"
                + end.replace(",n\n", ",n,more\n")
                + "C,"
                + RULE
                + ",ok,me,2025-01-01,\"two\nlines\"\n");
    ScreenSummary summary =
        run(
            "out",
            new LookOptions(true, null, settled, null),
            "A,D1,50,60",
            "B,D1,50,60",
            "C,D1,50,60",
            "D,D1,50,60");
    assertEquals(2, summary.followUp().settled(), "A and C");
    assertEquals(
        List.of(
            "settled.csv:3 BLANK",
            "settled.csv:4 NO_DAY",
            "settled.csv:5 OPEN_QUOTE",
            "settled.csv:6 CELLS",
            "settled.csv:7 AFTER_QUOTE",
            "settled.csv:8 LATER",
            "settled.csv:10 TWO_DECISIONS",
            "settled.csv:11 TWO_DECISIONS",
            "settled.csv:12 CELLS",
            "settled.csv:9 CASE"),
        summary.followUp().refused().stream()
            .map(each -> each.place() + " " + each.why())
            .toList());
    assertEquals(
        List.of("ok (me, 2025-01-01)", "", "ok (me, 2025-01-01)", ""),
        Runs.rows(dir.resolve("out/findings.csv")).stream()
            .map(line -> line.get("settled"))
            .toList());
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("its number differs in case from one of the batch (c, "), page);
    String map = Files.readString(dir.resolve("out/findings.json"));
    assertTrue(map.contains("\"settled\": \"ok (me, 2025-01-01)\""), map);
  }

  /** "It stands, because" is what the notice asks for: it is not to be lost. */
  @Test
  void whatALicenceExplainsIsListedAndMakesADraftOfSettledFindings() throws Exception {
    run("first", LookOptions.PLAIN, "A,D1,50,60", "B,D1,50,60", "C,D2,50,60");
    String[] lines = Files.readString(dir.resolve("first/notices/D1.csv")).split("\n");
    Path answers =
        file(
            "returned.csv",
            lines[0]
                + "\n"
                + lines[1]
                + "=it stands\n"
                + lines[2].replace(",50,,", ",50,80 psi,")
                + "typed wrong\n"
                + lines[1].replace(",A,", ",C,")
                + "not theirs\n");
    ScreenSummary summary =
        run(
            "out",
            new LookOptions(true, answers, null, null),
            "A,D1,50,60",
            "B,D1,50,60",
            "C,D2,50,60");
    assertEquals(3, summary.followUp().explainedTotal());
    assertEquals(1, summary.followUp().corrections());
    List<Map<String, String>> drafts = Runs.rows(dir.resolve("out/explained.csv"));
    assertEquals(
        List.of("A '=it stands yes", "B typed wrong yes", "C not theirs no"),
        drafts.stream()
            .map(d -> d.get("record_id") + " " + d.get("note") + " " + d.get("in_this_batch"))
            .toList());
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("3 explanations came back"), page);
    Path settled =
        file(
            "settled.csv",
            Files.readString(dir.resolve("out/explained.csv"))
                .replaceFirst(",,,,", ",accepted,me,2025-01-01,"));
    ScreenSummary next =
        run(
            "next",
            new LookOptions(true, null, settled, null),
            "A,D1,50,60",
            "B,D1,80,60",
            "C,D2,50,60");
    assertEquals(1, next.followUp().settled());
    assertEquals(2, next.followUp().refusedTotal(), "what nobody decided");
  }

  /** Nobody has seen whether it is so: it is not to pass for something that was put right. */
  @Test
  void whatIsSaidNotToApplyIsCountedApart() throws Exception {
    String pack = "tarn-district";
    run("first", pack, LookOptions.PLAIN, "A,,50,60", "B,,50,60");
    Path answers =
        file(
            "returned.csv",
            "record_id,rule,entry,corrected,explanation\n"
                + "A,driller-named,driller.licence,n/a,\nB,driller-named,driller.licence,D9,\n");
    ScreenSummary second =
        run(
            "second",
            pack,
            new LookOptions(true, answers, null, dir.resolve("first")),
            "A,,50,60",
            "B,,50,60");
    assertEquals(
        List.of("A said not to apply", "B cleared"),
        Runs.rows(dir.resolve("second/since.csv")).stream()
            .filter(line -> "driller-named".equals(line.get("rule")))
            .map(line -> line.get("record_id") + " " + line.get("change"))
            .toList());
    assertEquals(1, since(second).saidVoid());
    assertEquals(2, second.followUp().corrections(), "both apply");
    assertEquals(1, second.followUp().saidVoidTotal());
    assertEquals(0, second.followUp().explainedTotal());
    assertEquals(
        List.of("A driller-named n/a yes"),
        Runs.rows(dir.resolve("second/explained.csv")).stream()
            .map(
                line ->
                    String.join(
                        " ",
                        line.get("record_id"),
                        line.get("rule"),
                        line.get("corrected"),
                        line.get("in_this_batch")))
            .toList());
    String page = Files.readString(dir.resolve("second/index.html"));
    assertTrue(page.contains("One answer says n/a of an entry that was blank"), page);
    assertTrue(page.contains("1 said not to apply"), page);
    String json = Files.readString(dir.resolve("second/run.json"));
    assertTrue(json.contains("\"answersNotToApply\": 1"), json);
  }
}
