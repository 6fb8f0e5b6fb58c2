package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;

/**
 * What offices really write in their tables, and what must be made of it. All rows are invented.
 */
class RealTablesTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();
  private static final double FOOT = 0.3048;

  /** The records of a table of {@code record.id} and one column, a cell a row. */
  private static List<WellRecord> column(String header, String... cells) {
    StringBuilder text = new StringBuilder("record.id\t" + header + "\n");
    for (int i = 0; i < cells.length; i++) {
      text.append("W-").append(i).append('\t').append(cells[i]).append('\n');
    }
    Gathered all = Gathered.csv(text.toString());
    assertEquals(List.of(), all.reasons());
    assertEquals(cells.length, all.records.size());
    return all.records;
  }

  private static List<WellRecord> mapped(String columns, String text) throws Exception {
    String map = "{'title':'t','columns':[{'column':'NO','entry':'record.id'}," + columns + "]}";
    Gathered all =
        Gathered.mapped(HeaderMaps.parse("m", map.replace('\'', '"'), CATALOGUE), "a.csv", text);
    assertEquals(List.of(), all.reasons());
    return all.records;
  }

  private static String told(WellRecord record, String key) {
    int entry = CATALOGUE.index(key);
    Note note = record.note(entry);
    String said = note == Note.NONE ? "" : " " + note;
    return switch (record.state(entry)) {
      case WellRecord.UNKNOWN -> "unknown" + said;
      case WellRecord.NOT_APPLICABLE -> "n/a" + said;
      case WellRecord.UNREADABLE -> "unreadable" + said;
      default ->
          record.lo(entry) == record.hi(entry)
              ? shown(record.lo(entry)) + said
              : shown(record.lo(entry)) + ".." + shown(record.hi(entry)) + said;
    };
  }

  private static String shown(double value) {
    return Double.isInfinite(value) ? "" : String.format(java.util.Locale.ROOT, "%.4f", value);
  }

  private static void reads(String header, Map<String, String> cells) {
    String key = HeaderKey.of(header).key();
    List<WellRecord> records = column(header, cells.keySet().toArray(String[]::new));
    int i = 0;
    for (Map.Entry<String, String> cell : cells.entrySet()) {
      WellRecord record = records.get(i++);
      assertEquals(cell.getValue(), told(record, key), cell.getKey());
      assertEquals(cell.getKey().strip(), record.written(CATALOGUE.index(key)), "kept as written");
    }
  }

  private static Map<String, String> cells(String... cellsAndReadings) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < cellsAndReadings.length; i += 2) {
      cells.put(cellsAndReadings[i], cellsAndReadings[i + 1]);
    }
    return cells;
  }

  private static double day(int year, int month, int day) {
    return LocalDate.of(year, month, day).toEpochDay();
  }

  private static String date(String cell, String map) throws Exception {
    WellRecord record =
        mapped("{'column':'D','entry':'dates.completed'" + map + "}", "NO;D\nA;" + cell + "\n")
            .get(0);
    int entry = CATALOGUE.index("dates.completed");
    return record.isGiven(entry)
        ? end(record.lo(entry)) + ".." + end(record.hi(entry))
        : told(record, "dates.completed");
  }

  private static String end(double day) {
    return Double.isInfinite(day) ? "" : LocalDate.ofEpochDay((long) day).toString();
  }

  /** Everything that stands in cells of amounts, whatever the typewriter. */
  @Test
  void everyFormOfAnAmountIsReadOrQuoted() {
    for (String twelve :
        List.of(
            "12 ft.", "12'", "12\u00A0ft", "12\u2032", "12\u2019", "12 FT", "12feet", "12.0 Ft")) {
      reads("well.depth [m]", Map.of(twelve, "3.6576"));
    }
    reads(
        "well.depth [ft]",
        cells(
            "5'-6 1/2\"", "1.6891",
            "5\u2032 6\u00BD\u2033", "1.6891",
            "60' 7''", "18.4658",
            "60ft7in", "18.4658",
            "120'+", "36.5760..",
            "N/A", "n/a",
            "DRY", "unreadable NOT_A_NUMBER",
            ">100", "30.4800..",
            "\u2265100", "30.4800..",
            "10 to 15", "3.0480..4.5720",
            "10\u201315 m", "10.0000..15.0000",
            "9 m to 18 m (30 to 60 ft)", "9.0000..18.0000",
            "20 m (66 ft)", "20.0000",
            "66 ft (2 m)", "unreadable UNITS_DISAGREE",
            "est. 40", "12.1920 APPROXIMATE",
            "approx 90 ft", "27.4320 APPROXIMATE",
            "52.0 (landowner)", "15.8496 COMMENT",
            "100 \u00B1 5", "28.9560..32.0040",
            "4E+05", "121920.0000",
            "12/2", "unreadable NOT_A_NUMBER",
            "100 ft below casing", "unreadable UNKNOWN_UNIT",
            "1\u00A0250", "381.0000"));
    reads(
        "well.casing_diameter [mm]",
        cells("1-1/4\"", "0.0318", "6\u00BC\u2033", "0.1588", "1\u00BD in", "0.0381"));
    reads("drop_pipe.inside_diameter [in]", cells("1-1/4", "0.0318", "3/4\"", "0.0190"));
    reads(
        "water.static_level [ft]",
        cells(
            "FLOWING @ 3 gpm", "..0.0000 FLOWING",
            "FLOWS", "..0.0000 FLOWING",
            "\u22122.5", "-0.7620",
            "\u20132.5", "-0.7620",
            "DRY", "unknown DRY",
            "dry hole", "unknown DRY",
            "0 ft", "0.0000",
            "artesian 2 ft above", "unreadable NOT_A_NUMBER"));
    reads(
        "wire.gauge",
        cells("12/2", "12.0000 CABLE", "4/0", "-3.0000", "#10", "10.0000", "10 AWG", "10.0000"));
    reads(
        "pump.insulation_resistance [Mohm]",
        cells(
            "OL", "2000000.0000.. OVER_RANGE",
            "\u221E", "2000000.0000.. OVER_RANGE",
            ">200", "200000000.0000.."));
  }

  @Test
  void mostEntriesAreAbsent() {
    Gathered all =
        Gathered.csv("record.id,well.depth,water.static_level,water.yield\nA,,,\nB,120,,\nC,,,5\n");
    assertEquals(3, all.recordCount);
    for (WellRecord record : all.records) {
      assertEquals("unknown", told(record, "water.static_level"));
    }
    assertEquals("unknown", told(all.records.get(0), "well.depth"));
  }

  @Test
  void missingHasManySpellings() throws Exception {
    String[] words = {
      "NA", "unknown", "UNKNOWN", "unkown", "Not Available", "?", "Select", "#VALUE!", "-", "N/K"
    };
    for (String header : List.of("well.depth [m]", "dates.completed", "well.use", "well.cap")) {
      String key = HeaderKey.of(header).key();
      List<WellRecord> records = column(header, words);
      for (int i = 0; i < words.length; i++) {
        assertEquals("unknown", told(records.get(i), key), words[i]);
        assertEquals(words[i], records.get(i).written(CATALOGUE.index(key)));
      }
    }
    List<WellRecord> own =
        mapped(
            "{'column':'D','entry':'well.depth','unit':'m','unknown':['9999','keine Angabe']},"
                + "{'column':'C','entry':'dates.completed','unknown':['1900-01-01']}",
            "NO;D;C\nA;9999;1900-01-01\nB;9999.0;1900-01-02\nC;Keine Angabe;\n");
    assertEquals("unknown SENTINEL", told(own.get(0), "well.depth"));
    assertEquals("unknown SENTINEL", told(own.get(0), "dates.completed"));
    assertEquals("unknown SENTINEL", told(own.get(1), "well.depth"));
    assertTrue(own.get(1).isGiven(CATALOGUE.index("dates.completed")));
    assertEquals("unknown SENTINEL", told(own.get(2), "well.depth"));
    assertEquals("9999", own.get(0).written(CATALOGUE.index("well.depth")));
  }

  @Test
  void zeroIsOftenNoZero() {
    reads(
        "well.casing_depth [ft]",
        cells("0", "unknown DOUBTED_ZERO", "0.00", "unknown DOUBTED_ZERO", "0 ft", "0.0000"));
    reads("grout.top [ft]", cells("0", "0.0000"));
    reads("setback.septic_tank [ft]", cells("0", "unknown DOUBTED_ZERO"));
    reads("setback.property_line [ft]", cells("0", "0.0000"));
    String header = "record.id,water.static_level [ft],water.flowing\n";
    for (String order :
        List.of(
            header + "A,0,%s\n",
            "water.flowing," + header.replace(",water.flowing", "") + "%s,A,0\n")) {
      for (String[] flowing :
          new String[][] {
            {"", "unknown DOUBTED_ZERO"},
            {"no", "unknown DOUBTED_ZERO"},
            {"yes", "0.0000"},
            {"Y", "0.0000"}
          }) {
        WellRecord record = Gathered.csv(String.format(order, flowing[0])).records.get(0);
        assertEquals(flowing[1], told(record, "water.static_level"), order + flowing[0]);
      }
    }
    assertEquals(
        "0.0000",
        told(
            Gathered.of(
                    "a.json",
                    "{\"record\":{\"id\":\"A\"},\"water\":{\"static_level\":0,\"flowing\":true}}"
                        .getBytes(StandardCharsets.UTF_8),
                    4096)
                .records
                .get(0),
            "water.static_level"));
  }

  /** What the map says of numbers holds for layers and distances too. */
  @Test
  void layersAndDistancesAreReadAsTheMapSays() throws Exception {
    String map =
        "{'title':'t','comma':'decimal','unknown':['-9'],'columns':["
            + "{'column':'NO','entry':'record.id'}],"
            + "'layers':{'from':'F','to':'B','material':'M','unit':'m'},"
            + "'setbacks':{'from':'K','distance':'D','unit':'m'}}";
    List<WellRecord> records =
        Gathered.mapped(
                HeaderMaps.parse("m", map.replace('\'', '"'), CATALOGUE),
                "a.csv",
                "NO;F;B;M;K;D\nA;0;1,250;clay;septic tank;30,125\nB;1,5;-9;sand;building;-9\n")
            .records;
    int tank = CATALOGUE.index("setback.septic_tank");
    assertEquals(1.25, records.get(0).layers().get(0).to().lo(), 1e-9);
    assertEquals(30.125, records.get(0).lo(tank), 1e-9);
    assertEquals(1.5, records.get(1).layers().get(0).from().lo(), 1e-9);
    assertTrue(Double.isInfinite(records.get(1).layers().get(0).to().lo()));
    assertEquals("unknown SENTINEL", told(records.get(1), "setback.building"));
  }

  /** No degrees, minutes or seconds have thousands: a comma in them is a decimal one. */
  @Test
  void degreesOfSeveralColumnsMayHaveDecimalCommas() throws Exception {
    String degrees = "{'columns':['D','M','S'],'join':'degrees','entry':'site.latitude'}";
    for (String[] each :
        new String[][] {
          {"44;30;10.5", "44.5029"},
          {"44;30;10,5", "44.5029"},
          {"-44;30,5;", "-44.5083"},
          {"44,5;;", "44.5000"},
          {"44;30;1,0,5", "unreadable NOT_A_NUMBER"}
        }) {
      WellRecord record = mapped(degrees, "NO;D;M;S\nA;" + each[0] + "\n").get(0);
      assertEquals(each[1], told(record, "site.latitude"), each[0]);
      String written = record.written(CATALOGUE.index("site.latitude"));
      assertEquals(each[0].contains(","), written.contains(","), "kept as written");
    }
  }

  /** Joining puts a unit behind a bare 0, which is no more meant for that. */
  @Test
  void zeroForABlankIsDoubtedInColumnsThatAreJoinedToo() throws Exception {
    String feet = "{'columns':['F','I'],'join':'feet and inches','entry':'%s'}";
    String range = "{'columns':['F','I'],'join':'range','entry':'%s','unit':'ft'}";
    String doubted = "unknown DOUBTED_ZERO";
    String[][] cases = {
      {feet, "well.casing_depth", "0;", doubted},
      {feet, "well.casing_depth", ";0", doubted},
      {feet, "well.casing_depth", "0;0", doubted},
      {feet, "well.casing_depth", "0;6", "0.1524"},
      {feet, "well.casing_depth", "5;0", "1.5240"},
      {feet, "well.casing_depth", "0 ft;", "0.0000"},
      {feet, "setback.property_line", "0;0", "0.0000"},
      {range, "well.casing_depth", "0;15", doubted},
      {range, "well.casing_depth", "0;0", doubted},
      {range, "well.casing_depth", "10;20", "3.0480..6.0960"},
      {range, "setback.property_line", "0;10", "0.0000..3.0480"},
    };
    for (String[] each : cases) {
      WellRecord record =
          mapped(String.format(each[0], each[1]), "NO;F;I\nA;" + each[2] + "\n").get(0);
      assertEquals(each[3], told(record, each[1]), String.join(" ", each));
      assertTrue(record.written(CATALOGUE.index(each[1])).contains(each[2].split(";")[0]));
    }
  }

  @Test
  void flowingIsWrittenInWords() {
    String[] words = {
      "flowing",
      "overflow",
      "over top",
      "0verflowing",
      "overflow @ 1 gpm",
      "FLOWS",
      "Flowing well",
      "Jaillissant"
    };
    for (WellRecord record : column("water.static_level", words)) {
      assertEquals("..0.0000 FLOWING", told(record, "water.static_level"));
      assertEquals(1, record.lo(CATALOGUE.index("water.flowing")));
    }
    WellRecord rate = column("water.static_level", words).get(4);
    assertEquals(Units.GPM.toSi(1), rate.lo(CATALOGUE.index("water.free_flow")), 1e-12);
  }

  @Test
  void levelsMayBeAboveTheGround() {
    reads("water.static_level [ft]", cells("-2.5", "-0.7620", "\u22121.5", "-0.4572"));
  }

  @Test
  void unitsChangeByRow() throws Exception {
    List<WellRecord> records =
        mapped(
            "{'column':'D','entry':'well.depth','unitFrom':'U','unitWords':{'pieds':'ft'}}",
            "NO;D;U\nA;100;pieds\nB;100;m\nC;100;\nD;100;rods\n");
    assertEquals("30.4800", told(records.get(0), "well.depth"));
    assertEquals("100.0000", told(records.get(1), "well.depth"));
    assertEquals("unreadable UNKNOWN_UNIT", told(records.get(3), "well.depth"));
    List<WellRecord> by =
        Gathered.csv("record.id,well.depth,record.units\nA,100,us\nB,100,metric\n").records;
    assertEquals("30.4800", told(by.get(0), "well.depth"));
    assertEquals("100.0000", told(by.get(1), "well.depth"));
  }

  @Test
  void theUnitMayStandInTheCellOrBothDo() {
    reads(
        "well.depth [ft]",
        cells(
            "30 m", "30.0000",
            "100", "30.4800",
            "9 m to 18 m (30 to 60 ft)", "9.0000..18.0000",
            "9 m to 18 m (90 to 180 ft)", "unreadable UNITS_DISAGREE"));
  }

  @Test
  void wholeFeetWereConverted() {
    for (WellRecord record : column("well.depth [m]", "30.48", "42.67", "60.96")) {
      int depth = CATALOGUE.index("well.depth");
      double feet = record.lo(depth) / FOOT;
      double slack = record.halfPlace(depth) / FOOT;
      assertTrue(Math.abs(feet - Math.rint(feet)) <= slack, "within its last written place");
    }
  }

  @Test
  void rangesAndListsAreKeptWhole() {
    reads(
        "water.yield [gpm]",
        cells(
            "10-15",
            gpm(10, 15),
            "10 to 15",
            gpm(10, 15),
            "between 10 and 15",
            gpm(10, 15),
            "10, 15",
            gpm(10, 15) + " SEVERAL",
            "15 & 10 gpm",
            gpm(10, 15) + " SEVERAL",
            "10; 12; 15",
            gpm(10, 15) + " SEVERAL",
            "15-10",
            "unreadable REVERSED"));
  }

  private static String gpm(double from, double to) {
    return shown(Units.GPM.toSi(from)) + ".." + shown(Units.GPM.toSi(to));
  }

  @Test
  void inequalitiesCircaAndSourcesInBrackets() {
    reads(
        "well.depth [m]",
        cells(
            ">14", "14.0000..",
            "~ 15 -20", "15.0000..20.0000 APPROXIMATE",
            "52.0 (landowner)", "52.0000 COMMENT",
            "37.30 m (pump)", "37.3000 COMMENT",
            "<14", "0.0000..14.0000",
            "est. 40", "40.0000 APPROXIMATE"));
  }

  @Test
  void typingSlipsAreQuotedAndNeverMended() {
    reads(
        "well.depth [ft]",
        cells(
            "54.86-60-96", "unreadable NOT_A_NUMBER",
            "j20", "unreadable NOT_A_NUMBER",
            "120?", "unreadable NOT_A_NUMBER",
            "9'.5\"", "unreadable NOT_A_NUMBER"));
    reads("water.temperature [degC]", cells("T0C", "unreadable NOT_A_NUMBER"));
  }

  @Test
  void datesMayBeImpossible() throws Exception {
    assertEquals("unreadable IMPOSSIBLE", date("5199-04-01", ""));
    assertEquals("1883-06-02..1883-06-02", date("1883-06-02", ""));
    assertEquals("unreadable NOT_A_DATE", date("2011-02-30", ""));
    assertEquals("1905-05-30..1905-05-30", date("5/30/1905", ",'dates':'month first'"));
    assertEquals("2009-05-01..2009-05-01", date("39934", ",'dayNumbers':'from 1900'"));
  }

  @Test
  void yearsOfTwoDigitsWantAPivot() throws Exception {
    assertEquals("unknown SHORT_YEAR", date("12/31/63", ",'dates':'month first'"));
    assertEquals("unknown SHORT_YEAR", date("14.2.11", ",'dates':'day first'"));
    String pivot = ",'dates':'month first','pivot':1930";
    assertEquals("1963-12-31..1963-12-31", date("12/31/63", pivot));
    assertEquals("2004-12-31..2004-12-31", date("12/31/04", pivot));
    assertEquals("1930-12-31..1930-12-31", date("12/31/30", pivot));
  }

  @Test
  void dayFirstAndMonthFirstInOneFile() throws Exception {
    WellRecord record =
        mapped(
                "{'column':'DRILLED','entry':'dates.started','dates':'month first'},"
                    + "{'column':'CASED','entry':'dates.completed','dates':'day first'}",
                "NO;DRILLED;CASED\nA;03/04/2002;05/04/2002\n")
            .get(0);
    assertEquals(day(2002, 3, 4), record.lo(CATALOGUE.index("dates.started")));
    assertEquals(day(2002, 4, 5), record.lo(CATALOGUE.index("dates.completed")));
    assertEquals("unknown AMBIGUOUS_DATE", date("03/04/2002", ""));
  }

  @Test
  void yearsAreWrittenAsText() throws Exception {
    assertEquals("1940-01-01..1949-12-31", date("1940's", ""));
    assertEquals("..1927-12-31", date("Pre 1928", ""));
    assertEquals("1975-01-01..1980-12-31", date("between 1975-1980", ""));
    assertEquals("unreadable NOT_A_DATE", date("1974, deepened in 1975", ""));
  }

  @Test
  void aDatumInProseIsNoDatum() {
    WellRecord record = column("record.datum", "Top of Pit 9'2 from casing").get(0);
    assertEquals("unreadable NOT_A_CHOICE", told(record, "record.datum"));
    assertEquals("Top of Pit 9'2 from casing", record.written(CATALOGUE.index("record.datum")));
  }

  @Test
  void aTickedBoxIsNoDistance() {
    reads(
        "setback.septic_tank [ft]",
        cells("Yes", "unreadable BOX", "X", "unreadable BOX", "75", "22.8600"));
  }

  /** Marks, line ends within cells, control characters, apostrophes, misspelt headings. */
  @Test
  void theFileItselfIsOdd() {
    String text =
        "\uFEFFrecord.id;well.dpeth [ft];well.tag;water.yield [gpm];Remarks\r\n"
            + "'W-1;120;\"two\r\nlines; and \"\"more\"\"\";7,5;=1+1\r\n"
            + "W-2;\u00A090\u00A0;bell\u0007;5;\r\n";
    Gathered all = Gathered.csv(text.getBytes(StandardCharsets.UTF_8));
    assertEquals(List.of(), all.reasons());
    assertEquals(2, all.records.size());
    WellRecord first = all.records.get(0);
    assertEquals("two\r\nlines; and \"more\"", first.written(CATALOGUE.index("well.tag")));
    assertEquals(shown(Units.GPM.toSi(7.5)), told(first, "water.yield"));
    assertEquals("120", first.extras().get(0).text(), "a misspelt heading is kept, not guessed");
    assertEquals("=1+1", first.extras().get(1).text(), "kept as it stands");
    assertEquals(4, all.records.get(1).row(), "the physical line");
  }

  @Test
  void twoLayoutsOfOneOfficeAreReadWithOneMap() throws Exception {
    String columns =
        "{'columns':['DEPTH_M','TIEFE'],'join':'first','entry':'well.depth','unit':'m'}";
    assertEquals("30.0000", told(mapped(columns, "NO;DEPTH_M\nA;30\n").get(0), "well.depth"));
    assertEquals("31.5000", told(mapped(columns, "NO|TIEFE\nA|31,5\n").get(0), "well.depth"));
  }

  @Test
  void aPointBeforeThreeDigitsIsNotSureAmongDecimalCommas() throws Exception {
    String columns =
        "{'column':'TANK','entry':'setback.septic_tank','unit':'ft'},"
            + "{'column':'LVL','entry':'water.static_level','unit':'ft'}";
    String text = "NO;TANK;LVL\nA;1.250;12,5\nB;90;14,5\nC;1.250 ft;8\nD;1,049;9\n";
    List<WellRecord> records = mapped(columns, text);
    assertEquals("unknown AMBIGUOUS_COMMA", told(records.get(0), "setback.septic_tank"));
    assertEquals(shown(90 * FOOT), told(records.get(1), "setback.septic_tank"));
    assertEquals("unknown AMBIGUOUS_COMMA", told(records.get(2), "setback.septic_tank"));
    assertEquals("unknown AMBIGUOUS_COMMA", told(records.get(3), "setback.septic_tank"));
    // A comma before a unit says what commas are in its column.
    String united = "NO;TANK;LVL\nA;1.250;12\nB;28,7 m;14\nC;1,049;8\n";
    records = mapped(columns, united);
    assertEquals("unknown AMBIGUOUS_COMMA", told(records.get(0), "setback.septic_tank"));
    assertEquals(shown(1.049 * FOOT), told(records.get(2), "setback.septic_tank"));
    // Where no comma is a decimal one, or the map says what the point is, it is read.
    records = mapped(columns, text.replace("12,5", "12.5").replace("14,5", "14"));
    assertEquals(shown(1.25 * FOOT), told(records.get(0), "setback.septic_tank"));
    records = mapped(columns.replace("'ft'},{", "'ft','comma':'thousands'},{"), text);
    assertEquals(shown(1.25 * FOOT), told(records.get(0), "setback.septic_tank"));
  }
}
