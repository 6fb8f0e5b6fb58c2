package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wellcurb.report.Corrected;
import org.wellcurb.report.Refused;

/** Which record an answer or a settled line means, and which answers are not taken. */
class AnswersRunTest {
  private static final String HEADER =
      "record.id,driller.licence,relief.setting [psi],pressure.cut_out [psi],pump.control,"
          + "well.depth [ft]\n";
  private static final String RULE = "relief-above-cut-out";
  private static final String COLUMNS =
      "record_id,file,row,licence,entry,corrected,sampled,laboratory\n";

  @TempDir Path dir;

  private void records(String name, String... rows) throws IOException {
    Files.createDirectories(dir.resolve("in"));
    Files.writeString(dir.resolve("in").resolve(name), HEADER + String.join("\n", rows) + "\n");
  }

  private ScreenSummary answered(String rows) throws Exception {
    Path answers = Files.writeString(dir.resolve("returned.csv"), COLUMNS + rows + "\n");
    return run(new LookOptions(true, answers, null, null));
  }

  private ScreenSummary run(LookOptions looks) throws Exception {
    return run("common-practice", looks);
  }

  private ScreenSummary run(String pack, LookOptions looks) throws Exception {
    return Runs.run(Runs.request(dir.resolve("out"), List.of(pack), dir.resolve("in")).with(looks));
  }

  /** Records that fall short of the rule, by file and number. */
  private Set<String> shortRecords() throws IOException {
    return Runs.rows(dir.resolve("out/findings.csv")).stream()
        .filter(row -> row.get("rule").equals(RULE))
        .map(row -> row.get("file") + " " + row.get("record_id"))
        .collect(Collectors.toSet());
  }

  @ParameterizedTest
  @CsvSource({
    "banana,UNREADABLE",
    "unknown,NOTHING",
    "n/a,NOT_APPLICABLE",
    "40-90,LESS",
    "70.1-1000,LESS",
    "0-49,LESS",
    ">=75,LESS",
  })
  void anAnswerThatSaysLessIsReportedAndNotApplied(String text, Refused.Why why) throws Exception {
    records("a.csv", "1,LIC-A,50,60,switch,100");
    ScreenSummary summary = answered("1,a.csv,2,LIC-A,relief.setting," + text);
    assertEquals(Set.of("a.csv 1"), shortRecords(), "the finding stays");
    assertEquals(
        List.of(new Refused("returned.csv:2", "1, relief.setting: " + text, why)),
        summary.followUp().refused());
    assertEquals(0, summary.followUp().corrections());
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("returned.csv:2: " + why.label()), page);
    String json = Files.readString(dir.resolve("out/run.json"));
    assertTrue(json.contains("\"answersNotApplied\": 1"), json);
  }

  /** A figure written as a range may be answered by one that is no wider, or by a figure. */
  @ParameterizedTest
  @CsvSource({"72-76,1", "75,1", "40-60,1", "60-90,0", "10-1000,0"})
  void aRangeIsAnsweredByOneThatIsNoWider(String text, long applied) throws Exception {
    records("a.csv", "1,LIC-A,40-60,60,switch,100");
    ScreenSummary summary = answered("1,a.csv,2,LIC-A,relief.setting," + text);
    assertEquals(applied, summary.followUp().corrections());
    assertEquals(1 - applied, summary.followUp().refused().size());
  }

  /** A line that is wrong in itself takes nothing from the others, and all such lines are named. */
  @Test
  void faultyLinesAreSetAsideAndTheOthersApply() throws Exception {
    records("a.csv", "1,LIC-A,50,60,switch,100");
    ScreenSummary summary =
        answered(
            "1,a.csv,2,,relief.seting,75\n1,a.csv,2,,record.id,B\n,a.csv,2,,relief.setting,75\n"
                + "1,a.csv,2,,well.depth,1\n1,a.csv,2,,well.depth,2\n"
                + "1,a.csv,2,,relief.setting,75,,,one,too,many\n"
                + "1,a.csv,2,,relief.setting,75 \"psi\n1,a.csv,2,,relief.setting,75");
    assertEquals(
        List.of(
            "2 NO_ENTRY 1, relief.seting: 75; relief.setting?",
            "3 RECORD_ID 1, record.id: B",
            "4 NO_RECORD , relief.setting: 75",
            "5 TWO_ANSWERS 1, well.depth: 1",
            "6 TWO_ANSWERS 1, well.depth: 2",
            "7 CELLS 1,a.csv,2,,relief.setting,75,,,one,too,many",
            "8 OPEN_QUOTE 1,a.csv,2,,relief.setting,75 \"psi"),
        summary.followUp().refused().stream()
            .map(each -> each.place().split(":")[1] + " " + each.why() + " " + each.what())
            .toList());
    assertEquals(Set.of(), shortRecords(), "line 9 applies");
    assertEquals(1, summary.followUp().corrections());
    String json = Files.readString(dir.resolve("out/run.json"));
    assertTrue(json.contains("\"answersNotApplied\": 7"), json);
  }

  /** Through a notice on one entry nothing else of the record is changed, and it is said so. */
  @Test
  void whatNoPointAskedForIsNotTaken() throws Exception {
    records("a.csv", "1,LIC-A,50,60,switch,100");
    ScreenSummary summary =
        answered(
            "1,a.csv,2,LIC-A,relief.setting,75\n1,a.csv,2,LIC-A,dates.completed,1950-01-01\n"
                + "1,a.csv,2,LIC-A,site.zone,elsewhere\n1,a.csv,2,LIC-A,well.depth,90");
    assertEquals(
        List.of("3 NOT_ASKED", "4 NOT_ASKED", "5 NOT_ASKED"),
        summary.followUp().refused().stream()
            .map(each -> each.place().split(":")[1] + " " + each.why())
            .toList());
    assertEquals(
        List.of(new Corrected(2, "1", "relief.setting", "50", "75")),
        summary.followUp().corrected());
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("1, relief.setting: \u201c50\u201d became \u201c75\u201d"), page);
  }

  /** Advisories are nobody's duty: no notice asks about them, so through none are they answered. */
  @Test
  void whatOnlyAnAdvisorySaysIsNotAsked() throws Exception {
    Files.createDirectories(dir.resolve("in"));
    Files.writeString(
        dir.resolve("in/a.csv"),
        "record.id,driller.licence,pump.control,pressure.cut_in [psi],pressure.cut_out [psi],"
            + "relief.setting [psi]\n1,LIC-A,switch,40,45,30\n");
    String answers = "1,a.csv,2,LIC-A,pressure.cut_out,60\n1,a.csv,2,LIC-A,relief.setting,75";
    ScreenSummary summary = answered(answers);
    assertEquals(
        List.of(new Refused("returned.csv:2", "1, pressure.cut_out: 60", Refused.Why.NOT_ASKED)),
        summary.followUp().refused());
    assertEquals(1, summary.followUp().corrections());
    assertTrue(
        Runs.rows(dir.resolve("out/findings.csv")).stream()
            .anyMatch(
                row ->
                    row.get("kind").equals("advisory")
                        && row.get("entry").equals("pressure.cut_out")),
        "the advisory stays");
  }

  /** Whom a notice is sent to grants itself no variance and takes no part of the form away. */
  @Test
  void whatIsForTheOfficeToSayIsNotTaken() throws Exception {
    records("a.csv", "1,LIC-A,50,60,switch,100");
    ScreenSummary summary =
        answered(
            "1,a.csv,2,LIC-A,record.variances,relief-ten-above-cut-out: V1\n"
                + "1,a.csv,2,LIC-A,record.covers,well\n"
                + "1,a.csv,2,LIC-A,record.jurisdiction,elsewhere");
    assertEquals(0, summary.followUp().corrections());
    assertEquals(
        List.of(Refused.Why.RECORD_ID, Refused.Why.RECORD_ID, Refused.Why.RECORD_ID),
        summary.followUp().refused().stream().map(Refused::why).toList());
  }

  private ScreenSummary sampled(String pack, String records, String answers) throws Exception {
    Files.createDirectories(dir.resolve("in"));
    Files.writeString(dir.resolve("in/a.csv"), records + "\n");
    Path returned = Files.writeString(dir.resolve("returned.csv"), COLUMNS + answers + "\n");
    return run(pack, new LookOptions(true, returned, null, null));
  }

  /** Only a later sample takes away what a laboratory found, and it must have been taken. */
  @ParameterizedTest
  @CsvSource({
    "2025-06-02,Clearwater Laboratory,",
    "3 June 2025,Clearwater Laboratory,",
    ",Clearwater Laboratory,NO_SAMPLE",
    "2025-06-02,,NO_SAMPLE",
    "2025,Clearwater Laboratory,NO_SAMPLE",
    "n/a,n/a,NO_SAMPLE",
    "05/06/2025,Clearwater Laboratory,NO_SAMPLE",
    "2025-06-01,Clearwater Laboratory,NO_SAMPLE",
    "2024-01-01,Clearwater Laboratory,NO_SAMPLE",
    "2027-01-01,Clearwater Laboratory,LATER",
  })
  void aResultIsAnsweredByALaterSampleOfALaboratory(String day, String laboratory, Refused.Why why)
      throws Exception {
    String sample = (day == null ? "" : day) + "," + (laboratory == null ? "" : laboratory);
    ScreenSummary summary =
        sampled(
            "fenwick-county",
            "record.id,driller.licence,well.use,dates.sampled,sample.nitrate\n"
                + "1,LIC-A,household,2025-06-01,14 mg/L",
            "1,a.csv,2,LIC-A,sample.nitrate,3 mg/L," + sample);
    List<Refused.Why> refused = summary.followUp().refused().stream().map(Refused::why).toList();
    assertEquals(why == null ? List.of() : List.of(why), refused);
    boolean isShort =
        Runs.rows(dir.resolve("out/findings.csv")).stream()
            .anyMatch(row -> row.get("entry").equals("sample.nitrate"));
    assertEquals(why != null, isShort);
    String page = Files.readString(dir.resolve("out/index.html"));
    assertEquals(why != null, page.contains("One line of the tables given was not applied"), page);
  }

  /** A second sample that was blank before lifts what the first one found. */
  @Test
  void aSecondSampleThatNobodyTookLiftsNothing() throws Exception {
    String records =
        "record.id,record.jurisdiction,driller.licence,well.use,dates.sampled,sample.coliform\n"
            + "1,alder,LIC-A,household,2025-06-01,present";
    String answer = "1,a.csv,2,LIC-A,sample.coliform_again,absent,";
    ScreenSummary without = sampled("fenwick-county", records, answer + ",");
    assertEquals(Refused.Why.NO_SAMPLE, without.followUp().refused().get(0).why());
    ScreenSummary with = sampled("fenwick-county", records, answer + "2025-06-05,Clearwater");
    assertEquals(List.of(), with.followUp().refused());
  }

  /** A notice asks for day and laboratory beside results, and for nothing of the kind elsewhere. */
  @Test
  void theTableSentOutAsksForDayAndLaboratoryOfResultsOnly() throws Exception {
    Files.createDirectories(dir.resolve("in"));
    Files.writeString(
        dir.resolve("in/a.csv"),
        "record.id,driller.licence,well.use,dates.sampled,sample.nitrate\n"
            + "1,LIC-A,household,2025-06-01,14 mg/L\n");
    Runs.run(
        Runs.request(dir.resolve("out"), List.of("fenwick-county"), dir.resolve("in"))
            .with(NoticeOptions.PLAIN));
    var asked =
        Runs.rows(dir.resolve("out/notices/LIC-A.csv")).stream()
            .filter(row -> row.get("entry").equals("sample.nitrate"))
            .findFirst()
            .orElseThrow();
    assertEquals("", asked.get("sampled"));
    assertEquals("", asked.get("laboratory"));
    String page = Files.readString(dir.resolve("out/notices/LIC-A.html"));
    assertTrue(page.contains("its laboratory, too: without both"), page);
    records("b.csv", "2,LIC-B,50,60,switch,100");
    Runs.run(
        Runs.request(dir.resolve("out"), List.of("common-practice"), dir.resolve("in"))
            .with(NoticeOptions.PLAIN));
    var other = Runs.rows(dir.resolve("out/notices/LIC-B.csv")).get(0);
    assertEquals("n/a", other.get("sampled"));
    String notice = Files.readString(dir.resolve("out/notices/LIC-B.html"));
    assertFalse(notice.contains("its laboratory, too: without both"), notice);
  }

  /** A bound settles what it decides; a finding that it leaves open stays. */
  @ParameterizedTest
  @CsvSource({"<0.5 mg/L,", "<9.9 mg/L,", "<11.9 mg/L,OPEN", "10.5-11 mg/L,LESS"})
  void aBoundThatDecidesNothingIsNotApplied(String text, Refused.Why why) throws Exception {
    ScreenSummary summary =
        sampled(
            "fenwick-county",
            "record.id,driller.licence,well.use,dates.sampled,sample.nitrate\n"
                + "1,LIC-A,household,2025-06-01,14 mg/L",
            "1,a.csv,2,LIC-A,sample.nitrate," + text + ",2025-07-01,Clearwater");
    List<Refused.Why> refused = summary.followUp().refused().stream().map(Refused::why).toList();
    assertEquals(why == null ? List.of() : List.of(why), refused);
  }

  /** As wide as what was written, and yet it takes a finding away that it does not answer. */
  @Test
  void aRangeThatLeavesAFindingOpenIsNotApplied() throws Exception {
    records("a.csv", "1,LIC-A,40-60,75,switch,100");
    ScreenSummary summary = answered("1,a.csv,2,LIC-A,relief.setting,70-90");
    assertEquals(Refused.Why.OPEN, summary.followUp().refused().get(0).why());
    assertEquals(Set.of("a.csv 1"), shortRecords());
  }

  /** What a laboratory cannot detect is a result; a range that somebody made up is none. */
  @ParameterizedTest
  @CsvSource({"<0.5 mg/L,1", "0-11.9 mg/L,0", "0 mg/L - 11.9 mg/L,0", "<20 mg/L,0"})
  void aResultBelowWhatCanBeDetectedIsAnAnswer(String text, long applied) throws Exception {
    ScreenSummary summary =
        sampled(
            "fenwick-county",
            "record.id,driller.licence,well.use,sample.nitrate\n1,LIC-A,household,14 mg/L",
            "1,a.csv,2,LIC-A,sample.nitrate," + text + ",2025-07-01,Clearwater");
    assertEquals(applied, summary.followUp().corrections(), summary.followUp().refused()::toString);
  }

  /** An entry that always applies is not answered by n/a, blank though it was. */
  @Test
  void aBlankIsNotAnsweredByNotApplicableWhereTheEntryApplies() throws Exception {
    records("a.csv", "1,LIC-A,75,60,switch,");
    Path answers =
        Files.writeString(dir.resolve("returned.csv"), COLUMNS + "1,a.csv,2,,well.depth,n/a\n");
    ScreenSummary summary = run("fenwick-county", new LookOptions(true, answers, null, null));
    assertEquals(0, summary.followUp().corrections());
    assertEquals(Refused.Why.NOT_APPLICABLE, summary.followUp().refused().get(0).why());
  }

  @Test
  void oneBadAnswerLeavesTheOthers() throws Exception {
    records("a.csv", "1,LIC-A,50,60,switch,100");
    ScreenSummary summary = answered("1,a.csv,2,,relief.setting,75\n1,a.csv,2,,well.depth,banana");
    assertEquals(Set.of(), shortRecords());
    assertEquals(1, summary.followUp().corrections());
    assertEquals("returned.csv:3", summary.followUp().refused().get(0).place());
  }

  @Test
  void whereANumberRepeatsFileAndRowSayWhichIsMeant() throws Exception {
    records("a.csv", "1,LIC-A,50,60,switch,100", "1,LIC-A,55,60,switch,100");
    records("b.csv", "1,LIC-B,50,60,switch,100");
    answered("1,a.csv,2,LIC-A,relief.setting,75");
    assertEquals(Set.of("a.csv 1", "b.csv 1"), shortRecords(), "row 3 of a.csv, and b.csv");
    ScreenSummary both =
        answered(
            "1,a.csv,2,LIC-A,relief.setting,75\n1,a.csv,3,LIC-A,relief.setting,76\n"
                + "1,b.csv,2,LIC-B,relief.setting,80");
    assertEquals(Set.of(), shortRecords());
    assertEquals(3, both.followUp().correctedRecords());
    assertEquals(List.of(), both.followUp().refused());
  }

  @Test
  void aRepeatedNumberAloneMeansNoRecord() throws Exception {
    records("a.csv", "1,LIC-A,50,60,switch,100");
    records("b.csv", "1,LIC-B,50,60,switch,100");
    ScreenSummary summary = answered("1,,,,relief.setting,75\n1,b.csv,9,,relief.setting,75");
    assertEquals(Set.of("a.csv 1", "b.csv 1"), shortRecords());
    assertEquals(
        List.of(Refused.Why.REPEATED, Refused.Why.OTHER_PLACE),
        summary.followUp().refused().stream().map(Refused::why).toList());
  }

  /** A new export shifts rows; a number that only one record has is enough. */
  @Test
  void aNumberThatDoesNotRepeatIsEnough() throws Exception {
    records("a.csv", "1,LIC-A,50,60,switch,100");
    ScreenSummary summary = answered("1,last.csv,77,lic-a,relief.setting,75");
    assertEquals(Set.of(), shortRecords());
    assertEquals(1, summary.followUp().corrections());
  }

  @Test
  void aTableCorrectsNoOtherLicencesRecord() throws Exception {
    records("a.csv", "1,LIC-A,50,60,switch,100", "2,LIC-B,50,60,switch,100");
    ScreenSummary summary =
        answered("1,a.csv,2,LIC-A,relief.setting,75\n2,a.csv,3,LIC-A,relief.setting,75");
    assertEquals(Set.of("a.csv 2"), shortRecords());
    assertEquals(Refused.Why.OTHER_LICENCE, summary.followUp().refused().get(0).why());
  }

  @Test
  void theTableSentOutSaysWhoseItIs() throws Exception {
    records("a.csv", "1,LIC-A,50,60,switch,100");
    run(LookOptions.PLAIN);
    assertEquals("LIC-A", Runs.rows(dir.resolve("out/notices/LIC-A.csv")).get(0).get("licence"));
  }

  /** Standard input is read but once, so what repeats is known only at the end. */
  @Test
  void onStandardInputARepeatedNumberAloneIsRefused() throws Exception {
    Path answers =
        Files.writeString(dir.resolve("returned.csv"), COLUMNS + "1,,,,relief.setting,75\n");
    String rows = HEADER + "1,LIC-A,50,60,switch,100\n1,LIC-B,50,60,switch,100\n";
    ScreenRequest plain =
        ScreenRequest.plain(
            List.of("-"), List.of("common-practice"), dir.resolve("out"), Runs.AS_OF);
    ScreenRequest request =
        plain
            .with(
                plain.input().from(new ByteArrayInputStream(rows.getBytes(StandardCharsets.UTF_8))))
            .with(new LookOptions(true, answers, null, null));
    RunFailure failure = assertThrows(RunFailure.class, () -> Runs.run(request));
    String said = String.valueOf(failure.getMessage());
    assertTrue(said.startsWith("returned.csv:2: record 1: its number stands on several"), said);
    assertFalse(Files.exists(dir.resolve("out")));
  }

  @Test
  void aSettledLineSettlesOneRowOfARepeatedNumber() throws Exception {
    records("a.csv", "1,LIC-A,50,60,switch,100");
    records("b.csv", "1,LIC-B,50,60,switch,100");
    String columns = "record_id,rule,decision,by,date,note,file,row,pack\n";
    Path settled =
        Files.writeString(
            dir.resolve("settled.csv"), columns + "1," + RULE + ",ok,me,2025-01-01,,a.csv,2,\n");
    assertEquals(1, run(new LookOptions(true, null, settled, null)).followUp().settled());
    Files.writeString(settled, columns + "1," + RULE + ",ok,me,2025-01-01,,,,\n");
    ScreenSummary alone = run(new LookOptions(true, null, settled, null));
    assertEquals(0, alone.followUp().settled());
    assertEquals(
        List.of(new Refused("settled.csv:2", "1, " + RULE, Refused.Why.REPEATED)),
        alone.followUp().refused());
    Files.writeString(settled, columns + "1," + RULE + ",ok,me,2025-01-01,,a.csv,2,other-pack\n");
    assertEquals(
        1, run(new LookOptions(true, null, settled, null)).followUp().settledUnmatched().size());
  }
}
