package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Extra;
import org.wellcurb.record.WellRecord;

class HeaderMapTest {
  private static final String WIDER =
      "PERMIT_NO,TOT_DEPTH_FT\nP-1,100,cold,1\nP-2,110,,\nP-3,120,,3\nP-4,130,warm,\n";

  @Test
  void rowsThatGoOnBeyondTheHeaderAreSetAsideAndSaid() throws Exception {
    HeaderMap map = map("{'title':'t','columns':[{'column':'PERMIT_NO','entry':'record.id'}]}");
    Gathered all = Gathered.mapped(map, "t.csv", WIDER);
    assertEquals(List.of(), all.ids());
    assertEquals(4, all.reasons().size());
    assertTrue(
        all.reasons().get(0).contains("has 4 cells, the header has 2, as in nearly all rows"),
        all.reasons().toString());
  }

  @Test
  void aMapNamesTheColumnsBeyondTheHeaderByTheirPlaces() throws Exception {
    HeaderMap map =
        map(
            "{'title':'t','table':{'moreColumns':2},'columns':[{'column':'PERMIT_NO',"
                + "'entry':'record.id'},{'column':4,'entry':'well.tag'}]}");
    Gathered all = Gathered.mapped(map, "t.csv", WIDER + "P-5,140\n\"P-6\",150\nP-7,1,2\n");
    assertEquals(List.of("P-1", "P-2", "P-3", "P-4", "P-5", "P-6"), all.ids());
    assertEquals(List.of("8: has 3 cells, the header has 4"), all.reasons());
  }

  private static final Catalogue CATALOGUE = Catalogue.standard();

  private static HeaderMap map(String json) throws MapException {
    return HeaderMaps.parse("map.json", json.replace('\'', '"'), CATALOGUE);
  }

  private static Gathered read(String json, String text) throws MapException, IOException {
    return Gathered.mapped(map(json), "a.csv", text);
  }

  /** Reads one row with these mappings beside the id. */
  private static WellRecord one(String columns, String header, String row)
      throws MapException, IOException {
    String json = "{'title':'t','columns':[{'column':'NO','entry':'record.id'}," + columns + "]}";
    Gathered all = read(json, "NO;" + header + "\nA;" + row + "\n");
    assertEquals(List.of(), all.reasons());
    return all.records.get(0);
  }

  private static double si(WellRecord record, String key) {
    return record.lo(CATALOGUE.index(key));
  }

  private static String written(WellRecord record, String key) {
    return record.written(CATALOGUE.index(key));
  }

  private static int state(WellRecord record, String key) {
    return record.state(CATALOGUE.index(key));
  }

  private static String note(WellRecord record, String key) {
    return record.note(CATALOGUE.index(key)).name();
  }

  @Test
  void secondsMayHaveADecimalComma() throws Exception {
    String map =
        "'comma':'decimal','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'Y','entry':'site.latitude'},{'column':'X','entry':'site.longitude'}]";
    Gathered all =
        read(
            "{'title':'t'," + map + "}",
            "NO;Y;X\nA;51°24'36,9\" N;7°10'8,1\" W\nB;51 24 36,9 N;W 7 10,135\nC;51,41025;-7\nD;51° 75';-7\n");
    double y = 51 + 24 / 60.0 + 36.9 / 3600;
    assertEquals(y, si(all.records.get(0), "site.latitude"), 1e-9);
    assertEquals(y, si(all.records.get(1), "site.latitude"), 1e-9);
    assertEquals(y, si(all.records.get(2), "site.latitude"), 1e-9);
    double x = -(7 + 10 / 60.0 + 8.1 / 3600);
    assertEquals(x, si(all.records.get(0), "site.longitude"), 1e-9);
    assertEquals(x, si(all.records.get(1), "site.longitude"), 1e-9);
    assertEquals("PART_TOO_LARGE", note(all.records.get(3), "site.latitude"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'entry':'well.use','words':{'H':'household',|'h':'irrigation'}",
        "'entry':'water.flowing','words':{'P':'yes',|'p ':'no'}",
        "'entry':'well.depth','unit':'ft','unitFrom':'U','unitWords':{'A':'ft',|'a':'m'}"
      })
  void aWordIsNotGivenTwoMeaningsByItsCapitals(String first, String second) throws Exception {
    String head = "{'title':'t','columns':[{'column':'NO','entry':'record.id'},{'column':'C',";
    MapException refused =
        assertThrows(MapException.class, () -> map(head + first + "\n" + second + "}]}"));
    assertEquals(1, refused.problems().size());
    MapProblem problem = refused.problems().get(0);
    assertEquals(2, problem.line());
    assertTrue(problem.what().contains("are one word"), problem.what());
    String same = first.substring(first.lastIndexOf(':') + 1, first.length() - 1);
    String word = second.substring(0, second.indexOf(':') + 1);
    map(head + first + "\n" + word + same + "}}]}");
  }

  @Test
  void oneCodeThatTheWordsOfTheMapLackSetsNoRowAside() throws Exception {
    String json =
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'AIM','entry':'well.use','words':{'H':'household'}}]}";
    Gathered all = read(json, "NO;AIM\nA;H;\nB;h;\nC;H;\nD;ZZ;\n");
    assertEquals(List.of(), all.reasons());
    assertEquals(List.of("A", "B", "C", "D"), all.ids());
    assertEquals(WellRecord.UNREADABLE, all.records.get(3).state(CATALOGUE.index("well.use")));
  }

  @Test
  void aSentinelIsMetHoweverItsFigureIsWritten() throws Exception {
    String map =
        "{'title':'t','comma':'decimal','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'L','entry':'water.static_level','unit':'ft','unknown':['-888','7777']}]}";
    Gathered all = read(map, "NO;L\nA;-888,0\nB;7 777\nC;-888\nD;-888,5\n");
    for (int i = 0; i < 3; i++) {
      assertEquals("SENTINEL", note(all.records.get(i), "water.static_level"));
    }
    assertTrue(!note(all.records.get(3), "water.static_level").equals("SENTINEL"));
  }

  @Test
  void wordsForNoValueAreNotTakenApart() throws Exception {
    String map =
        "{'column':'S','split':['/',' '],'into':[{'entry':'well.screen_top','unit':'ft'},"
            + "{'entry':'well.screen_bottom','unit':'ft'}]}";
    WellRecord none = one(map, "S", "n/a");
    assertEquals(WellRecord.NOT_APPLICABLE, state(none, "well.screen_top"));
    assertEquals(WellRecord.NOT_APPLICABLE, state(none, "well.screen_bottom"));
    assertEquals(WellRecord.UNKNOWN, state(one(map, "S", "not known"), "well.screen_top"));
    assertEquals("PARTS_MISSING", note(one(map, "S", "110"), "well.screen_top"));
  }

  @Test
  void inchesAndMinutesHaveNoSignOfTheirOwn() throws Exception {
    String feet = "{'columns':['F','I'],'join':'feet and inches','entry':'well.depth','unit':'ft'}";
    assertEquals("NOT_A_NUMBER", note(one(feet, "F;I", "10;-6"), "well.depth"));
    assertEquals(10.5 * 0.3048, si(one(feet, "F;I", "10;6"), "well.depth"), 1e-12);
    String angle = "{'columns':['D','M'],'join':'degrees','entry':'site.latitude'}";
    assertEquals("NOT_A_NUMBER", note(one(angle, "D;M", "44;-15"), "site.latitude"));
  }

  @Test
  void aCellThatStatesItsUnitIsNotScaled() throws Exception {
    String map = "{'column':'T','entry':'pump.intake_depth','unit':'ft','scale':0.1}";
    assertEquals("SCALE_AND_UNIT", note(one(map, "T", "12 ft"), "pump.intake_depth"));
    assertEquals(12 * 0.3048, si(one(map, "T", "120"), "pump.intake_depth"), 1e-12);
    assertEquals(12 * 0.3048, si(one(map, "T", "~120"), "pump.intake_depth"), 1e-12);
  }

  /** West of Greenwich without a letter: the marks are those of joining, and state no side. */
  @Test
  void degreesMayHaveTheOtherSignUnlessALetterStatesIt() throws Exception {
    String map = "{'columns':['D','M','S'],'join':'degrees','entry':'site.longitude','scale':-1}";
    WellRecord west = one(map, "D;M;S", "71;16;27.3");
    assertEquals(-(71 + 16 / 60.0 + 27.3 / 3600), si(west, "site.longitude"), 1e-9);
    assertEquals(-71.5, si(one(map, "D;M;S", "71;30;"), "site.longitude"), 1e-9);
    assertEquals("SCALE_AND_UNIT", note(one(map, "D;M;S", "71;16;27 W"), "site.longitude"));
    String whole = "{'column':'X','entry':'site.longitude','scale':-1}";
    assertEquals(-71.5, si(one(whole, "X", "71\u00B0 30'"), "site.longitude"), 1e-9);
    String tenths = map.replace("-1", "0.1");
    assertEquals("SCALE_AND_UNIT", note(one(tenths, "D;M;S", "71;16;27"), "site.longitude"));
  }

  @Test
  void aTableOfOtherColumnsIsNoneOfTheMapped() throws Exception {
    String map =
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'A','entry':'well.depth','unit':'ft'},{'column':'B','entry':'well.tag'},"
            + "{'column':'C','entry':'well.use'},{'column':'D','entry':'well.method'}]}";
    Gathered other = read(map, "NO;FROM;TO;WHAT\n1;0;9;clay\n1;9;20;sand\n");
    assertEquals(0, other.records.size());
    assertTrue(
        other.reasons().toString().contains("holds 1 of the 5 columns"), "" + other.reasons());
    assertEquals(1, read(map, "NO;A;TO\n1;90;9\n").records.size());
    assertEquals(1, read(map, "NO;pump.voltage;TO\n1;230;9\n").records.size());
  }

  @Test
  void aColumnFillsItsEntryInItsUnitAndTheRestIsKept() throws Exception {
    WellRecord record =
        one("{'column':'Depth_M','entry':'well.depth','unit':'m'}", "depth_m;x;well.tag", "30;y;T");
    assertEquals(30, si(record, "well.depth"), 1e-12);
    assertEquals("T", written(record, "well.tag"));
    assertEquals(List.of(new Extra("x", "y")), record.extras());
  }

  @Test
  void aColumnMayBeNamedByItsPlaceWhereThereIsNoHeader() throws Exception {
    String json =
        "{'title':'t','table':{'header':0},'columns':[{'column':2,'entry':'record.id'},"
            + "{'column':1,'entry':'well.depth','unit':'ft'}]}";
    Gathered all = read(json, "10,A\n20,B\n");
    assertEquals(List.of("A", "B"), all.ids());
    assertEquals(3.048, si(all.records.get(0), "well.depth"), 1e-12);
    assertEquals(1, all.records.get(0).row());
  }

  @Test
  void unitsMayStandInAnotherColumn() throws Exception {
    String column =
        "{'column':'D','entry':'well.depth','unit':'ft','unitFrom':'U','unitWords':{'MTR':'m'}}";
    assertEquals(10, si(one(column, "D;U", "10;mtr"), "well.depth"), 1e-12);
    assertEquals(10, si(one(column, "D;U", "10;m"), "well.depth"), 1e-12);
    assertEquals(3.048, si(one(column, "D;U", "10;"), "well.depth"), 1e-12);
    assertEquals(3.048, si(one(column, "D;U", "10 ft;m"), "well.depth"), 1e-12);
    WellRecord unread = one(column, "D;U", "10;cubits");
    assertEquals(WellRecord.UNREADABLE, state(unread, "well.depth"));
    assertEquals("10 cubits", written(unread, "well.depth"));
  }

  @Test
  void datesHaveTheOrderOfTheirColumn() throws Exception {
    String columns =
        "{'column':'D','entry':'dates.started','dates':'day first'},"
            + "{'column':'M','entry':'dates.completed','dates':'month first','pivot':1930}";
    WellRecord record = one(columns, "D;M", "03/04/2009;03/04/68");
    assertEquals(java.time.LocalDate.of(2009, 4, 3).toEpochDay(), si(record, "dates.started"));
    assertEquals(java.time.LocalDate.of(1968, 3, 4).toEpochDay(), si(record, "dates.completed"));
  }

  @Test
  void wordsAreTranslatedAndQuotedAsWritten() throws Exception {
    WellRecord record =
        one(
            "{'column':'M','entry':'well.casing_material','words':{'S':'steel','x':'unknown'}}",
            "M",
            "s");
    assertEquals("steel", record.choice(CATALOGUE.index("well.casing_material")));
    assertEquals("s", written(record, "well.casing_material"));
  }

  @Test
  void scaleHoldsForTheWrittenPlaceToo() throws Exception {
    WellRecord record =
        one("{'column':'D','entry':'well.depth','unit':'m','scale':0.1}", "D", "1234");
    assertEquals(123.4, si(record, "well.depth"), 1e-9);
    assertEquals(0.05, record.halfPlace(CATALOGUE.index("well.depth")), 1e-12);
    assertEquals("1234", written(record, "well.depth"));
    record = one("{'column':'X','entry':'site.longitude','scale':-0.000001}", "X", "93500000");
    assertEquals(-93.5, si(record, "site.longitude"), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "feet and inches | 5;6 1/2 | 1.6891",
        "feet and inches | 5; | 1.524",
        "feet and inches | ;6 | 0.1524",
        "number and unit | 5;m | 5",
        "first | ;7 m | 7",
        "range | 5 m;7 m | 5"
      })
  void severalColumnsMakeOneLength(String join, String cells, double metres) throws Exception {
    String columns = "{'columns':['A','B'],'join':'" + join + "','entry':'well.depth','unit':'ft'}";
    assertEquals(metres, si(one(columns, "A;B", cells), "well.depth"), 1e-9);
  }

  @Test
  void severalColumnsMakeAPositionADateAText() throws Exception {
    String columns =
        "{'columns':['D','M','S','Q'],'join':'degrees','entry':'site.longitude'},"
            + "{'columns':['Y','MO','DA'],'join':'year, month, day','entry':'dates.completed'},"
            + "{'columns':['T1','T2'],'join':'text','with':'-','entry':'well.tag'}";
    String header = "D;M;S;Q;Y;MO;DA;T1;T2";
    WellRecord record = one(columns, header, "93;30;0;W;2009;5;31;x;7");
    assertEquals(-93.5, si(record, "site.longitude"), 1e-9);
    assertEquals(java.time.LocalDate.of(2009, 5, 31).toEpochDay(), si(record, "dates.completed"));
    assertEquals("x-7", written(record, "well.tag"));
    record = one(columns, header, "93;30;;W;2009;5;;;");
    assertEquals(java.time.LocalDate.of(2009, 5, 1).toEpochDay(), si(record, "dates.completed"));
    assertEquals("", written(record, "well.tag"));
  }

  @Test
  void aCellMayBeSplitOverEntries() throws Exception {
    String columns =
        "{'column':'S','split':'/','into':[{'entry':'well.screen_top','unit':'m'},"
            + "{'entry':'well.screen_bottom','unit':'m'}]}";
    WellRecord record = one(columns, "S", "30 / 36.5");
    assertEquals(30, si(record, "well.screen_top"), 1e-12);
    assertEquals(36.5, si(record, "well.screen_bottom"), 1e-12);
    record = one(columns, "S", "30 / 36 / 40");
    assertEquals(WellRecord.UNREADABLE, state(record, "well.screen_top"));
    assertEquals("30 / 36 / 40", written(record, "well.screen_bottom"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "30-36.5 m | 30 | 36.5",
        "30 to 36.5 | 9.144 | 11.1252",
        "1.5 - 40 | 0.4572 | 12.192",
        "30 m - 36.5 m | 30 | 36.5",
        "30 m/40 ft | 30 | 12.192"
      })
  void aCellIsSplitByTheFirstSeparatorThatFitsAndItsLastUnitHoldsForAll(
      String cell, double top, double bottom) throws Exception {
    String columns =
        "{'column':'S','split':[' to ',' - ','-','/'],'into':[{'entry':'grout.top','unit':'ft'},"
            + "{'entry':'grout.bottom','unit':'ft'}]}";
    WellRecord record = one(columns, "S", cell);
    assertEquals(top, si(record, "grout.top"), 1e-9);
    assertEquals(bottom, si(record, "grout.bottom"), 1e-9);
    record = one(columns, "S", "100");
    assertEquals(
        WellRecord.UNREADABLE, state(record, "grout.top"), "one end, and nobody knows which");
    assertEquals("100", written(record, "grout.bottom"));
  }

  @Test
  void whatMeansUnknownIsKnownByColumnAndForAll() throws Exception {
    String json =
        "{'title':'t','unknown':['-999','nil'],'columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'D','entry':'well.depth','unit':'m','unknown':['0']},"
            + "{'column':'R','entry':'well.rock_depth','unit':'m'}]}";
    Gathered all = read(json, "NO,D,R\nA,0,0\nB,-999.0,NIL\n");
    assertEquals(WellRecord.UNKNOWN, state(all.records.get(0), "well.depth"));
    assertEquals(0, si(all.records.get(0), "well.rock_depth"));
    assertEquals(WellRecord.UNKNOWN, state(all.records.get(1), "well.depth"));
    assertEquals(WellRecord.UNKNOWN, state(all.records.get(1), "well.rock_depth"));
  }

  @Test
  void onlyTheRowsThatAreWantedAreTaken() throws Exception {
    String json =
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'}],"
            + "'only':[{'column':'T','is':['W','well']},{'column':'S','isNot':['draft','']}]}";
    Gathered all = read(json, "NO,T,S\nA,w,ok\nB,P,ok\nC,Well,draft\nD,W,\n");
    assertEquals(List.of("A"), all.ids());
    assertEquals(1, all.rows);
    assertEquals(3, all.leftOut);
  }

  @Test
  void rowsAreNotTakenByAColumnThatIsNotThere() throws Exception {
    String json =
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'}],"
            + "'only':[{'column':'T','is':['W']}]}";
    Gathered all = read(json, "NO,TYPE\nA,W\nB,P\n");
    assertEquals(List.of(), all.ids(), "or pits would be screened as wells");
    assertTrue(all.reasons().get(0).contains("by the column T, which the file lacks"));
  }

  @Test
  void constantsHoldForEveryRecord() throws Exception {
    String json =
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'D','entry':'well.depth'}],"
            + "'constants':{'record.units':'metric','record.jurisdiction':'fenwick'}}";
    WellRecord record = read(json, "NO,D\nA,10\n").records.get(0);
    assertEquals(10, si(record, "well.depth"), 1e-12);
    assertEquals("fenwick", written(record, "record.jurisdiction"));
  }

  @Test
  void theRowsOfOneIdMayMakeOneRecord() throws Exception {
    String json =
        "{'title':'t','rows':'one record an id','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'D','entry':'well.casing_depth','unit':'m','ofSeveral':'most'},"
            + "{'column':'DIA','entry':'well.casing_diameter','unit':'mm','ofSeveral':'least'},"
            + "{'column':'T','entry':'well.tag'},"
            + "{'column':'Q','entry':'water.yield','unit':'gpm','ofSeveral':'range'}],"
            + "'layers':{'from':'F','to':'B','material':'M','unit':'m'}}";
    Gathered all =
        read(
            json,
            "NO,D,DIA,T,Q,F,B,M\nA,10,300,,5,0,4,clay\nB,7,150,b,,,,\na ,30,150,x,8,4,9,sand\n"
                + "A,20\n");
    assertEquals(List.of("A", "B"), all.ids());
    WellRecord record = all.records.get(0);
    assertEquals(30, si(record, "well.casing_depth"), 1e-12);
    assertEquals(0.15, si(record, "well.casing_diameter"), 1e-12);
    assertEquals("x", written(record, "well.tag"));
    assertEquals("5; 8", written(record, "water.yield"));
    assertEquals(2, record.layers().size());
    assertEquals("sand", record.layers().get(1).material());
    assertEquals(new Interval(0, 0), record.layers().get(0).from());
    assertEquals(4, all.rows);
    assertEquals(1, all.joinedRows);
    assertEquals(1, all.aside.size());
  }

  @Test
  void aRowMayHoldSeveralLayers() throws Exception {
    String json =
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'}],'layers':["
            + "{'to':'B1','material':'M1','unit':'m'},"
            + "{'from':'T2','to':'B2','material':'M2','unit':'ft'}]}";
    Gathered all = read(json, "NO,B1,M1,T2,B2,M2\nA,4,clay,x,20,sand\nB,,,,,\nC,5,peat,,,\n");
    assertEquals(List.of("A", "B", "C"), all.ids());
    assertEquals(2, all.records.get(0).layers().size());
    assertEquals(6.096, all.records.get(0).layers().get(1).to().lo(), 1e-9);
    assertEquals("x; 20", all.records.get(0).layers().get(1).depths());
    assertEquals(0, all.records.get(1).layers().size());
    assertEquals("peat", all.records.get(2).layers().get(0).material());
  }

  @Test
  void otherTablesMayBelongToTheRecords() throws Exception {
    String json =
        "{'title':'t','columns':[{'column':'NO','entry':'record.id'},"
            + "{'column':'KEY','entry':'well.tag'}],'joins':["
            + "{'file':'layers.csv','id':'WELL','layers':{'to':'B','material':'M','unit':'ft'}},"
            + "{'file':'tests.csv','id':'K','matches':'KEY','dates':'day first','columns':["
            + "{'column':'Q','entry':'water.test_rate','unit':'gpm','ofSeveral':'last'},"
            + "{'column':'ON','entry':'dates.tested','ofSeveral':'last'}],"
            + "'setbacks':{'from':'S','distance':'DIST','unit':'m','words':{'st':'septic_tank'}}}]}";
    HeaderMap map = map(json);
    Sources sources = new Sources(CATALOGUE, map, 64);
    List<Input> inputs = new ArrayList<>();
    inputs.add(input("layers.csv", "WELL,B,M\nB,10,clay\nA,20,sand\nZ,5,peat\n"));
    inputs.add(input("d/tests.csv", "K,Q,ON,S,DIST\n7,5,01/02/2009,ST,30\n7,6,03/04/2010,,\n"));
    inputs.add(input("wells.csv", "NO,KEY\nA,7\nB,8\nC,\n"));
    Inputs prepared = sources.prepare(new Inputs(inputs, List.of()));
    assertEquals(
        List.of("wells.csv", "layers.csv", "d/tests.csv"),
        prepared.inputs().stream().map(Input::file).toList());
    Gathered all = Gathered.of(sources, prepared.inputs());
    assertEquals(List.of("A", "B", "C"), all.ids());
    WellRecord a = all.records.get(0);
    assertEquals("sand", a.layers().get(0).material());
    assertEquals(6 * 3.785411784e-3 / 60, si(a, "water.test_rate"), 1e-12);
    assertEquals(java.time.LocalDate.of(2010, 4, 3).toEpochDay(), si(a, "dates.tested"));
    assertEquals(30, si(a, "setback.septic_tank"), 1e-12);
    assertEquals("clay", all.records.get(1).layers().get(0).material());
    assertEquals(List.of("4: " + RowFault.NO_RECORD), all.reasons());
    assertEquals("layers.csv", all.aside.get(0).file());
    assertEquals(8, all.rows);
  }

  private static Input input(String name, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return new Input(name, null, Form.TABLE, () -> new ByteArrayInputStream(bytes));
  }

  @Test
  void aTableThatIsJoinedMustBeGiven() throws Exception {
    HeaderMap map = map("{'title':'t','columns':[],'joins':[{'file':'x.csv','id':'A'}]}");
    IntakeException e =
        assertThrows(
            IntakeException.class,
            () -> new Sources(CATALOGUE, map).prepare(new Inputs(List.of(), List.of())));
    assertTrue(e.getMessage().startsWith("x.csv: "));
  }

  @Test
  void theMapMaySayEncodingDelimiterAndHeaderLine() throws Exception {
    String json =
        "{'title':'t','table':{'encoding':'Windows-1252','delimiter':'bar','header':3},"
            + "'columns':[{'column':'NO','entry':'record.id'},{'column':'T','entry':'well.tag'}]}";
    byte[] bytes = "é\nNO|T\nNO|T\nA|é\n".getBytes(Charset.forName("windows-1252"));
    Gathered all = Gathered.mapped(map(json), "a.csv", bytes);
    assertEquals("é", written(all.records.get(0), "well.tag"));
    assertEquals(4, all.records.get(0).row());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'title':'t'} | 1:1 | the key \"columns\" is missing",
        "{'title':'t','columns':[],'colums':[]} | 1:27 /colums | did you mean \"columns\"?",
        "{'title':'t','columns':[{'column':'A','entry':'wel.depth'}]} | /columns/0/entry | did you mean well.depth?",
        "{'title':'t','columns':[{'column':'A','entry':'well.depth','unit':'psi'}]} | /columns/0/unit | psi is pressure",
        "{'title':'t','columns':[{'column':'A','entry':'well.depth','unit':'cubit'}]} | /columns/0/unit | is not known",
        "{'title':'t','columns':[{'column':'A','entry':'well.use','words':{'H':'hotel'}}]} | /columns/0/words/H | is no choice",
        "{'title':'t','columns':[{'column':'A','entry':'dates.started','scale':2}]} | /columns/0/scale | cannot be multiplied",
        "{'title':'t','columns':[{'column':'A','columns':['B','C'],'entry':'well.depth'}]} | /columns/0 | give one of them",
        "{'title':'t','columns':[{'columns':['B','C'],'entry':'well.depth'}]} | /columns/0 | go together",
        "{'title':'t','columns':[{'columns':['A','B','C'],'join':'range','entry':'well.depth'}]} | /columns/0/columns | does not take 3",
        "{'title':'t','columns':[{'column':'A','entry':'well.tag'},{'column':'B','entry':'well.tag'}]} | /columns/1 | filled by",
        "{'title':'t','columns':[{'column':'A','entry':'layers'}]} | /columns/0/entry | is a list",
        "{'title':'t','columns':[{'column':'A','entry':'well.tag','dates':'middle'}]} | /columns/0/dates | one of",
        "{'title':'t','columns':[],'only':[{'column':'A'}]} | /only/0 | give one of them",
        "{'title':'t','columns':[],'constants':{'well.dept':'3'}} | /constants/well.dept | did you mean well.depth?",
        "{'title':'t','columns':[], | 1: | not JSON",
        "{'title':'t','columns':[]} ] | 1: | not JSON",
        "{'title':'t','columns':[],'pivot':NaN} | 1: | not JSON (Non-standard token 'NaN')",
        "{'title':'t','title':'u','columns':[]} | 1: | not JSON",
        "[] | 1:1 | cannot stand here"
      })
  void whatIsWrongWithAMapIsSaidWithItsPlaceAndWhatMendsIt(String json, String at, String what) {
    MapException e = assertThrows(MapException.class, () -> map(json));
    String said = e.getMessage();
    assertTrue(said.contains(at) && said.contains(what), said);
    assertTrue(e.problems().stream().allMatch(p -> p.line() > 0), said);
  }

  @Test
  void allProblemsAreSaidInOneGo() {
    String json =
        "{'title':'t',\n'columns':[\n{'column':'A','entry':'wel.tag'},\n"
            + "{'column':'B','entry':'well.depth','unit':'psi'}]}";
    MapException e = assertThrows(MapException.class, () -> map(json));
    assertEquals(List.of(3, 4), e.problems().stream().map(MapProblem::line).toList());
  }
}
