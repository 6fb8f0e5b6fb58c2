package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run says of columns that may not mean what they were taken for. */
class ReadingDoubtsTest {
  @TempDir Path dir;

  /** Runs one table of a number and a column; gives what is doubted of that column. */
  private Map<String, JsonNode> doubts(String header, int rows, IntFunction<String> cell)
      throws Exception {
    StringBuilder text = new StringBuilder("record.id;" + header + "\n");
    IntStream.range(0, rows)
        .forEach(i -> text.append("W-").append(i).append(';').append(cell.apply(i)).append('\n'));
    Path file = Files.writeString(dir.resolve("wells.csv"), text, StandardCharsets.UTF_8);
    Runs.run(Runs.request(dir.resolve("out"), List.of("common-practice"), file));
    JsonNode run = new ObjectMapper().readTree(dir.resolve("out/run.json").toFile());
    Map<String, JsonNode> found = new TreeMap<>();
    for (JsonNode doubt : run.at("/inputs/0/columns/1/doubts")) {
      found.put(doubt.path("doubt").asText(), doubt);
    }
    return found;
  }

  private String page() throws Exception {
    return Files.readString(dir.resolve("out/index.html"));
  }

  @Test
  void figuresThatNoWellHasAreCountedAndTheCommonestNamed() throws Exception {
    Map<String, JsonNode> found =
        doubts("well.depth [ft]", 60, i -> i % 10 == 0 ? "9999" : i == 7 ? "10112002" : "2" + i);
    assertEquals(
        "{beyond={\"doubt\":\"beyond\",\"cells\":7,\"of\":\"9999 (6), 10112002\"}}", "" + found);
    assertTrue(page().contains("7 values lie beyond what is plausible (9999 (6), 10112002)"));
  }

  @Test
  void everyCellHasOneStateAndBoundsAndRangesAreCountedBeside() throws Exception {
    String cells = "62,5;71,25;1.250;>100;<150;100-115;0;?;;n/a;j20;80;";
    StringBuilder text = new StringBuilder("record.id;well.depth [m]\n");
    int rows = 0;
    for (String cell : cells.split(";", 12)) {
      text.append("W-").append(rows++).append(';').append(cell.replace(";", "")).append('\n');
    }
    Path file = Files.writeString(dir.resolve("wells.csv"), text, StandardCharsets.UTF_8);
    Runs.run(Runs.request(dir.resolve("out"), List.of("common-practice"), file));
    JsonNode run = new ObjectMapper().readTree(dir.resolve("out/run.json").toFile());
    JsonNode column = run.at("/inputs/0/columns/1");
    List<Integer> states = new ArrayList<>();
    int sum = 0;
    for (String state : List.of("given", "blank", "unknown", "notApplicable", "unreadable")) {
      states.add(column.path(state).asInt());
      sum += column.path(state).asInt();
    }
    assertEquals(List.of(6, 1, 2, 1, 2), states, column.toString());
    assertEquals(rows, sum);
    assertEquals(rows, run.at("/inputs/0/rowsCounted").asInt());
    assertEquals(
        "[{\"doubt\":\"bounds\",\"cells\":2},{\"doubt\":\"ranges\",\"cells\":1}]",
        column.path("doubts").toString());
  }

  @Test
  void ninesThatAWellMayHaveAreNamedWhereTheyStandAgainAndAgain() throws Exception {
    Map<String, JsonNode> found =
        doubts("well.depth [ft]", 60, i -> i % 20 == 0 ? "999" : "21" + i % 7);
    assertEquals("{nines={\"doubt\":\"nines\",\"cells\":3,\"of\":\"999 (3)\"}}", "" + found);
    assertTrue(page().contains("3 cells hold nines only (999 (3))"));
    assertEquals(Map.of(), doubts("well.depth [ft]", 60, i -> i == 7 ? "999" : "21" + i % 7));
    assertEquals(
        Map.of(), doubts("pump.rated_flow [gpm]", 60, i -> i % 20 == 0 ? "99" : "1" + i % 7));
  }

  @Test
  void manyZerosAreSpokenOfAndFewAreNot() throws Exception {
    assertEquals(
        6,
        doubts("well.rock_depth [ft]", 60, i -> i % 10 == 0 ? "0" : "3" + i)
            .get("zeros")
            .path("cells")
            .asInt());
    assertEquals(Map.of(), doubts("well.rock_depth [ft]", 90, i -> i % 30 == 0 ? "0" : "3" + i));
  }

  @Test
  void feetAboveAndMetresBelowAreSeenAndAnEvenOrASlopingColumnIsNot() throws Exception {
    long seed = 3281;
    Random random = new Random(seed);
    IntFunction<String> even = i -> Integer.toString(120 + random.nextInt(260));
    assertEquals(Map.of(), doubts("well.depth [ft]", 900, even), "seed " + seed);
    for (int step : new int[] {300, 450, 700}) {
      IntFunction<String> cell =
          i -> Long.toString(Math.round((120 + random.nextInt(260)) * (i < step ? 1 : 0.3048)));
      assertTrue(doubts("well.depth [ft]", 900, cell).containsKey("unit changes"), "seed " + seed);
    }
    IntFunction<String> slope = i -> Integer.toString(60 + i / 4 + random.nextInt(40));
    assertEquals(Map.of(), doubts("well.depth [ft]", 900, slope), "seed " + seed);
  }

  @Test
  void elevationsInFeetAndMetresRowByRowAreSeen() throws Exception {
    long seed = 1719;
    Random random = new Random(seed);
    IntFunction<String> mixed =
        i -> Long.toString(Math.round((400 + random.nextInt(300)) * (i % 3 == 0 ? 0.3048 : 1)));
    assertTrue(doubts("site.elevation [ft]", 300, mixed).containsKey("units mixed"), "" + seed);
    assertTrue(page().contains("The figures lie in two heaps"));
    IntFunction<String> even = i -> Integer.toString(400 + random.nextInt(300));
    assertEquals(Map.of(), doubts("site.elevation [ft]", 300, even), "seed " + seed);
    // Figures of two kinds of wells, and of two usual values, are no two units.
    IntFunction<String> wide = i -> Integer.toString(i % 3 == 0 ? 20 + i % 40 : 90 + i % 300);
    assertEquals(Map.of(), doubts("well.rock_depth [ft]", 300, wide));
    IntFunction<String> usual = i -> i % 3 == 0 ? "30" : "100";
    assertEquals(Map.of(), doubts("setback.property_line [ft]", 300, usual));
    IntFunction<String> said = i -> i % 3 == 0 ? 150 + i % 60 + " m" : "" + (500 + i % 190);
    assertEquals(Map.of(), doubts("site.elevation [ft]", 300, said));
  }

  @Test
  void feetAboveAndMetresBelowAreSeenInElevationsToo() throws Exception {
    IntFunction<String> cell =
        i -> Long.toString(Math.round((600 + i * 7 % 190) * (i < 200 ? 1 : 0.3048)));
    assertTrue(doubts("site.elevation [ft]", 400, cell).containsKey("unit changes"));
  }

  @Test
  void fewZerosFarFromAllOtherFiguresAreSpokenOf() throws Exception {
    assertEquals(
        2,
        doubts("site.elevation [ft]", 300, i -> i % 200 == 7 ? "0" : "" + (400 + i))
            .get("zeros")
            .path("cells")
            .asInt());
    assertEquals(
        Map.of(), doubts("site.elevation [ft]", 300, i -> i % 200 == 7 ? "0" : "" + (3 + i)));
  }

  @Test
  void levelsAboveTheGroundDoNotHideAChangeOfUnits() throws Exception {
    IntFunction<String> cell =
        i ->
            i % 40 == 3
                ? "-2"
                : Long.toString(Math.round((120 + i * 7 % 60) * (i < 300 ? 1 : 0.3048)));
    assertTrue(doubts("water.static_level [ft]", 600, cell).containsKey("unit changes"));
    assertEquals(
        Map.of(),
        doubts("water.static_level [ft]", 600, i -> i % 40 == 3 ? "-2" : "" + (121 + i * 7 % 59)));
  }

  @Test
  void yearsAndSeasonsAreCountedBesideDays() throws Exception {
    String[] cells = {"1984", "Spring 1984", "2011-05", "winter 1999", "2011-05-06", "before 1950"};
    assertEquals(
        4,
        doubts("dates.completed", 12, i -> i < 6 ? cells[i] : "2011-05-0" + (i - 5))
            .get("spans")
            .path("cells")
            .asInt());
    assertTrue(page().contains("4 cells name a year, a season or a month, and no day"));
  }

  @Test
  void daysThatASpreadsheetCountedAreNamed() throws Exception {
    Map<String, JsonNode> found =
        doubts("dates.completed", 20, i -> i < 3 ? "2011-04-" + (10 + i) : "4071" + i % 10);
    assertEquals(17, found.get("day numbers").path("cells").asInt());
    assertTrue(page().contains("(40713): let the header map set dayNumbers"));
  }

  @Test
  void whatWasHardlyReadStandsBeforeAllFindings() throws Exception {
    doubts("dates.completed", 20, i -> i < 3 ? "13/04/2011" : "05/04/201" + i % 10);
    String first = page().substring(page().indexOf("id=\"first\""));
    assertTrue(
        first.replaceAll("<[^>]*>", "").contains("dates.completed (17 of 20 cells not read)"));
    assertTrue(first.indexOf("#troubles") < first.indexOf("#records"), "before the records");
    assertTrue(page().contains("Not read: “05/04/2013” (2), “05/04/2014” (2)"));
    doubts("dates.completed", 20, i -> "2011-05-1" + i % 10);
    assertTrue(!page().contains("#troubles"));
    doubts("water.static_level [ft]", 60, i -> i % 6 == 1 ? "-999" : "4" + i % 10);
    assertTrue(page().contains("water.static_level [ft] (10 figures that no well has)"));
  }

  @Test
  void codesAreNamedWithWhatTheyWereTakenFor() throws Exception {
    doubts(
        "sample.coliform", 20, i -> i < 12 ? "nd" : i < 16 ? "detected" : i < 18 ? "unknown" : "9");
    assertTrue(page().contains("Met: “nd” = absent (12), “detected” = present (4)."));
    assertTrue(page().contains("Taken for no value: “unknown” (2)."));
    assertTrue(page().contains("Not read: “9” (2)."));
    JsonNode codes =
        new ObjectMapper()
            .readTree(dir.resolve("out/run.json").toFile())
            .at("/inputs/0/columns/1/codes");
    assertEquals("{\"written\":\"nd\",\"read\":\"absent\",\"cells\":12}", codes.get(0).toString());
    assertEquals(4, codes.size());
  }

  @Test
  void wordsTakenForNoValueAreNamedAmongFiguresDatesAndTextsToo() throws Exception {
    String[] words = {"none", "UNK", "none", "-", "N/A", "UNK", "none"};
    for (String[] column :
        new String[][] {
          {"setback.septic_tank [ft]", "6"},
          {"dates.completed", "2011-05-1"},
          {"driller.licence", "J. "}
        }) {
      doubts(column[0], 20, i -> i < 7 ? words[i] : column[1] + i % 10);
      String said = "Taken for no value: “none” (3), “UNK” (2), “-” (1), “N/A” (1).";
      assertTrue(page().contains(said), column[0]);
      JsonNode codes =
          new ObjectMapper()
              .readTree(dir.resolve("out/run.json").toFile())
              .at("/inputs/0/columns/1/codes");
      assertEquals(4, codes.size());
      assertEquals("{\"written\":\"none\",\"read\":\"n/a\",\"cells\":3}", codes.get(0).toString());
      assertEquals(
          "{\"written\":\"UNK\",\"read\":\"unknown\",\"cells\":2}", codes.get(1).toString());
    }
  }

  @Test
  void codesBeyondTheFirstAreCountedTogether() throws Exception {
    doubts("well.aquifer", 100, i -> "zone " + i);
    assertTrue(page().contains("Others, not counted one by one: 60 cells."));
  }

  @Test
  void daysThatProgramsWriteForNoDateAreNamed() throws Exception {
    Map<String, JsonNode> found =
        doubts("dates.completed", 20, i -> i < 3 ? "1900-01-01" : "2011-04-" + (10 + i));
    assertEquals(3, found.get("empty days").path("cells").asInt());
  }

  @Test
  void daysFirstBesideMonthsFirstAreCountedOnBothSides() throws Exception {
    Map<String, JsonNode> found =
        doubts("dates.completed", 20, i -> i < 5 ? "04/2" + i + "/2011" : "2" + i % 5 + "/04/2011");
    assertEquals("15, 5", found.get("two orders").path("of").asText());
    assertTrue(page().contains("The day stands first in 15 dates and the month in 5"));
    assertEquals(Map.of(), doubts("dates.completed", 20, i -> "2" + i % 5 + "/04/2011"));
  }

  @Test
  void aUnitThatNothingStatesIsAskedFor() throws Exception {
    Map<String, JsonNode> found = doubts("well.depth", 20, i -> i < 4 ? "20 m" : "8" + i);
    assertEquals("ft", found.get("unit unsaid").path("of").asText());
    assertEquals(16, found.get("unit unsaid").path("cells").asInt());
    assertEquals(Map.of(), doubts("well.depth;record.units", 20, i -> "8" + i + ";metric"));
    assertEquals(Map.of(), doubts("well.depth [m]", 20, i -> "8" + i));
  }

  @Test
  void theNumberOfWorkersDoesNotMatter() throws Exception {
    StringBuilder text = new StringBuilder("record.id,well.depth [ft],x\n");
    for (int i = 0; i < 40_000; i++) {
      text.append("W-").append(i).append(',').append(i < 25_000 ? 200 + i % 90 : 61 + i % 27);
      text.append(",").append("some remark ".repeat(6)).append('\n');
    }
    Path file = Files.writeString(dir.resolve("wells.csv"), text, StandardCharsets.UTF_8);
    for (int workers : new int[] {1, 3}) {
      ScreenRequest request =
          Runs.request(dir.resolve("out" + workers), List.of("common-practice"), file);
      Runs.run(Runs.withWorkers(Runs.withSheets(request, SheetsFor.NONE, 0), workers));
    }
    String one = Files.readString(dir.resolve("out1/run.json"));
    assertEquals(one, Files.readString(dir.resolve("out3/run.json")));
    assertTrue(one.contains("unit changes"), one);
  }

  @Test
  void aFileThatLostItsRowsIsNamedFirst() throws Exception {
    String rows = "W-1,90,a,b\nW-2,80,a\nW-3,70,a,b,c\nW-4,60,a,b\n";
    Path odd = Files.writeString(dir.resolve("odd.csv"), "record.id,well.depth [ft]\n" + rows);
    Path sound = Files.writeString(dir.resolve("sound.csv"), "record.id,well.depth [ft]\nW-5,90\n");
    ScreenSummary summary =
        Runs.run(Runs.request(dir.resolve("out"), List.of("common-practice"), odd, sound));
    assertEquals(
        List.of("odd.csv: 4 of 4 rows set aside; the first: has 4 cells, the header has 2"),
        summary.lost());
    String page = page();
    assertTrue(page.contains("lost most of its rows, which were set aside: odd.csv (4/4)"), page);
    assertTrue(page.contains("more cells than the header, from 3 to 5 where it has 2"), page);
  }
}
