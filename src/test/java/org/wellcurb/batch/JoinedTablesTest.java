package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of the cells of tables whose rows are layers, distances, tests of a well. */
class JoinedTablesTest {
  private static final String MAP =
      "{'title':'t','comma':'decimal','columns':[{'column':'NO','entry':'record.id'},"
          + "{'column':'TIEFE','entry':'well.depth','unit':'ft'}],'constants':"
          + "{'record.units':'metric'},'joins':[{'file':'layers.csv','id':'WELL',"
          + "'matches':'KEY','columns':[],'layers':{'from':'TOP','to':'BOT','material':'MAT',"
          + "'unitFrom':'U','unknown':['-1']}},{'file':'dist.csv','id':'WELL','columns':[],"
          + "'setbacks':{'from':'FROM','distance':'DIST','words':{'klärgrube':'septic_tank'},"
          + "'unknown':['yes']}}]}";
  private static final String WELLS = "NO;KEY;TIEFE;REM\nA;k1;120;x\nB;k2;90;\nC;k3;80;y\n";
  private static final String LAYERS =
      "WELL;TOP;BOT;U;MAT;REM\nk1;0;20;ft;clay;r1\nk1;20;6,5;m;sand;\nk1;30;30;ft;rock;\n"
          + "k2;0;bottom;ft;till;\nk2;10;20;cubit;till;\nk3;0;12;;peat;\nk3;12;-1;m;peat;\n"
          + "k9;0;10;ft;peat;\n;0;1;ft;peat;\nk3;1;2\n";
  private static final String DISTANCES =
      "WELL;FROM;DIST\nA;septic tank;30,5\nA;sewer main;12\nB;;9\nB;Klärgrube;yes\n"
          + "A;septic tank;28\n";

  @TempDir Path dir;

  private Path write(String name, String text) throws IOException {
    Path file = dir.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text, StandardCharsets.UTF_8);
  }

  private JsonNode run(String map, Path... inputs) throws Exception {
    ScreenRequest plain = Runs.request(dir.resolve("out"), List.of("common-practice"), inputs);
    ScreenRequest request = Runs.withSheets(plain, SheetsFor.ALL, 20);
    Runs.run(request.withHeaders(write("map.json", map.replace('\'', '"'))));
    return new ObjectMapper().readTree(dir.resolve("out/run.json").toFile());
  }

  private JsonNode run() throws Exception {
    return run(
        MAP, write("wells.csv", WELLS), write("layers.csv", LAYERS), write("dist.csv", DISTANCES));
  }

  @Test
  void listsOfANumberThatSeveralRecordsHaveGoToNone() throws Exception {
    String wells = WELLS.replace("C;k3;80;y", "C;k3;80;y\nD;K1;95;\nB;k5;70;");
    JsonNode run =
        run(
            MAP,
            write("wells.csv", wells),
            write("layers.csv", LAYERS),
            write("dist.csv", DISTANCES));
    // The three layers of k1 fit two wells, the two distances of B two others.
    String aside = Files.readString(dir.resolve("out/set-aside.csv"));
    assertEquals(5, aside.split("several records have the number ", -1).length - 1, aside);
    assertTrue(aside.contains("several records have the number k1, "), aside);
    assertEquals(5, run.at("/inputs/0/screened").asInt());
    String layers = Files.readString(dir.resolve("out/set-aside/layers.csv"));
    assertTrue(layers.contains("k1;20;6,5;m;sand;"), layers);
  }

  private static JsonNode column(JsonNode run, int input, String name) {
    for (JsonNode column : run.at("/inputs/" + input + "/columns")) {
      if (column.path("name").asText().equals(name)) {
        return column;
      }
    }
    throw new AssertionError("no column " + name);
  }

  private static long sum(JsonNode column) {
    return Stream.of("given", "blank", "unknown", "notApplicable", "unreadable")
        .mapToLong(state -> column.path(state).asLong())
        .sum();
  }

  private String page(String file) throws IOException {
    String html = Files.readString(dir.resolve("out").resolve(file));
    return html.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
  }

  @Test
  void rowsOfARecordThatTheMapLeavesOutAreLeftOutWithIt() throws Exception {
    String only = MAP.replaceFirst("\\{", "{'only':[{'column':'REM','isNot':['y']}],");
    JsonNode run =
        run(
            only,
            write("wells.csv", WELLS),
            write("layers.csv", LAYERS),
            write("dist.csv", DISTANCES));
    assertEquals(2, run.at("/inputs/0/screened").asInt());
    // Two layers are of k3, which is left out; k9 is nobody's, and two rows are none.
    assertEquals(3, run.at("/inputs/1/setAside").asInt());
    assertTrue(run.at("/inputs/1/notes").toString().contains("5 rows went into"), run.toString());
    String aside = Files.readString(dir.resolve("out/set-aside/layers.csv"));
    assertTrue(aside.contains("k9;") && !aside.contains("k3;0;12"), aside);
  }

  @Test
  void everyCellOfEveryRowThatWasTakenIsCounted() throws Exception {
    JsonNode run = run();
    for (JsonNode column : run.at("/inputs/1/columns")) {
      assertEquals(7, sum(column), column.toString());
    }
    for (JsonNode column : run.at("/inputs/2/columns")) {
      assertEquals(5, sum(column), column.toString());
    }
    assertEquals(3, run.at("/inputs/1/setAside").asInt());
    assertTrue(run.at("/inputs/1/notes").toString().contains("7 rows went into"), run.toString());
  }

  @Test
  void depthsOfLayersAreReadInTheUnitOfTheirRow() throws Exception {
    JsonNode run = run();
    JsonNode bottom = column(run, 1, "BOT");
    assertEquals("{\"ft\":2,\"m\":2}", bottom.path("units").toString());
    assertEquals(1, bottom.path("unknown").asInt(), "-1 means so");
    String sheet = page("sheets/A.html");
    assertTrue(sheet.contains("0 m to 6.096 m"), "20 ft");
    assertTrue(sheet.contains("20 m to 6.5 m The first end"), "20 is in m, and reversed");
  }

  @Test
  void depthsThatCannotBeAreSaid() throws Exception {
    JsonNode bottom = column(run(), 1, "BOT");
    assertEquals(2, bottom.path("unreadable").asInt(), bottom.toString());
    assertEquals(1, bottom.at("/notes/unknown_unit").asInt(), bottom.toString());
    assertEquals(1, bottom.at("/notes/reversed").asInt(), bottom.toString());
    assertEquals(1, bottom.at("/notes/no_thickness").asInt(), bottom.toString());
    assertTrue(page("sheets/B.html").contains("“0; bottom: till”"), page("sheets/B.html"));
    assertTrue(page("sheets/B.html").contains("“10 cubit; 20 cubit: till”"));
  }

  @Test
  void oneCellMayHoldBothEndsOfALayer() throws Exception {
    String map =
        "{'title':'t','rows':'one record an id','columns':[{'column':'NO','entry':'record.id'}],"
            + "'layers':{'from':'LOG','to':'LOG','material':'MAT','unit':'m'}}";
    String text = "NO;LOG;MAT\nA;0-4.5;clay\nA;15 to 30 ft;sand\nA;12;rock\nA;9-7;peat\n";
    JsonNode log = column(run(map, write("log.csv", text)), 0, "LOG");
    assertEquals(2, log.path("given").asInt(), log.toString());
    assertEquals(1, log.at("/notes/one_end").asInt(), log.toString());
    assertEquals(4, sum(log));
    String sheet = page("sheets/A.html");
    assertTrue(sheet.contains("15 ft to 30 ft"), sheet);
    assertTrue(sheet.contains("“12: rock”"), sheet);
  }

  @Test
  void aUnitThatNothingStatesIsAskedForInLayersToo() throws Exception {
    String map =
        "{'title':'t','rows':'one record an id','columns':[{'column':'NO','entry':'record.id'}],"
            + "'layers':{'from':'A','to':'B','material':'M'}}";
    JsonNode run = run(map, write("log.csv", "NO;A;B;M\nW;0;20;clay\nW;20;31;rock\n"));
    assertEquals("unit unsaid", column(run, 0, "B").at("/doubts/0/doubt").asText());
    assertEquals(2, column(run, 0, "B").at("/doubts/0/cells").asInt());
  }

  @Test
  void aDistanceFromWhatNoEntryIsCalledIsCountedAndKept() throws Exception {
    JsonNode run = run();
    assertEquals(1, column(run, 2, "FROM").path("unreadable").asInt());
    assertEquals(1, column(run, 2, "DIST").path("unreadable").asInt(), "9 from nothing");
    assertEquals(1, column(run, 2, "DIST").path("unknown").asInt(), "yes");
    assertTrue(page("sheets/A.html").contains("setbacks.sewer main “12”"), page("sheets/A.html"));
  }

  @Test
  void columnsThatNothingTakesAreKeptWithTheRecordOfTheirRow() throws Exception {
    run();
    String sheet = page("sheets/A.html");
    assertTrue(sheet.contains("REM “x”") && sheet.contains("REM (layers.csv 2) “r1”"), sheet);
  }

  @Test
  void rowsThatDifferStandOnTheSheetAndAreCounted() throws Exception {
    String map =
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'D','entry':'well.depth','unit':'m'}],'joins':[{'file':'tests.csv',"
            + "'id':'NO','columns':[{'column':'SWL','entry':'water.static_level','unit':'m'}]}]}";
    Path tests = write("tests.csv", "NO,SWL\nA,4\nA,9\nA,4.0\nB,7\nC,1\n");
    JsonNode run = run(map, write("wells.csv", "NO,D\nA,30\nB,40\nC,20\n"), tests);
    JsonNode level = column(run, 1, "SWL");
    assertEquals("rows differ", level.at("/doubts/0/doubt").asText(), level.toString());
    assertEquals(1, level.at("/doubts/0/cells").asInt());
    assertTrue(page("sheets/A.html").contains("SWL (tests.csv 3) “9”"), page("sheets/A.html"));
  }

  @Test
  void aColumnThatIsLackingJoinsNothing() throws Exception {
    String wells = WELLS.replace("KEY", "SCHLUESSEL");
    JsonNode run =
        run(
            MAP,
            write("wells.csv", wells),
            write("layers.csv", LAYERS.replace("k1", "A")),
            write("dist.csv", DISTANCES));
    assertEquals(10, run.at("/inputs/1/setAside").asInt(), "never by another column");
    assertTrue(run.at("/inputs/0/notes").toString().contains("names KEY, which the file lacks"));
  }

  @Test
  void rowsOfAJoinedTableAreCorrectedAndReadAgain() throws Exception {
    Path zip = dir.resolve("all.zip");
    try (OutputStream file = Files.newOutputStream(zip);
        ZipOutputStream out = new ZipOutputStream(file)) {
      for (String[] member :
          new String[][] {
            {"wells.csv", WELLS}, {"in/layers.csv", LAYERS}, {"dist.csv", DISTANCES}
          }) {
        out.putNextEntry(new ZipEntry(member[0]));
        out.write(member[1].getBytes(StandardCharsets.UTF_8));
        out.closeEntry();
      }
    }
    JsonNode run = run(MAP, zip);
    List<String> files = new ArrayList<>();
    run.at("/inputs").forEach(input -> files.add(input.path("file").asText()));
    assertEquals(
        Arrays.asList("all.zip!wells.csv", "all.zip!dist.csv", "all.zip!in/layers.csv"), files);
    String aside = Files.readString(dir.resolve("out/set-aside/layers.csv"));
    String mended =
        aside.replace("k9", "k3").replace("\n;0", "\nk3;0").replace("k3;1;2\n", "k3;1;2;m;loam;\n");
    Path again = write("again/layers.csv", mended);
    JsonNode second = run(MAP, write("wells.csv", WELLS), again, write("dist.csv", DISTANCES));
    assertEquals(
        0, second.at("/inputs/1/setAside").asInt() + second.at("/inputs/2/setAside").asInt());
    assertTrue(page("sheets/C.html").contains("loam"), page("sheets/C.html"));
  }

  @Test
  void listsOfJsonAreCountedOnceForEachRecord() throws Exception {
    Path file =
        write(
            "a.ndjson",
            "{'record':{'id':'A'},'setbacks':[{'from':'septic_tank','distance':'100 ft'},"
                + "{'from':'septic_tank','distance':'80 ft'},{'from':'moon','distance':'3 ft'}],"
                + "'layers':[{'from':0,'to':'bottom','material':'clay'}]}\n"
                + "{'record':{'id':'B'},'setback':{'septic_tank':'90 ft'},'setbacks':["
                + "{'from':'septic_tank','distance':'95 ft'}],'layers':[{'from':0,'to':'20 ft'}]}\n"
                + "{'record':{'id':'C'}}\n");
    Files.writeString(file, Files.readString(file).replace('\'', '"'));
    ScreenRequest plain = Runs.request(dir.resolve("out"), List.of("common-practice"), file);
    Runs.run(Runs.withSheets(plain, SheetsFor.ALL, 20));
    JsonNode run = new ObjectMapper().readTree(dir.resolve("out/run.json").toFile());
    for (JsonNode column : run.at("/inputs/0/columns")) {
      assertEquals(3, sum(column), column.toString());
    }
    assertEquals(2, column(run, 0, "setback.septic_tank").path("given").asInt());
    assertEquals(1, column(run, 0, "layers").path("unreadable").asInt());
    assertTrue(
        page("sheets/A.html").contains("“bottom: clay”")
            || page("sheets/A.html").contains("“0; bottom: clay”"));
    assertTrue(page("sheets/A.html").contains("setbacks.moon “3 ft”"));
  }
}
