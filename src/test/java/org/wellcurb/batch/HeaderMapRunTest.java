package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HeaderMapRunTest {
  @TempDir Path dir;

  private ScreenSummary run(String map, Path... records) throws Exception {
    ScreenRequest request =
        ScreenRequest.plain(
                List.of(records).stream().map(Path::toString).toList(),
                List.of("common-practice"),
                dir.resolve("out"),
                LocalDate.of(2026, 1, 1))
            .with(OutputOptions.PLAIN.with(SheetsFor.NONE, 0))
            .by(2);
    Path file = Files.writeString(dir.resolve("map.json"), map.replace('\'', '"'));
    return new ScreenRun(request.withHeaders(file), rows -> {}, new Stop()).run();
  }

  @Test
  void anExportIsScreenedWithItsMapAndItsOtherTables() throws Exception {
    Path wells =
        Files.writeString(dir.resolve("wells.csv"), "NO;TIEFE;KIND\nA;1,5;W\nB;x;P\nC;30;W\n");
    Path layers = Files.writeString(dir.resolve("layers.csv"), "W;B;M\nA;1;clay\nQ;2;sand\n");
    ScreenSummary summary =
        run(
            "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
                + "{'column':'TIEFE','entry':'well.depth','unit':'m'}],"
                + "'only':[{'column':'KIND','is':['W']}],"
                + "'joins':[{'file':'layers.csv','id':'W',"
                + "'layers':{'to':'B','material':'M','unit':'m'}}]}",
            layers,
            wells);
    assertEquals(2, summary.screened());
    assertEquals(1, summary.setAside());
    assertEquals(3, summary.rowsRead());
    String json = Files.readString(dir.resolve("out/run.json"));
    assertTrue(json.contains("\"headers\""), json);
    assertTrue(Files.readString(dir.resolve("out/set-aside.csv")).contains("layers.csv,3"));
  }

  /** The map counts lines: what is set aside must keep its header on the line that it had. */
  @Test
  void rowsSetAsideAreReadAgainByAMapThatNamesTheLineOfTheHeader() throws Exception {
    String map =
        "{'title':'t','table':{'header':6,'delimiter':'semicolon'},'columns':["
            + "{'column':'NO','entry':'record.id'},"
            + "{'column':'DEEP','entry':'well.depth','unit':'ft'}]}";
    String above = "\nRegister of bores\nPrinted on a Friday\n\n\nNO;DEEP\n";
    Path wells = Files.writeString(dir.resolve("wells.csv"), above + "A;100\nB;20;30;40\nC;50\n");
    ScreenSummary first = run(map, wells);
    assertEquals(2, first.screened());
    assertEquals(1, first.setAside());
    String kept = Files.readString(dir.resolve("out/set-aside/wells.csv"));
    assertEquals(above + "B;20;30;40\n", kept);
    Path again = Files.createDirectories(dir.resolve("again")).resolve("wells.csv");
    Files.writeString(again, kept.replace("B;20;30;40", "B;20"));
    ScreenSummary second = run(map.replace("'t'", "'again'"), again);
    assertEquals(1, second.screened());
    assertEquals(0, second.setAside());
  }

  /**
   * A formula without its result is counted as unreadable, whether a line maps its column or not.
   */
  @Test
  void aFormulaWithoutItsResultIsNoBlank() throws Exception {
    String map =
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'DEEP','entry':'well.depth','unit':'ft'}]}";
    String rows =
        "A,#formula without a result: =B4/10,#formula without a result: =B4/10\n"
            + "B,100,\nC,,\"#formula without a result: =SUM(B4,B5)\"\n";
    run(map, Files.writeString(dir.resolve("wells.csv"), "NO,DEEP,OTHER\n" + rows));
    JsonNode run = new ObjectMapper().readTree(dir.resolve("out/run.json").toFile());
    JsonNode columns = run.path("inputs").path(0).path("columns");
    for (int i = 1; i < 3; i++) {
      JsonNode column = columns.path(i);
      assertEquals(i, column.path("unreadable").asInt(), column.toString());
      assertEquals(1, column.path("blank").asInt(), column.toString());
      assertTrue(column.toString().contains("no_result"), column.toString());
    }
  }

  /** A hundred columns that nobody here has seen: each cell of each column is accounted for. */
  @Test
  void theReadingReportAccountsForEveryCell() throws Exception {
    Path ledger = Path.of("src/test/resources/exports/ledger.csv");
    ScreenSummary summary =
        run(
            "{'title':'t','unknown':['-999'],'columns':["
                + "{'column':'PERMIT_NO','entry':'record.id'},"
                + "{'column':'SWL','entry':'water.static_level','unit':'ft'},"
                + "{'column':'CSG_MATL','entry':'well.casing_material'},"
                + "{'column':'WELL_USE','entry':'well.use','words':{'DOM':'household'}}]}",
            ledger);
    JsonNode run = new ObjectMapper().readTree(dir.resolve("out/run.json").toFile());
    JsonNode columns = run.path("inputs").path(0).path("columns");
    assertEquals(100, columns.size());
    int sentinels = 0;
    for (JsonNode column : columns) {
      long cells = 0;
      for (String state : List.of("given", "blank", "unknown", "notApplicable", "unreadable")) {
        cells += column.path(state).asLong();
      }
      assertEquals(summary.screened(), cells, column.toString());
      sentinels += column.path("notes").path("sentinel").asInt();
    }
    assertTrue(sentinels > 0, "-999 was met");
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("100 columns, 4 of them fill an entry"), page);
  }

  /** Columns that fill no entry themselves are accounted for too. */
  @Test
  void columnsThatSayWhatOthersMeanAreCountedToo() throws Exception {
    Path wells =
        Files.writeString(
            dir.resolve("w.csv"),
            "NO;D;U;ST;F;B;M;Z\nA;30;M;F;0;4;clay;\nB;;;F;;;;x\nC;9;M;D;;;;\n");
    run(
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'D','entry':'well.depth','unitFrom':'U','unitWords':{'M':'m'}}],"
            + "'only':[{'column':'ST','is':['F']}],'ignore':['Z'],"
            + "'layers':{'from':'F','to':'B','material':'M'}}",
        wells);
    JsonNode run = new ObjectMapper().readTree(dir.resolve("out/run.json").toFile());
    for (JsonNode column : run.at("/inputs/0/columns")) {
      assertEquals(
          2, column.path("given").asInt() + column.path("blank").asInt(), column.toString());
    }
  }

  /** Where the column of units is blank, nothing states the unit: that is counted and doubted. */
  @Test
  void aBlankUnitIsDoubtedAndNotCountedAsWritten() throws Exception {
    String map =
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'D','entry':'well.depth'%s,'unitFrom':'U','unitWords':{'F':'ft'}}]%s}";
    Path wells =
        Files.writeString(
            dir.resolve("w.csv"), "NO;D;U\nA;30;m\nB;90;F\nC;80;\nD;70; \nE;20 m;\nF;;\n");
    JsonNode unsaid = depth(String.format(map, "", ""), wells);
    assertEquals("unit unsaid", unsaid.at("/doubts/0/doubt").asText(), unsaid.toString());
    assertEquals(2, unsaid.at("/doubts/0/cells").asInt());
    assertEquals("ft", unsaid.at("/doubts/0/of").asText());
    assertEquals("{\"ft\":1,\"m\":2}", unsaid.path("units").toString());
    JsonNode mapped = depth(String.format(map, ",'unit':'m'", ""), wells);
    assertEquals("unit of map", mapped.at("/doubts/0/doubt").asText(), mapped.toString());
    assertEquals(2, mapped.at("/doubts/0/cells").asInt());
    assertEquals("m", mapped.at("/doubts/0/of").asText());
    assertEquals("{\"ft\":1,\"m\":4}", mapped.path("units").toString());
    JsonNode record =
        depth(String.format(map, "", ",'constants':{'record.units':'metric'}"), wells);
    assertTrue(record.path("doubts").isEmpty(), record.toString());
  }

  @Test
  void aCellThatContradictsTheUnitOfItsRowIsCounted() throws Exception {
    String map =
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'D','entry':'well.depth','unitFrom':'U','unitWords':{'F':'ft','M':'m'}}]}";
    Path wells =
        Files.writeString(
            dir.resolve("w.csv"), "NO;D;U\nA;30 m;F\nB;90;F\nC;80 ft;F\nD;70 m;M\nE;20 m;\n");
    JsonNode depth = depth(map, wells);
    assertEquals("[{\"doubt\":\"unit contradicts\",\"cells\":1}]", depth.path("doubts").toString());
    assertEquals("{\"ft\":2,\"m\":3}", depth.path("units").toString());
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("1 cells state another unit than the column of units does"));
  }

  private JsonNode depth(String map, Path wells) throws Exception {
    run(map, wells);
    JsonNode run = new ObjectMapper().readTree(dir.resolve("out/run.json").toFile());
    return run.at("/inputs/0/columns/1");
  }

  /** Of rows of one id that differ the first counts; that there are others is said. */
  @Test
  void rowsOfOneIdThatDifferAreCounted() throws Exception {
    String map =
        "{'title':'t','rows':'one record an id','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'D','entry':'well.depth','unit':'ft'%s},"
            + "{'columns':['F','I'],'join':'feet and inches','entry':'well.stickup'},"
            + "{'column':'U','entry':'well.use'},{'column':'G','entry':'well.tag'}]}";
    Path wells =
        Files.writeString(
            dir.resolve("w.csv"),
            "NO;D;F;I;U;G\nA;100;1;0;household;x1\nA;130;1;0;irrigation;x1\nA;140;1;6;;x2\n"
                + "B;50;;;household;y\nB;50.0;1;0;Household;Y\nB;;;;;\nC;9;2;0;;z\n");
    run(String.format(map, ""), wells);
    assertEquals(List.of(0, 1, 1, 0, 1, 1), differing());
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("Records whose rows differ here: 1;"), page);
    run(String.format(map, ",'ofSeveral':'most'"), wells);
    assertEquals(List.of(0, 0, 1, 0, 1, 1), differing());
  }

  private List<Integer> differing() throws Exception {
    JsonNode run = new ObjectMapper().readTree(dir.resolve("out/run.json").toFile());
    List<Integer> all = new ArrayList<>();
    for (JsonNode column : run.at("/inputs/0/columns")) {
      int cells = 0;
      for (JsonNode doubt : column.path("doubts")) {
        boolean isThis = doubt.path("doubt").asText().equals("rows differ");
        cells += isThis ? doubt.path("cells").asInt() : 0;
      }
      all.add(cells);
    }
    return all;
  }

  /** Whether a level of 0 counts hangs on another column, which may stand before it or after. */
  @Test
  void theLevelOfAFlowingWellIsCountedAsGivenInEitherOrder() throws Exception {
    String map =
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'L','entry':'water.static_level','unit':'ft'%s},"
            + "{'column':'F','entry':'water.flowing'}]}";
    for (String unit : List.of("", ",'scale':2")) {
      for (String rows : List.of("NO;L;F\nA;0;yes\nB;0;no\n", "NO;F;L\nA;yes;0\nB;no;0\n")) {
        Path wells = Files.writeString(dir.resolve("w.csv"), rows);
        run(String.format(map, unit), wells);
        JsonNode run = new ObjectMapper().readTree(dir.resolve("out/run.json").toFile());
        JsonNode columns = run.at("/inputs/0/columns");
        JsonNode level = columns.get(rows.startsWith("NO;L") ? 1 : 2);
        assertEquals("water.static_level", level.path("entry").asText());
        assertEquals(1, level.path("given").asInt(), rows + level);
        assertEquals(1, level.path("unknown").asInt(), rows + level);
        assertEquals(1, level.path("notes").path("doubted_zero").asInt(), rows + level);
      }
    }
  }

  @Test
  void theLevelOfAFlowingWellIsCountedAsGivenInJsonToo() throws Exception {
    Path json =
        Files.writeString(
            dir.resolve("a.json"),
            "{'record':{'id':'A'},'water':{'static_level':0,'flowing':true}}".replace('\'', '"'));
    run("{'title':'t','columns':[{'column':'NO','entry':'record.id'}]}", json);
    JsonNode run = new ObjectMapper().readTree(dir.resolve("out/run.json").toFile());
    for (JsonNode column : run.at("/inputs/0/columns")) {
      assertEquals(1, column.path("given").asInt(), column.toString());
    }
  }

  /** A map is for tables: that it was not used on JSON is said. */
  @Test
  void jsonIsReadByItsKeysAndTheReportSaysSo() throws Exception {
    Path json =
        Files.writeString(dir.resolve("a.json"), "{'record':{'id':'A'}}".replace('\'', '"'));
    run("{'title':'t','columns':[{'column':'NO','entry':'record.id'}]}", json);
    assertTrue(
        Files.readString(dir.resolve("out/run.json")).contains("The header map is for tables"));
  }

  @Test
  void aMapThatIsWrongWritesNothing() {
    RunFailure failure =
        assertThrows(RunFailure.class, () -> run("{'title':'t'}", dir.resolve("x.csv")));
    assertEquals(RunFailure.Kind.UNUSABLE, failure.kind());
    assertFalse(Files.exists(dir.resolve("out")));
  }
}
