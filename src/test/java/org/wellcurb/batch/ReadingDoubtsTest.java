package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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
}
