package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What whole batches of real offices hold, and what a report must make of it. All is invented. */
class RealBatchesTest {
  @TempDir Path dir;

  private void run(String name, String text) throws Exception {
    run(name, text, null);
  }

  private void run(String name, String text, String map) throws Exception {
    Path file = Files.writeString(dir.resolve(name), text);
    ScreenRequest request =
        Runs.withWorkers(Runs.request(dir.resolve("out"), List.of("common-practice"), file), 1);
    if (map != null) {
      Path headers = Files.writeString(dir.resolve("map.json"), map.replace('\'', '"'));
      request = request.withHeaders(headers);
    }
    Runs.run(request);
  }

  private List<Map<String, String>> rows(String file) throws Exception {
    return Runs.rows(dir.resolve("out").resolve(file));
  }

  /** Rules that a record falls short of. */
  private List<String> findings(String id) throws Exception {
    return rows("findings.csv").stream()
        .filter(row -> row.get("record_id").equals(id))
        .map(row -> row.get("rule"))
        .toList();
  }

  private String outcome(String id, String rule) throws Exception {
    return rows("outcomes.csv").stream()
        .filter(row -> row.get("record_id").equals(id) && row.get("rule").equals(rule))
        .map(
            row -> row.get("outcome") + (row.get("needs").isEmpty() ? "" : ": " + row.get("needs")))
        .findFirst()
        .orElse("");
  }

  private String page(String file) throws Exception {
    return Files.readString(dir.resolve("out").resolve(file)).replaceAll("<[^>]*>", "");
  }

  private JsonNode crosscheck() throws Exception {
    return new ObjectMapper().readTree(dir.resolve("out/crosscheck.json").toFile());
  }

  @Test
  void aFormOfBlanksIsJudgedOnNothingAndAskedFor() throws Exception {
    run("blank.csv", "record.id,well.depth,water.static_level,pump.intake_depth\nB-1,,,\n");
    assertEquals(List.of(), rows("findings.csv"));
    Map<String, String> record = rows("records.csv").get(0);
    assertEquals("0", record.get("falls_short"));
    assertTrue(Integer.parseInt(record.get("cannot_tell")) > 0, record.toString());
    for (Map<String, String> row : rows("outcomes.csv")) {
      if (row.get("outcome").equals("cannot tell")) {
        assertFalse(row.get("needs").isEmpty(), row.toString());
      }
    }
  }

  @Test
  void zeroForABlankIsNoShortfall() throws Exception {
    run(
        "zeros.csv",
        "record.id,record.datum,well.depth [ft],well.casing_depth [ft],grout.top [ft],"
            + "grout.bottom [ft],water.static_level [ft],pump.intake_depth [ft]\n"
            + "Z-1,ground,120,0,0,0,0,0\n");
    assertEquals(List.of(), findings("Z-1"));
    assertEquals("cannot tell: grout.bottom", outcome("Z-1", "grout-the-right-way-up"));
  }

  @Test
  void flowingThatContradictsTheLevelIsADiscrepancy() throws Exception {
    run(
        "flowing.csv",
        "record.id,record.datum,water.flowing,water.static_level [m]\n"
            + "F-1,ground,yes,7.5\nF-2,ground,yes,-0.6\nF-3,ground,yes,0\n");
    assertEquals(List.of("flowing-well-level"), findings("F-1"));
    assertEquals(List.of(), findings("F-2"));
    assertEquals(List.of(), findings("F-3"));
  }

  @Test
  void flowingInTheLevelContradictsAFormThatSaysItDoesNotFlow() throws Exception {
    for (String header :
        List.of("record.id,water.static_level,water.flowing", "record.id,water.flowing,level")) {
      boolean isLast = header.endsWith("level");
      String key = isLast ? header.replace("level", "water.static_level") : header;
      String rows =
          "F-4,FLOWING,N\nF-5,FLOWING @ 3 gpm,no\nF-6,flowing,\nF-7,flowing,yes\nF-8,-2 ft,no\n"
              + "F-9,,no\n";
      String turned = rows.replaceAll("(?m),([^,\n]*),([^,\n]*)$", ",$2,$1");
      run("said.csv", key + "\n" + (isLast ? turned : rows));
      List<Map<String, String>> found = rows("findings.csv");
      assertEquals(
          List.of("F-4", "F-5"), found.stream().map(row -> row.get("record_id")).toList(), key);
      assertEquals(
          List.of("FLOWING more than 0", "FLOWING @ 3 gpm 3"),
          found.stream().map(row -> row.get("written") + " " + row.get("value")).toList());
      assertEquals(List.of("flow-said-both-ways"), findings("F-4"));
      assertTrue(page("sheets/F-4.html").contains("more than 0 gpm"));
    }
  }

  @Test
  void aUnitThatNobodyDeclaredIsAskedFor() throws Exception {
    run("bare.csv", "record.id,well.depth\nU-1,30\n");
    assertTrue(page("index.html").contains("Nothing states the unit of 1 bare numbers"));
  }

  @Test
  void twoUnitsInOneRecordAreConvertedBeforeTheyAreCompared() throws Exception {
    run(
        "two.csv",
        "record.id,record.datum,well.depth [ft],well.drilled_depth [ft],water.static_level [m]\n"
            + "T-1,ground,100,100,29\nT-2,ground,100,100,32\n");
    assertEquals(List.of(), findings("T-1"));
    assertEquals(List.of("static-level-within-hole"), findings("T-2"));
  }

  @Test
  void centimetresAmongMetresAreSuggestedAndNeverConverted() throws Exception {
    run(
        "cm.csv",
        "record.id,record.datum,well.depth [m],well.drilled_depth [m],water.static_level [m],pump.intake_depth [m]\n"
            + "C-1,ground,60,60,950,40\nC-2,ground,60,60,9.5,40\n");
    assertTrue(findings("C-1").contains("static-level-within-hole"), findings("C-1").toString());
    assertTrue(
        rows("findings.csv").get(0).get("possible_reading").contains("9.5 m")
            || rows("findings.csv").get(0).get("possible_reading").contains("950 cm"),
        rows("findings.csv").toString());
    assertEquals("950", rows("findings.csv").get(0).get("written"));
    assertEquals(List.of(), findings("C-2"));
    assertTrue(page("index.html").contains("values lie beyond what is plausible (950)"));
  }

  @Test
  void feetThatWereConvertedAreComparedWithTheirRoundingAndPrintedTidily() throws Exception {
    String header =
        "record.id,record.datum,disinfection.contact_time,pump.check_valve_spacing [m]\n";
    run("converted.csv", header + "M-1,ground,12,60.96\nM-2,ground,12,61.2\n");
    // 200 ft is 60.96 m, and the rule says 61 m beside it.
    assertEquals("meets", outcome("M-1", "check-valves-close-enough"));
    assertEquals("falls short", outcome("M-2", "check-valves-close-enough"));
    assertTrue(page("sheets/M-2.html").contains("61.2 m"), "as written");
  }

  @Test
  void aBoundCanExceedAMaximumOrMeetAMinimumAndNeverTheReverse() throws Exception {
    run(
        "bounds.csv",
        "record.id,record.datum,well.depth [m],pump.intake_depth [m],water.static_level [m]\n"
            + "B-1,ground,20,>14,10\nB-2,ground,20,>25,10\nB-3,ground,>14,12,10\n");
    assertEquals("cannot tell: pump.intake_depth", outcome("B-1", "intake-above-bottom"));
    assertEquals("falls short", outcome("B-2", "intake-above-bottom"));
    assertEquals("meets", outcome("B-3", "intake-above-bottom"));
    assertEquals("meets", outcome("B-1", "intake-below-static"));
  }

  @Test
  void aDateInANumbersColumnIsNamed() throws Exception {
    run(
        "slip.csv",
        "record.id,record.datum,well.depth [ft],well.drilled_depth [ft],dates.completed\n"
            + "D-1,ground,10112002,150,2002-12-10\n");
    String reading = rows("findings.csv").get(0).get("possible_reading");
    assertTrue(reading.toLowerCase(java.util.Locale.ROOT).contains("date"), reading);
    assertTrue(reading.contains("10112002"), reading);
    assertTrue(reading.endsWith("looks like a date, much as dates completed"), reading);
  }

  @Test
  void impossibleDatesAreOutAndOddOnesHaveAHint() throws Exception {
    run(
        "dates.csv",
        "NO;DONE\nI-1;04/01/5199\nI-2;5/30/1905\nI-3;1/1/1900\nI-4;4/25/2003\n",
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'DONE','entry':'dates.completed','dates':'month first'}]}");
    String page = page("index.html");
    assertTrue(page.contains("1 cells: It is outside what can be."), page);
    assertTrue(page.contains("1 dates lie in 1905 (5/30/1905 = 1977)"), page);
    assertTrue(page.contains("1 dates are 1900-01-01 or another day"), page);
  }

  @Test
  void noYearOfTwoDigitsLiesAfterTheAsOfDateUnseen() throws Exception {
    run(
        "pivot.csv",
        "NO;DONE\nP-1;12/31/63\nP-2;12/31/27\n",
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'DONE','entry':'dates.completed','dates':'month first','pivot':1930}]}");
    assertEquals("meets", outcome("P-1", "built-by-today").replaceAll(":.*", ""));
    assertEquals(List.of("built-by-today"), findings("P-2"));
  }

  @Test
  void datesOfTwoOrdersAreCountedInTheReport() throws Exception {
    StringBuilder text = new StringBuilder("NO;DONE\n");
    for (int i = 13; i < 28; i++) {
      text.append("O-").append(i).append(';').append(i < 17 ? i + "/04/2003" : "04/" + i + "/2003");
      text.append('\n');
    }
    run(
        "orders.csv",
        text.toString(),
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'DONE','entry':'dates.completed','dates':'month first'}]}");
    assertTrue(page("index.html").contains("The day stands first in 4 dates and the month in 11"));
  }

  @Test
  void aPairThatCannotBeIsOneFindingThatPrintsBoth() throws Exception {
    run(
        "pairs.csv",
        "record.id,record.datum,well.depth [ft],well.drilled_depth [ft],water.static_level [ft]\n"
            + "X-1,ground,100,105,130\n");
    assertTrue(findings("X-1").contains("static-level-within-hole"));
    String sheet = page("sheets/X-1.html");
    assertTrue(sheet.contains("130") && sheet.contains("100"), sheet);
  }

  @Test
  void depthsOfUnsaidDatumThatAreNearCannotBeTold() throws Exception {
    String header =
        "record.id,record.datum,water.datum,well.depth [ft],well.drilled_depth [ft],"
            + "water.static_level [ft]\n";
    run(
        "datum.csv",
        header
            + "S-1,,,100,100,102\nS-2,ground,casing top,100,100,140\n"
            + "S-3,ground,Top of Pit 9'2 from casing,100,100,102\n"
            + "S-4,ground,casing top,100,100,102\nS-5,ground,ground,100,100,102\n");
    String rule = "static-level-within-hole";
    assertEquals("falls short", outcome("S-1", rule), "one form, one datum, whichever it is");
    assertEquals("falls short", outcome("S-2", rule), "no casing stands up so far");
    assertEquals("cannot tell: well.stickup", outcome("S-4", rule));
    assertEquals("falls short", outcome("S-5", rule));
    assertTrue(outcome("S-3", rule).startsWith("cannot tell: "), outcome("S-3", rule));
    assertTrue(outcome("S-3", rule).contains("water.datum"), outcome("S-3", rule));
  }

  @Test
  void oneWellOnSeveralRowsIsGroupedAndWhatDiffersIsNamed() throws Exception {
    run(
        "rows.csv",
        "record.id,well.depth [m],water.yield [gpm],well.use\n"
            + "R-1,30,5,household\nR-2,40,5,household\nR-1,33,5,household\n");
    JsonNode same = crosscheck().findValue("sameNumbers");
    String all = crosscheck().toString();
    assertTrue(all.contains("well.depth") && all.contains("R-1"), all);
    assertTrue(page("index.html").contains("The rows differ in"), page("index.html"));
    assertEquals(3, rows("records.csv").size(), "all are kept; " + same);
  }

  @Test
  void aSharedPositionIsNoDuplicate() throws Exception {
    StringBuilder text =
        new StringBuilder(
            "record.id,well.depth [ft],water.static_level [ft],water.yield [gpm],"
                + "site.latitude,site.longitude\n");
    for (int i = 0; i < 40; i++) {
      text.append("P-").append(i).append(',').append(100 + 7 * i).append(',').append(20 + 3 * i);
      text.append(',').append(3 + i % 9).append(",45.1250,-75.3750\n");
    }
    run("places.csv", text.toString());
    String alike = page("crosscheck.json").replaceAll("\\s", "");
    assertTrue(alike.contains("\"nearCopy\":{\"total\":0,"), "by place alone: " + alike);
    assertEquals(List.of(), rows("findings.csv"));
  }

  @Test
  void noSetbackIsMeasuredFromTheCentreOfASection() throws Exception {
    String header =
        "record.id,record.datum,setback.septic_tank [ft],site.septic_position_of,site.latitude,"
            + "site.longitude,site.septic_latitude,site.septic_longitude\n";
    run(
        "centre.csv",
        header
            + "C-1,ground,100,septic tank,45.12,-75.37,45.12,-75.373\n"
            + "C-2,ground,100,septic tank,45.123456,-75.371111,45.123456,-75.374111\n");
    assertEquals(List.of(), findings("C-1"), "the last place of the position is a kilometre");
    assertEquals(List.of("septic-distance-agrees"), findings("C-2"), "235 m apart, to the inch");
  }

  @Test
  void wholeFeetThatWereConvertedMeetALimitInFeet() throws Exception {
    String header = "record.id,record.datum,well.depth [m],well.drilled_depth [ft]\n";
    // 140 ft is 42.672 m: the same depth, whichever way it was rounded.
    run("tidy.csv", header + "T-1,ground,42.67,140\nT-2,ground,42.7,140\nT-3,ground,43.6,140\n");
    assertEquals("meets", outcome("T-1", "finished-within-hole"));
    assertEquals("meets", outcome("T-2", "finished-within-hole"), "rounded up to a tenth");
    assertEquals("falls short", outcome("T-3", "finished-within-hole"));
  }

  @Test
  void aLimitThatIsMetExactlyIsMet() throws Exception {
    StringBuilder text =
        new StringBuilder(
            "record.id,record.datum,well.depth [ft],pump.type,pump.intake_depth [ft]\n");
    for (int i = 0; i < 60; i++) {
      int depth = 60 + 20 * (i % 8);
      text.append("H-").append(i).append(",ground,").append(depth).append(",submersible,");
      text.append(depth - 5).append('\n');
    }
    run("heaped.csv", text.toString());
    for (int i = 0; i < 60; i++) {
      assertEquals("meets", outcome("H-" + i, "intake-off-bottom"));
    }
    String note = "60 of 60 figures are multiples of 5";
    assertEquals(3, page("index.html").split(note, -1).length, "of the depth and of the pump");
    run("heaped.csv", text.toString().replace("0,submersible", "3,submersible"));
    assertEquals(2, page("index.html").split(note, -1).length, "of the pump only");
  }

  @Test
  void aTickedBoxMeetsNoDistance() throws Exception {
    run(
        "boxes.csv",
        "record.id,record.datum,setback.septic_tank [ft]\nY-1,ground,Yes\nY-2,ground,yes\n");
    for (Map<String, String> row : rows("outcomes.csv")) {
      if (row.get("needs").contains("setback.septic_tank")) {
        assertEquals("cannot tell", row.get("outcome"));
      }
    }
    assertTrue(page("index.html").contains("2 cells: A box was ticked: stated, and not measured."));
  }

  @Test
  void casingsInPitsAreBelowGround() throws Exception {
    run("pit.csv", "record.id,record.datum,well.stickup [ft],well.head\nN-1,ground,-4,pit\n");
    List<String> kinds = new ArrayList<>();
    rows("findings.csv").forEach(row -> kinds.add(row.get("kind")));
    assertFalse(kinds.contains("discrepancy"), kinds.toString());
  }

  @Test
  void aFigureThatTheFormWorkedOutIsWorkedOutAgain() throws Exception {
    run(
        "derived.csv",
        "record.id,record.datum,water.datum,water.test_method,water.static_level [ft],"
            + "water.pumping_level [ft],water.test_rate [gpm],water.specific_capacity [gpm/ft]\n"
            + "E-1,ground,ground,test pump,20,40,10,0.5\nE-2,ground,ground,test pump,20,40,10,2\n");
    assertFalse(findings("E-1").contains("specific-capacity-agrees"));
    assertTrue(findings("E-2").contains("specific-capacity-agrees"));
  }

  @Test
  void aTextThatWouldBeAFormulaIsDefusedInTheOutputs() throws Exception {
    run("formula.csv", "record.id,well.depth [ft],well.drilled_depth [ft]\n=1+1,130,100\n");
    String csv = Files.readString(dir.resolve("out/findings.csv"));
    assertTrue(csv.contains("'=1+1"), csv);
  }
}
