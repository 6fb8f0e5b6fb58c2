package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;

/** What a survey says of columns that it has never seen. */
class HeaderSurveyTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();

  @TempDir Path dir;

  private HeaderSurvey survey(Path file) throws Exception {
    Inputs inputs = Inputs.of(List.of(file.toString()), InputStream.nullInputStream());
    return HeaderSurvey.of(inputs.inputs().get(0), CATALOGUE);
  }

  /** One column beside one of numbers. */
  private ColumnGuess column(String header, String... cells) throws Exception {
    StringBuilder text = new StringBuilder("WELL_NO;" + header + "\n");
    for (int i = 0; i < cells.length; i++) {
      text.append("w").append(i).append(';').append(cells[i]).append('\n');
    }
    return survey(Files.writeString(dir.resolve("t.csv"), text)).columns().get(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "FIN_DEPTH_FT | 120 | well.depth | ft",
        "Completed depth (m) | 36.5 | well.depth | m",
        "profondeur_m | 36.5 | well.depth | m",
        "CsgDia [in] | 6 | well.casing_diameter | in",
        "Static Water Lvl ft | 31 | water.static_level | ft",
        "SWL_M | 9.4 | water.static_level | m",
        "Pump Setting (ft) | 140 | pump.intake_depth | ft",
        "CUT-IN PSI | 40 | pressure.cut_in | psi",
        "Cut-out (kPa) | 414 | pressure.cut_out | kPa",
        "Dist. Septic Tank ft | 75 | setback.septic_tank | ft",
        "YIELD_LPM | 30 | water.yield | L/min",
        "Longitude | -76.4 | site.longitude | deg",
        "pump.intake_depth | 140 | pump.intake_depth | ft",
        "Casing Materail | steel | well.casing_material |",
        "Driller License # | D-12 | driller.licence |",
        "Date Rec'd | 2011-04-05 | dates.received |",
      })
  void tellsEntriesAndUnits(String header, String cell, String key, String unit) throws Exception {
    ColumnGuess guess = column(header, cell, cell);
    Entry entry = guess.entry();
    assertNotNull(entry, guess.why());
    assertEquals(key, entry.key(), guess.why());
    Unit found = guess.unit();
    assertEquals(unit == null ? "" : unit, found == null ? "" : found.symbol());
  }

  /** Days tell rows apart and number nothing; a few wells stand on two rows. */
  @Test
  void daysAreNoNumbersOfWells() throws Exception {
    StringBuilder text = new StringBuilder("WELLNO;CONSTR_DT;CSG_BOT_FT\n");
    for (int i = 0; i < 28; i++) {
      text.append("W0")
          .append(100 + i - i % 9 / 8)
          .append(";2009-03-")
          .append(i + 1)
          .append(";40\n");
    }
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals("record.id", keys(survey).get(0), keys(survey).toString());
  }

  /** What a letter is short for, its column has to bear out. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "SVC_ID | 1.25 | service_line.inside_diameter",
        "AMPS_NP | 8.2 | pump.nameplate_current",
        "TANK_N | 2 | tank.count",
        "BEDRMS | 3 | site.bedrooms",
        "CSG_D | 60 | well.casing_depth or well.casing_diameter",
        "CSG_D | 140 | well.casing_depth",
        "CSG_WT | 0.28 | well.casing_wall",
        "SCRN_T | 140 | well.screen_top",
        "WIRE_L | 180 | wire.length",
        "T_COLI | absent | sample.coliform",
        "PH_W | 7.4 | sample.ph",
        "GRT_BGS | 8 | grout.bags",
        "LIC | D-12 | driller.licence or installer.licence",
        "CL_PPM | 100 | disinfection.dose or sample.chloride",
        "GPS_N | 45.25 | site.latitude",
        "NITR_MG_L | 2.5 | sample.nitrate",
        "ARS_UG | 4 | sample.arsenic",
        "SVC_A | 200 |",
        "SVC_ID | A-17 |",
        "TANK_N | N-4 |",
      })
  void aLetterIsReadWhereWhatStandsInTheColumnAgrees(String header, String cell, String keys)
      throws Exception {
    ColumnGuess guess = column(header, cell, cell, cell);
    Entry entry = guess.entry();
    if (keys != null && keys.contains(" or ")) {
      assertNull(entry);
      assertTrue(guess.why().startsWith("its header may mean " + keys), guess.why());
    } else {
      assertEquals(keys == null ? "" : keys, entry == null ? "" : entry.key(), guess.why());
    }
  }

  @Test
  void aDBeforeSeveralSurroundingsIsADistance() throws Exception {
    String text = "WELL_NO;D_SEPT;D_PL;D_BLDG\nw1;60;20;30\nw2;70;15;25\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(
        List.of("setback.septic_tank", "setback.property_line", "setback.building"),
        survey.columns().stream()
            .skip(1)
            .map(c -> c.entry() == null ? "" : c.entry().key())
            .toList());
  }

  @Test
  void anLBehindATankIsLitresOnlyAmongMetricUnits() throws Exception {
    String us = "WELL_NO;TANK_L;DEPTH_FT\nw1;44;120\nw2;86;140\n";
    ColumnGuess open = survey(Files.writeString(dir.resolve("us.csv"), us)).columns().get(1);
    assertNull(open.entry());
    assertTrue(open.why().contains("may mean litres or be a letter"), open.why());
    String metric = "WELL_NO;TANK_L;DEPTH_M\nw1;170;36\nw2;320;41\n";
    ColumnGuess litres = survey(Files.writeString(dir.resolve("m.csv"), metric)).columns().get(1);
    Unit unit = litres.unit();
    assertNotNull(unit, litres.why());
    assertEquals("L", unit.symbol());
  }

  @Test
  void aColumnNamedAfterUnitsIsThatOfAllLengths() throws Exception {
    String text = "WELL_NO;M_F;FIN_DPTH;SWL\nw1;F;120;20\nw2;M;36;6\nw3;F;90;18\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals("M_F", survey.columns().get(2).written().unitFrom());
    assertEquals("M_F", survey.columns().get(3).written().unitFrom());
  }

  @Test
  void whyAnEncodingWasTakenIsSaid() throws Exception {
    String text = "WELL_NO;OWNER\nw1;Ada\nw2;Ren\u00e9e\n";
    Path file = dir.resolve("t.csv");
    Files.write(file, text.getBytes("windows-1252"));
    String notes = survey(file).notes().toString();
    assertTrue(
        notes.contains("read as Windows-1252: the byte E9 on line 3 is none of UTF-8"), notes);
    Files.write(file, ("\uFEFF" + text).getBytes("UTF-16BE"));
    HeaderSurvey big = survey(file);
    assertTrue(big.notes().toString().contains("as its byte order mark says"), big.notes() + "");
    Files.write(file, ("\uFEFF" + text).getBytes("UTF-8"));
    assertEquals("CSV, semicolon, UTF-8 with a byte order mark", survey(file).layout().label());
    assertEquals(List.of(), survey(file).notes());
    String map =
        "{\"title\": \"t\", \"table\": {\"encoding\": \"Windows-1252\"},"
            + " \"columns\": [{\"column\": \"WELL_NO\", \"entry\": \"record.id\"}]}";
    Gathered named =
        Gathered.mapped(HeaderMaps.parse("m", map, CATALOGUE), "t.csv", Files.readAllBytes(file));
    assertTrue(named.notes.get(0).contains("goes before Windows-1252"), named.notes.toString());
  }

  @Test
  void anotherNumberFurtherLeftIsADoubt() throws Exception {
    String text = "FOLIO;PMT;DEPTH_FT\nSK7;P12;120\nSK3;P14;90\nSK9;P9;70\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    String look = survey.columns().get(1).toLookAt().toString();
    assertTrue(look.contains("each row of FOLIO differs, too"), look);
  }

  @Test
  void aLongitudeNamedWestSaysWhatTheMapWants() throws Exception {
    String look = column("GPS_W", "72.125", "72.5").toLookAt().toString();
    assertTrue(look.contains("its name says west") && look.contains("\"scale\": -1"), look);
  }

  @Test
  void codesWithoutVowelsAreWords() throws Exception {
    ColumnGuess guess = column("CSG_MATL", "STL", "PVC", "STL");
    assertEquals("{STL=steel}", guess.written().words().toString());
  }

  @Test
  void stringsOfCasingAreNoLayers() throws Exception {
    String text = "WELL_NO;FR;TO;MATL\nw1;0;60;STL\nw1;60;120;PVC\nw2;0;40;STL\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(List.of(), survey.layers());
  }

  @ParameterizedTest
  @CsvSource({"REMARKS,dug by hand", "Box 7,1", "TOT_DEPTH,see file", "Depth (psi),40"})
  void leavesAloneWhatIsLikeNothing(String header, String cell) throws Exception {
    assertNull(column(header, cell, cell).entry());
  }

  @Test
  void theRangeTellsTheUnitWhereOnlyOneFits() throws Exception {
    Unit unit = column("well depth", "4500", "5200", "6100", "3900").unit();
    assertNotNull(unit);
    ColumnGuess bore = column("bore diameter", "150", "200", "152", "250");
    Unit millimetres = bore.unit();
    assertNotNull(millimetres);
    assertEquals("mm", millimetres.symbol(), bore.why());
  }

  @Test
  void nothingThatStatesAUnitIsADoubt() throws Exception {
    ColumnGuess guess = column("well depth", "100", "120", "130");
    assertTrue(guess.toLookAt().toString().contains("nothing states its unit"));
  }

  @Test
  void ninesAndZerosMayMeanUnknown() throws Exception {
    ColumnGuess guess = column("casing depth ft", "40", "-999", "0", "-999", "0", "60");
    assertEquals(List.of("-999", "0"), guess.written().unknown());
  }

  @Test
  void zerosWhereZeroIsPossibleAreADoubt() throws Exception {
    String[] cells = {"0", "0", "0", "0", "0", "31", "28", "40"};
    ColumnGuess guess = column("static level ft", cells);
    assertEquals(List.of(), guess.written().unknown());
    assertTrue(guess.toLookAt().toString().contains("0 stands in 5 cells"));
  }

  @Test
  void feetAboveAndMetresBelowAreSeen() throws Exception {
    String[] cells =
        IntStream.range(0, 60)
            .mapToObj(i -> i < 40 ? "" + (200 + i) : "" + (61 + i % 7))
            .toArray(String[]::new);
    assertTrue(
        column("well depth ft", cells).toLookAt().toString().contains("factor of about 3.28"));
    String[] even = IntStream.range(0, 60).mapToObj(i -> "" + (200 + i)).toArray(String[]::new);
    assertTrue(column("well depth ft", even).toLookAt().isEmpty());
  }

  /** A concentration may lie a factor of three from others by itself. */
  @Test
  void noFeetAndMetresAreSeenInWhatIsNoLength() throws Exception {
    String[] cells =
        IntStream.range(0, 60).mapToObj(i -> i < 30 ? "12" : "3.8").toArray(String[]::new);
    ColumnGuess arsenic = column("Arsenic ug/L", cells);
    assertEquals("sample.arsenic", arsenic.entry().key());
    assertFalse(arsenic.toLookAt().toString().contains("factor of about 3.28"));
  }

  @Test
  void unitsOfBothSystemsInCellsAreSeen() throws Exception {
    ColumnGuess guess = column("well depth", "100 ft", "30 m", "120 ft", "40 m");
    assertTrue(guess.toLookAt().toString().contains("units of both systems: ft (2), m (2)"));
  }

  @ParameterizedTest
  @CsvSource({
    "3/25/2001,4/2/2002,month first",
    "25.3.2001,2.4.2002,day first",
    "2001-03-25,2002-04-02,iso",
    "3/5/2001,4/2/2002,''",
    "25/3/2001,3/25/2001,''"
  })
  void theOrderOfDatesIsToldOrNot(String one, String two, String order) throws Exception {
    ColumnGuess guess = column("date drilled", one, two);
    assertEquals(order, guess.written().dates());
    assertEquals(order.isEmpty(), !guess.toLookAt().isEmpty());
  }

  @Test
  void codesAreLaidBesideChoices() throws Exception {
    ColumnGuess guess = column("well use", "DOM", "IRR", "Select", "xyzzy");
    assertEquals(Map.of("DOM", "household", "IRR", "irrigation"), guess.written().words());
    assertEquals(List.of("Select"), guess.written().unknown());
    assertTrue(guess.toLookAt().toString().contains("'xyzzy'"));
  }

  @Test
  void aColumnOfUnitsSaysThoseOfItsNeighbours() throws Exception {
    Path file =
        Files.writeString(
            dir.resolve("t.csv"),
            "FILE_REF;DPTH_TOT;DPTH_UNIT;BORE_MM;RELIEF_PSI\nA;100;FT;150;75\nB;30;M;200;100\n");
    HeaderSurvey survey = survey(file);
    assertEquals("DPTH_UNIT", survey.columns().get(1).written().unitFrom());
    String filled = MapDraft.of(survey).replace("\"?\"", "\"well.depth\"");
    HeaderMap map = HeaderMaps.parse("draft", filled, CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", Files.readString(file));
    int depth = CATALOGUE.index("well.depth");
    assertEquals(30.48, all.records.get(0).lo(depth), 1e-9);
    assertEquals(30, all.records.get(1).lo(depth), 1e-9);
    assertEquals("well.bore_diameter", survey.columns().get(3).entry().key());
    assertEquals("relief.setting", survey.columns().get(4).entry().key());
    assertFalse(survey.columns().get(1).toLookAt().toString().contains("is blank"));
  }

  @Test
  void blanksInAColumnOfUnitsAreSaid() throws Exception {
    Path file =
        Files.writeString(
            dir.resolve("t.csv"), "FILE_REF;DPTH_TOT;DPTH_UNIT\nA;100;FT\nB;30;M\nC;90;\nD;80; \n");
    HeaderSurvey survey = survey(file);
    assertEquals("DPTH_UNIT", survey.columns().get(1).written().unitFrom());
    String doubts = survey.columns().get(1).toLookAt().toString();
    assertTrue(doubts.contains("DPTH_UNIT is blank in 2 rows; ft is a guess there"), doubts);
  }

  @Test
  void aNumberOnSeveralRowsIsTakenAndDoubted() throws Exception {
    StringBuilder text = new StringBuilder("STATE;FOLIO;DPTH\n");
    for (int i = 0; i < 30; i++) {
      text.append("F;OR-").append(i / 3).append(';').append(i % 3 == 0 ? "120" : "").append('\n');
    }
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    Entry entry = survey.columns().get(1).entry();
    assertNotNull(entry);
    assertEquals("record.id", entry.key());
    assertTrue(survey.columns().get(1).toLookAt().toString().contains("one record an id"));
  }

  @Test
  void wordsThatLeaveTwoColumnsOpenAreNotGuessed() throws Exception {
    Path file =
        Files.writeString(
            dir.resolve("t.csv"),
            "WELL_NO,CASE_DEEP_M,SHORT_CSG_DIA_IN,LONG_CSG_DIA_IN\nA,9,10,6\nB,8,10,6\n");
    HeaderSurvey survey = survey(file);
    Entry casing = survey.columns().get(1).entry();
    assertNotNull(casing);
    assertEquals("well.casing_depth", casing.key());
    for (int column : new int[] {2, 3}) {
      ColumnGuess guess = survey.columns().get(column);
      assertNull(guess.entry(), guess.why());
      String other = column == 2 ? "LONG_CSG_DIA_IN" : "SHORT_CSG_DIA_IN";
      assertTrue(guess.why().contains("may mean well.casing_diameter, but so may " + other));
    }
    Path second =
        Files.writeString(
            dir.resolve("t.csv"), "WELL_NO,CASE_DEEP_M,CASE2_DEEP_M\nA,9,30\nB,8,40\n");
    ColumnGuess later = survey(second).columns().get(2);
    assertNull(later.entry(), later.why());
    assertEquals("its header may mean well.casing_depth, which CASE_DEEP_M fills", later.why());
    assertTrue(MapDraft.of(survey).contains("but so may SHORT_CSG_DIA_IN"), MapDraft.of(survey));
  }

  @Test
  void namesAboveRowsOfMoreCellsAreTheHeaderAndTheDraftReadsThem() throws Exception {
    Path file =
        Files.writeString(
            dir.resolve("t.csv"), "PERMIT,DEEPNESS\nP-1,100,cold,1\nP-2,110,,2\nP-3,90,warm,\n");
    HeaderSurvey survey = survey(file);
    assertEquals(1, survey.layout().headerLine());
    assertEquals(3, survey.rows());
    assertEquals(
        List.of("PERMIT", "DEEPNESS", "column 3", "column 4"),
        survey.columns().stream().map(guess -> guess.survey().name()).toList());
    String draft = MapDraft.of(survey);
    assertTrue(draft.contains("\"moreColumns\" : 2"), draft);
    assertTrue(draft.contains("\"column\" : 3"), draft);
    HeaderMap map = HeaderMaps.parse("draft", draft, CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", Files.readString(file));
    assertEquals(List.of("P-1", "P-2", "P-3"), all.ids());
  }

  @Test
  void whatOneColumnFillsIsNoLongerOpenForAnother() throws Exception {
    String text = "NO,Total Depth,Finished Depth\nA,110,100\nB,95,90\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(List.of("record.id", "well.drilled_depth", "well.depth"), keys(survey));
    String twice = "NO,Depth,Well Depth\nA,110,100\nB,95,90\n";
    HeaderSurvey open = survey(Files.writeString(dir.resolve("t.csv"), twice));
    assertEquals(List.of("record.id", "", ""), keys(open));
    assertEquals(
        "its header may mean well.depth, but so may Well Depth; put it in one of them",
        open.columns().get(1).why());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "TOT_DEPTH_FT | 120 | well.depth or well.drilled_depth, and its words leave open which",
        "D_FIELD | 120 | setback.absorption_field, but says so only in part",
        "DIST_FOSSE | 30 | setback.septic_tank or setback.manure_storage or setback.holding_tank,"
            + " but says so only in part",
      })
  void whatTheWordsOfAHeaderLeaveOpenIsSaidAndNotGuessed(String header, String cell, String may)
      throws Exception {
    ColumnGuess guess = column(header, cell, cell);
    assertNull(guess.entry());
    assertEquals("its header may mean " + may, guess.why());
  }

  @Test
  void anOpenLineOfTheDraftHasAllButTheEntry() throws Exception {
    Path file = Files.writeString(dir.resolve("t.csv"), "NO,TD_FT\nA,110\nB,-999\nC,300\nD,-999\n");
    String draft = MapDraft.of(survey(file));
    assertTrue(draft.contains("well.depth or well.drilled_depth"), draft);
    HeaderMap open = HeaderMaps.parse("draft", draft, CATALOGUE);
    assertEquals(
        List.of("A", "B", "C", "D"), Gathered.mapped(open, "t.csv", Files.readString(file)).ids());
    HeaderMap map =
        HeaderMaps.parse("draft", draft.replace("\"?\"", "\"well.drilled_depth\""), CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", Files.readString(file));
    int depth = CATALOGUE.index("well.drilled_depth");
    assertEquals(110 * 0.3048, all.records.get(0).lo(depth), 1e-9);
    assertFalse(all.records.get(1).isGiven(depth));
  }

  @Test
  void aColumnThatOnlyCountsTheRowsIsNoNumberOfARecordWhereAnotherMayBe() throws Exception {
    String text = "OBJ,CARD,X\n1,K-7,a\n2,K-3,a\n3,K-9,b\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(List.of("", "record.id", ""), keys(survey));
    assertTrue(
        survey.columns().get(1).doubts().toString().contains("does not say that it is the number")
            && survey.columns().get(1).doubts().toString().contains("differs, too: OBJ"),
        survey.columns().get(1).doubts().toString());
    String alone = "OBJ,X\n1,a\n2,a\n3,b\n";
    HeaderSurvey only = survey(Files.writeString(dir.resolve("t.csv"), alone));
    assertEquals(List.of("record.id", ""), keys(only));
    assertTrue(only.columns().get(0).doubts().toString().contains("may only count the rows"));
  }

  @Test
  void rowsWithMoreCellsHereAndFewerThereAreSaid() throws Exception {
    String text = "PERMIT,DEPTH,PLACE\nP-1,100,a,b\nP-2,110,a,b,c\nP-3,90,a,b,c,d\nP-4,80,a,b\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(1, survey.layout().headerLine());
    assertTrue(
        survey.notes().get(0).startsWith("nearly all rows have more cells than the header, from 4"),
        survey.notes().toString());
  }

  @Test
  void theDraftRunsAsItStands() throws Exception {
    Path ledger = Path.of("src/test/resources/exports/ledger.csv");
    HeaderSurvey survey = survey(ledger);
    assertEquals(100, survey.columns().size());
    assertEquals(240, survey.rows());
    assertEquals(4, survey.layout().headerLine());
    HeaderMap map = HeaderMaps.parse("draft", MapDraft.of(survey), CATALOGUE);
    Sources sources = new Sources(CATALOGUE, map);
    Inputs inputs =
        sources.prepare(Inputs.of(List.of(ledger.toString()), InputStream.nullInputStream()));
    try (RecordSource source = sources.open(inputs.inputs().get(0))) {
      assertNull(source.unusable());
      ChunkReader reader = new ChunkReader(CATALOGUE);
      long[] records = {0};
      for (Chunk chunk = source.next(); chunk != null; chunk = source.next()) {
        ChunkTally tally =
            reader.read(
                chunk,
                new RecordSink() {
                  @Override
                  public void record(org.wellcurb.record.WellRecord record, RawRow raw) {
                    records[0]++;
                    // TOT_DEPTH may be that of the hole or of the well: somebody has to say so.
                    assertFalse(record.isGiven(CATALOGUE.index("well.depth")));
                    assertTrue(record.isGiven(CATALOGUE.index("dates.received")));
                  }

                  @Override
                  public void setAside(SetAside row) {
                    assertEquals(245, row.row(), "only the line of the total");
                  }
                });
        for (int column = 0; column < 100; column++) {
          long cells = 0;
          for (int state = 0; state < 5; state++) {
            cells += tally.cells(column, state);
          }
          assertEquals(tally.records(), cells, "every cell of column " + column);
        }
      }
      assertEquals(240, records[0]);
    }
  }

  @Test
  void twoColumnsOfOneNameAreNamedByPlace() throws Exception {
    Path file =
        Files.writeString(dir.resolve("t.csv"), "ID,Well Depth,Well Depth\nA,100,7\nB,90,8\n");
    String draft = MapDraft.of(survey(file));
    assertTrue(draft.contains("\"column\" : 2"), draft);
    assertNotNull(HeaderMaps.parse("draft", draft, CATALOGUE));
  }

  @Test
  void whatIsNoTableIsRefused() throws Exception {
    Path json = Files.writeString(dir.resolve("t.json"), "{\"record\":{\"id\":\"A\"}}");
    assertThrows(IntakeException.class, () -> survey(json));
    Path empty = Files.writeString(dir.resolve("e.csv"), "");
    assertThrows(IntakeException.class, () -> survey(empty));
  }

  @Test
  void repeatedHeadersTotalsAndRemarksAreNotCounted() throws Exception {
    StringBuilder text = new StringBuilder("WELL_NO;TOT_DEPTH_FT;DATE DRILLED\n");
    for (int i = 0; i < 30; i++) {
      text.append("W-").append(i).append(';').append(100 + i).append(";2004-05-1").append(i % 9);
      text.append(i % 10 == 9 ? "\nTotal:;3000;\nWELL_NO;TOT_DEPTH_FT;DATE DRILLED\n" : "\n");
    }
    text.append("Grand total;9000;\nPrinted by the office of records;;\nPage 2 of 3;;\n");
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(30, survey.rows());
    assertEquals(
        List.of(
            "4 rows are none: looks like a total, not like a record",
            "2 rows are none: only a remark stands in it",
            "3 rows are none: the header again"),
        survey.notes());
    assertEquals(129, survey.columns().get(1).survey().most());
    assertEquals("iso", survey.columns().get(2).written().dates());
    assertTrue(survey.columns().get(0).toLookAt().isEmpty(), "each number stands once");
    HeaderMap map = HeaderMaps.parse("draft", MapDraft.of(survey), CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", text.toString());
    assertEquals(30, all.records.size());
    assertEquals(9, all.aside.size(), all.reasons().toString());
  }

  @Test
  void aRowThatIsBrokenDoesNotEndTheLook() throws Exception {
    String text = "WELL_NO;DEPTH_FT;NOTE\nA;10;\"x\"y\nB;20;z\nC;30\nD;40;w\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(2, survey.rows());
    assertEquals(2, survey.notes().size(), survey.notes().toString());
  }

  @Test
  void signsAreKept() throws Exception {
    ColumnGuess guess = column("elevation ft", "-12", "\u22127.5", "30");
    assertEquals(-12, guess.survey().least());
    assertEquals(30, guess.survey().most());
  }

  @Test
  void commasThatMayBeEitherAreADoubt() throws Exception {
    assertTrue(column("yield gpm", "1,250", "2,100").toLookAt().toString().contains("set comma"));
    ColumnGuess settled = column("depth m", "1,250", "21,5", "8,75");
    assertFalse(settled.toLookAt().toString().contains("set comma"), settled.toLookAt().toString());
    assertEquals(1.25, settled.survey().least());
    ColumnGuess thousands = column("depth ft", "1,250.5", "1,100", "900");
    assertEquals(1250.5, thousands.survey().most());
  }

  @ParameterizedTest
  @CsvSource({
    "total depth ft,9999.99",
    "total depth ft,-1",
    "casing diameter in,99999",
    "date drilled,9999-12-31",
    "date drilled,00/00/0000",
    "date drilled,1900-01-00",
    "date drilled,12/30/1899",
    "longitude,-999"
  })
  void whatMeansUnknownIsSeenThoughItStandsOnce(String header, String text) throws Exception {
    String[] cells = {text, "6", "6.5", "7"};
    String[] dates = {text, "2004-05-06", "2004-05-07", "2004-05-08"};
    assertEquals(
        List.of(text),
        column(header, header.startsWith("date") ? dates : cells).written().unknown());
  }

  @Test
  void negativeElevationsAreNoWayToSayUnknown() throws Exception {
    assertEquals(List.of(), column("elevation ft", "-11", "-88", "-99", "12").written().unknown());
  }

  @Test
  void groupsAboveTheNamesAreBroughtTogether() throws Exception {
    String text =
        "Export of the wells register;;;;;;\n;Casing;;Screen;;;\n"
            + "Well No;Depth (ft);Diameter (in);Top (ft);Bottom (ft);Total depth (ft);Remarks\n"
            + "A;40;6;90;100;101;x\nB;42;6;80;95;97;y\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    List<String> keys = new java.util.ArrayList<>();
    for (ColumnGuess guess : survey.columns()) {
      Entry entry = guess.entry();
      keys.add(entry == null ? "" : entry.key());
    }
    assertEquals(
        List.of(
            "record.id",
            "well.casing_depth",
            "well.casing_diameter",
            "well.screen_top",
            "well.screen_bottom"),
        keys.subList(0, 5));
    HeaderMap map = HeaderMaps.parse("draft", MapDraft.of(survey), CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", text);
    assertEquals(List.of("A", "B"), all.ids());
    assertEquals(12.192, all.records.get(0).lo(CATALOGUE.index("well.casing_depth")), 1e-9);
  }

  @Test
  void aTitleAboveTheTableIsNoGroup() throws Exception {
    String text = "Register;;\nOffice:;North;\nWell No;Depth (ft);Remarks\nA;40;x\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals("Well No", survey.columns().get(0).survey().name());
    assertEquals("Depth (ft)", survey.columns().get(1).survey().name());
  }

  private static List<String> keys(HeaderSurvey survey) {
    List<String> keys = new java.util.ArrayList<>();
    for (ColumnGuess guess : survey.columns()) {
      Entry entry = guess.entry();
      keys.add(entry == null ? "" : entry.key());
    }
    return keys;
  }

  @Test
  void partsOfOneValueAreJoined() throws Exception {
    String text =
        "Ref\tTD Ft\tTD In\tLat Deg\tLat Min\tLat Sec\tLon Deg\tLon Min\tLon Sec\n"
            + "A\t120\t6\t44\t30\t0\t-75\t15\t36.0\nB\t99\t\t44\t12\t10\t-75\t1\t2\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.tsv"), text));
    assertEquals(
        List.of("record.id", "", "", "site.latitude", "", "", "site.longitude", "", ""),
        keys(survey));
    String filled = MapDraft.of(survey).replace("\"?\"", "\"well.depth\"");
    HeaderMap map = HeaderMaps.parse("draft", filled, CATALOGUE);
    org.wellcurb.record.WellRecord record = Gathered.mapped(map, "t.tsv", text).records.get(0);
    assertEquals(120.5 * 0.3048, record.lo(CATALOGUE.index("well.depth")), 1e-9);
    assertEquals(44.5, record.lo(CATALOGUE.index("site.latitude")), 1e-9);
    assertEquals(-75.26, record.lo(CATALOGUE.index("site.longitude")), 1e-9);
  }

  @Test
  void wholeDegreesAloneAreADoubt() throws Exception {
    assertTrue(
        column("latitude", "44", "45").toLookAt().toString().contains("where are the minutes"));
    assertFalse(column("latitude", "44.5", "45").toLookAt().toString().contains("minutes"));
  }

  @Test
  void eachMeasureMayHaveItsColumnOfUnits() throws Exception {
    String text =
        "BORE_ID,DEPTH_VAL,DEPTH_UOM,YIELD_VAL,YIELD_UOM\nA,30,M,2,L/S\nB,30,M,2,KL/D\n"
            + "C,40,M,2,bucket\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals("DEPTH_UOM", survey.columns().get(1).written().unitFrom(), "of one unit only");
    assertEquals("YIELD_UOM", survey.columns().get(3).written().unitFrom());
    assertTrue(
        survey.columns().get(3).toLookAt().toString().contains("no units in YIELD_UOM: bucket"));
    HeaderMap map = HeaderMaps.parse("draft", MapDraft.of(survey), CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", text);
    int flow = CATALOGUE.index("water.yield");
    assertEquals(0.002, all.records.get(0).lo(flow), 1e-12);
    assertEquals(2 / 86400.0, all.records.get(1).lo(flow), 1e-12);
    assertFalse(all.records.get(2).isGiven(flow));
    assertEquals(30, all.records.get(0).lo(CATALOGUE.index("well.depth")), 1e-12);
  }

  @Test
  void whatCouldNotBeReadIsSaidBeforehand() throws Exception {
    String[] cells = {"31", "near top", "flowing", "near top", "28", "27.5", "40"};
    String doubts = column("static level ft", cells).toLookAt().toString();
    assertTrue(doubts.contains("2 cells are not read as it stands: 'near top'"), doubts);
    assertFalse(column("flowing artesian", "oui", "non").toLookAt().toString().contains("choices"));
  }

  @Test
  void figuresAreNoChoices() throws Exception {
    Entry stickup = column("casing stickup ft", "1.5", "1.5", "2").entry();
    assertNotNull(stickup);
    assertEquals("well.stickup", stickup.key());
    Entry relief = column("relief valve psi", "75", "75").entry();
    assertNotNull(relief);
    assertEquals("relief.setting", relief.key());
  }

  @Test
  void codesThatDifferInCapitalsAloneAreDraftedOnce() throws Exception {
    String text = "Ref;Aim\nA;H\nB;HH\nC;h\nD;H\nE;hh\n";
    String draft = MapDraft.of(survey(Files.writeString(dir.resolve("t.csv"), text)));
    assertTrue(draft.contains("\"H\" : \"?\""), draft);
    assertTrue(draft.contains("\"HH\" : \"?\""), draft);
    assertFalse(draft.contains("\"h\" :") || draft.contains("\"hh\" :"), draft);
  }

  @Test
  void yearsInWordsAreDates() throws Exception {
    Entry drilled = column("Drilled", "1940's", "Pre 1928", "12-May-04", "3/14/99", "?").entry();
    assertNotNull(drilled);
    assertEquals("dates.completed", drilled.key());
  }

  @Test
  void cellsThatHoldBothEndsFillBoth() throws Exception {
    String text = "Ref;Screen (ft)\nA;88 to 98\nB;90-100\nC;open hole\nD;30-36.5 m\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    HeaderMap map = HeaderMaps.parse("draft", MapDraft.of(survey), CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", text);
    int top = CATALOGUE.index("well.screen_top");
    int bottom = CATALOGUE.index("well.screen_bottom");
    assertEquals(88 * 0.3048, all.records.get(0).hi(top), 1e-9);
    assertEquals(100 * 0.3048, all.records.get(1).lo(bottom), 1e-9);
    assertEquals(30, all.records.get(3).lo(top), 1e-9);
    assertEquals(36.5, all.records.get(3).lo(bottom), 1e-9);
  }

  @Test
  void layersBesideOneAnotherAreDraftedEachByItself() throws Exception {
    String text =
        "WCR_NUM,FIN_DEPTH,DEPTH_UOM,LYR1_TOP,LYR1_BTM,LYR1_DESC,LYR2_TOP,LYR2_BTM,LYR2_DESC,CSG1_TOP\n"
            + "A,90,F,0,12,sand,12,90,clay,0\n"
            + "B,30,M,0,9,clay,,,,0\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(ColumnGuess.Role.UNITS, survey.columns().get(2).role());
    assertEquals("it is the bottom of layer 2", survey.columns().get(7).why());
    assertEquals(ColumnGuess.Role.ENTRY, survey.columns().get(9).role());
    HeaderMap map = HeaderMaps.parse("draft", MapDraft.of(survey), CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", text);
    assertEquals(List.of("A", "B"), all.ids());
    assertEquals(2, all.records.get(0).layers().size());
    assertEquals("clay", all.records.get(0).layers().get(1).material());
    assertEquals(90 * 0.3048, all.records.get(0).layers().get(1).to().lo(), 1e-9);
    assertEquals(1, all.records.get(1).layers().size());
    assertEquals(9, all.records.get(1).layers().get(0).to().lo(), 1e-9);
  }

  @Test
  void layersOfWhichEachIsARowAreDraftedAsOneRecord() throws Exception {
    String text = "BORE,FROM_M,TO_M,LITHOLOGY\nA,0,3.5,sand\nA,3.5,20,clay\nB,0,7,clay\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    HeaderMap map = HeaderMaps.parse("draft", MapDraft.of(survey), CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", text);
    assertEquals(List.of("A", "B"), all.ids());
    assertEquals(2, all.records.get(0).layers().size());
    assertEquals(20, all.records.get(0).layers().get(1).to().lo(), 1e-9);
    assertEquals(3, all.rows);
  }

  @Test
  void depthsOfOneWellARowAreNoLayers() throws Exception {
    String text = "Well No,Top,Bottom,Formation\nA,90,100,sand\nB,80,95,clay\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(List.of(), survey.layers());
  }

  @Test
  void daysThatASpreadsheetCountedAreDraftedSo() throws Exception {
    String text = "Well No,Date received\nA,39814\nB,40000\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertTrue(survey.columns().get(1).written().areDayNumbers());
    assertEquals(List.of(), survey.columns().get(1).toLookAt());
    HeaderMap map = HeaderMaps.parse("draft", MapDraft.of(survey), CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", text);
    assertEquals(
        java.time.LocalDate.of(2009, 1, 1).toEpochDay(),
        all.records.get(0).lo(CATALOGUE.index("dates.received")));
  }

  /** Programs write 0 for no date, among day numbers too. */
  @Test
  void zerosForBlanksHideNoDayNumbers() throws Exception {
    String text = "Well No,Date received\nA,39814\nB,0\nC,0\nD,40000\nE,0\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertTrue(survey.columns().get(1).written().areDayNumbers());
    assertEquals(List.of("0"), survey.columns().get(1).written().unknown());
    assertEquals(List.of(), survey.columns().get(1).toLookAt());
    HeaderMap map = HeaderMaps.parse("draft", MapDraft.of(survey), CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", text);
    int received = CATALOGUE.index("dates.received");
    assertEquals(java.time.LocalDate.of(2009, 1, 1).toEpochDay(), all.records.get(0).lo(received));
    assertEquals(WellRecord.UNKNOWN, all.records.get(1).state(received));
  }

  @Test
  void noDiameterIsInTheFeetOfItsNeighbours() throws Exception {
    String text = "WELL_NO,DEPTH,DEPTH_UOM,SCREEN_SLOT\nA,100,F,20\nB,30,M,10\nC,120,F,10\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    ColumnGuess slot = survey.columns().get(3);
    assertEquals("", slot.written().unitFrom());
    assertTrue(slot.toLookAt().toString().contains("0.001 for thousandths"), slot.toString());
  }

  @Test
  void figuresTooLargeForFeetAreTakenForInches() throws Exception {
    ColumnGuess guess = column("CSG_HT_ABV_GS", "18", "24", "12");
    assertEquals("in", guess.unit().symbol());
    assertTrue(guess.toLookAt().toString().contains("in ft its figures would be too large"));
    assertEquals("ft", column("CSG_HT_ABV_GS", "1.5", "2", "1").unit().symbol());
  }

  @Test
  void theFinishedDepthGoesBeforeTheTotal() throws Exception {
    String text = "WELL_NO,TOTAL_DEPTH_FT,FIN_DEPTH_FT,PUMP_INST\nA,130,120,Y\nB,90,88,N\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(List.of("record.id", "well.drilled_depth", "well.depth", ""), keys(survey));
  }

  @Test
  void degreesMayBeMarkedByDoubledLetters() throws Exception {
    String text = "WELL_NO,LAT_DD,LAT_MM,LAT_SS\nA,44,30,0\nB,44,12,10\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(List.of("LAT_MM", "LAT_SS"), survey.columns().get(1).joined());
  }

  @Test
  void aLongitudeThatStatesNoSideIsADoubt() throws Exception {
    String head = "WELL_NO,LON_D,LON_M,LON_S";
    String rows = "\nA,71,30,0\nB,71,12,10\n";
    String east = "nothing states east or west";
    HeaderSurvey none = survey(Files.writeString(dir.resolve("t.csv"), head + rows));
    assertTrue(none.columns().get(1).toLookAt().toString().contains(east));
    String minus = head + rows.replace(",71", ",-71");
    HeaderSurvey signed = survey(Files.writeString(dir.resolve("t.csv"), minus));
    assertFalse(signed.columns().get(1).toLookAt().toString().contains(east));
    String letters = head + ",LON_EW\nA,71,30,0,W\nB,71,12,10,W\n";
    HeaderSurvey lettered = survey(Files.writeString(dir.resolve("t.csv"), letters));
    assertEquals(3, lettered.columns().get(1).joined().size());
    assertFalse(lettered.columns().get(1).toLookAt().toString().contains(east));
  }

  /** What a header names is not what another word names that is spelt nearly alike. */
  @ParameterizedTest
  @CsvSource({
    "Chloride,sample.chloride",
    "Chlorine hours,disinfection.contact_time",
    "pH (SU),sample.ph",
    "Mn (mg/L),sample.manganese",
    "UTM_ZONE,''",
    "Date,''",
    "DRILLED_YR,dates.completed"
  })
  void aWordThatIsKnownIsNoSlipOfAnother(String header, String key) throws Exception {
    String[] cells =
        header.contains("ZONE") ? new String[] {"18T", "18T"} : new String[] {"7", "6.9", "7.2"};
    String[] years = {"1998", "2004"};
    Entry entry = column(header, header.contains("YR") ? years : cells).entry();
    assertEquals(key, entry == null ? "" : entry.key());
  }

  @Test
  void theNumberOfTheWellGoesBeforeThatOfTheLine() throws Exception {
    String text = "OBJECTID,WELLID,STATIC_M_BGL\n1,GW1,5\n2,GW2,6\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(List.of("", "record.id", "water.static_level"), keys(survey));
    assertEquals("m", survey.columns().get(2).unit().symbol());
    assertEquals(List.of(), survey.columns().get(2).toLookAt());
  }

  /** What the draft says of commas holds for all columns: then a blank parts thousands. */
  @Test
  void whatTheDraftReadsIsNotSaidToBeUnread() throws Exception {
    String text =
        "Well Ref;Iron mg/l;Manganese mg/l;TDS mg/l\nA;0,03;0,4;1 200\nB;1,2;0,02;1 350\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(List.of(), survey.columns().get(3).toLookAt());
    HeaderMap map = HeaderMaps.parse("draft", MapDraft.of(survey), CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", text);
    int solids = CATALOGUE.index("sample.dissolved_solids");
    assertEquals("1 200", all.records.get(0).written(solids));
    assertTrue(all.records.get(0).isGiven(solids));
    String plain = text.replace("0,03;0,4", "3;4").replace("1,2;0,02", "1;2");
    HeaderSurvey unsure = survey(Files.writeString(dir.resolve("t.csv"), plain));
    assertTrue(unsure.columns().get(3).toLookAt().toString().contains("2 cells are not read"));
  }

  @Test
  void pointsBesideDecimalCommasAreADoubt() throws Exception {
    String text = "Well Ref;Iron mg/l;TDS;Elevation m\nA;0,03;1.020;12.5\nB;1,2;210;1.250\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertTrue(survey.columns().get(2).toLookAt().toString().contains("1.020 may be in thousands"));
    assertFalse(survey.columns().get(3).toLookAt().toString().contains("thousands"));
    HeaderMap map = HeaderMaps.parse("draft", MapDraft.of(survey), CATALOGUE);
    Gathered all = Gathered.mapped(map, "t.csv", text);
    assertEquals(1, all.notes.size(), all.notes.toString());
    assertTrue(all.notes.get(0).startsWith("figures such as 1.020 in column TDS"));
    String commas = text.replace("0,03", "0.03").replace("1,2;", "1.2;");
    assertEquals(List.of(), Gathered.mapped(map, "t.csv", commas).notes);
  }

  private static ColumnGuess named(HeaderSurvey survey, String name) {
    return survey.columns().stream()
        .filter(guess -> guess.survey().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static String entryOf(HeaderSurvey survey, String name) {
    Entry entry = named(survey, name).entry();
    return entry == null ? "" : entry.key();
  }

  @Test
  void wordsOfManyColumnsAreTakenForUnknown() throws Exception {
    String text =
        "Well Ref;Well depth (m);Casing depth (m);Static level (m);Remark\n"
            + "A;30;vide;12;vide\nB;vide;9;vide;x\nC;31;8;vide;y\nD;44;sec;7;z\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals(List.of("vide"), survey.forUnknown());
    String draft = MapDraft.of(survey);
    assertTrue(draft.contains("\"unknown\" : [ \"vide\" ]"), draft);
    Gathered all = Gathered.mapped(HeaderMaps.parse("d", draft, CATALOGUE), "t.csv", text);
    assertEquals("SENTINEL", all.records.get(1).note(CATALOGUE.index("well.depth")).name());
  }

  @Test
  void aColumnOfUnitsIsOfTheMeasureItIsNamedAfter() throws Exception {
    String text =
        "Well Ref;Ground Z;Z U;Casing to;Septic tank distance\n"
            + "A;400;F;80;90\nB;122;M;85;100\nC;410;F;88;75\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals("Z U", named(survey, "Ground Z").written().unitFrom());
    assertEquals("", named(survey, "Casing to").written().unitFrom());
    assertEquals("", named(survey, "Septic tank distance").written().unitFrom());
    // Named after what nothing is guessed of, it serves nobody else.
    String other = text.replace("Ground Z;Z U", "Grid line;Grid U");
    HeaderSurvey none = survey(Files.writeString(dir.resolve("o.csv"), other));
    assertEquals("", named(none, "Casing to").written().unitFrom());
  }

  @Test
  void aSwitchCutsInAndOut() throws Exception {
    String text = "Well Ref;CUT_IN;CUT_OUT\nA;30;50\nB;40;60\nC;20;40\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals("pressure.cut_in", entryOf(survey, "CUT_IN"));
    assertEquals("pressure.cut_out", entryOf(survey, "CUT_OUT"));
  }

  @Test
  void whatStandsInAColumnTellsWhatItIsNot() throws Exception {
    String text =
        "Well Ref;PH;Coli;Disinfected on;Crepine A;Running A\n"
            + "A;1;neg;2011-05-06;30;7,5\nB;3;pos;2012-06-07;31,5;8\nC;1;neg;2013-07-08;32;9\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    assertEquals("pump.phase", entryOf(survey, "PH"));
    assertEquals("sample.coliform", entryOf(survey, "Coli"));
    assertEquals("dates.disinfected", entryOf(survey, "Disinfected on"));
    assertEquals("well.screen_bottom", entryOf(survey, "Crepine A"));
    assertEquals("pump.running_current", entryOf(survey, "Running A"));
  }

  @Test
  void fractionsAreAmongTheFigures() throws Exception {
    assertEquals(10.125, column("bore diameter in", "10", "10 1/8", "9-1/2").survey().most());
    assertEquals(9.5, column("bore diameter in", "10", "10 1/8", "9-1/2").survey().least());
  }

  @Test
  void aColumnOfNoEntryHasALineThatIsReadyToBeFilled() throws Exception {
    String text =
        "Well Ref;Xyz_M;Qrs;When;Days;Kq;Note\n"
            + "A;3,5;A1;13/04/2011;40646;Y;dug\nB;4,5;B2;05/06/2012;41065;N;by hand\n"
            + "C;7,25;A1;14/06/2012;41066;N;so\n";
    HeaderSurvey survey = survey(Files.writeString(dir.resolve("t.csv"), text));
    String draft = MapDraft.of(survey);
    var map = new com.fasterxml.jackson.databind.ObjectMapper().readTree(draft);
    assertEquals("day first", map.path("dates").asText());
    java.util.Map<String, String> lines = new java.util.TreeMap<>();
    for (var line : map.path("columns")) {
      String column = line.path("column").asText();
      ((com.fasterxml.jackson.databind.node.ObjectNode) line).remove(List.of("column", "$comment"));
      lines.put(column, line.toString());
    }
    assertEquals("{\"entry\":\"?\",\"unit\":\"m\"}", lines.get("Xyz_M"));
    assertEquals("{\"entry\":\"?\",\"words\":{\"A1\":\"?\",\"B2\":\"?\"}}", lines.get("Qrs"));
    assertEquals("{\"entry\":\"?\",\"dates\":\"day first\"}", lines.get("When"));
    assertEquals("{\"entry\":\"?\",\"dayNumbers\":\"from 1900\"}", lines.get("Days"));
    assertEquals("{\"entry\":\"?\"}", lines.get("Kq"));
    Gathered all = Gathered.mapped(HeaderMaps.parse("d", draft, CATALOGUE), "t.csv", text);
    assertEquals(List.of(), all.reasons());
    assertTrue(all.records.get(0).extras().toString().contains("Xyz_M"), "kept with its record");
    String filled = draft.replaceFirst("(\"Xyz_M\",\\s+\"entry\" : )\"\\?\"", "$1\"well.depth\"");
    all = Gathered.mapped(HeaderMaps.parse("d", filled, CATALOGUE), "t.csv", text);
    assertEquals(3.5, all.records.get(0).lo(CATALOGUE.index("well.depth")), 1e-9);
  }
}
