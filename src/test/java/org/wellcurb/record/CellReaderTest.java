package org.wellcurb.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;

class CellReaderTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();

  /**
   * Reads the text as text, and twice as bytes (the second time it may be remembered), sees that
   * all agree, and gives what the text way made of it.
   */
  private static WellRecord read(String key, String text, CellStyle style) {
    int entry = CATALOGUE.index(key);
    CellReader reader = new CellReader(CATALOGUE);
    RecordFiller one = new RecordFiller(CATALOGUE);
    one.clear("a.csv", 2);
    reader.read(one, entry, text, null, UnitSystem.US, style);
    RecordFiller two = new RecordFiller(CATALOGUE);
    two.clear("a.csv", 2);
    byte[] bytes = ("xx" + text + "yy").getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < 2; i++) {
      two.clear("a.csv", 2);
      reader.read(two, entry, bytes, 2, bytes.length - 2, null, UnitSystem.US, style);
      assertEquals(said(one.record(), entry), said(two.record(), entry), text);
    }
    return one.record();
  }

  private static String said(WellRecord r, int e) {
    return r.state(e)
        + " "
        + r.lo(e)
        + " "
        + r.hi(e)
        + " "
        + r.halfPlace(e)
        + " "
        + r.unit(e)
        + " "
        + r.note(e)
        + " "
        + r.text(e)
        + " "
        + r.written(e);
  }

  private static String brief(WellRecord r, String key) {
    int e = CATALOGUE.index(key);
    String state =
        switch (r.state(e)) {
          case WellRecord.UNKNOWN -> "unknown";
          case WellRecord.NOT_APPLICABLE -> "n/a";
          case WellRecord.UNREADABLE -> "unreadable";
          default -> CATALOGUE.entry(e).kind() == Kind.CHOICE ? r.choice(e) : value(r, e);
        };
    return r.note(e) == Note.NONE ? state : state + " " + r.note(e);
  }

  private static String value(WellRecord r, int e) {
    return r.text(e) != null
        ? r.text(e)
        : r.lo(e) == r.hi(e) ? short9(r.lo(e)) : short9(r.lo(e)) + ".." + short9(r.hi(e));
  }

  private static String short9(double x) {
    return String.format(java.util.Locale.ROOT, "%.9g", x)
        .replaceAll("(\\.\\d*?)0+$", "$1")
        .replaceAll("\\.$", "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "well.depth | 212 ft | 64.6176",
        "well.depth | 212 | 64.6176",
        "well.depth | 64.6 m | 64.6",
        "well.depth | >100 | 30.48..Infinity",
        "well.depth | <100 | 0..30.48",
        "water.static_level | <100 | -Infinity..30.48",
        "water.static_level | -2.5 | -0.762",
        "water.static_level | flowing | -Infinity..0 FLOWING",
        "water.static_level | FLOWING @ 3 gpm | -Infinity..0 FLOWING",
        "water.static_level | dry | unknown DRY",
        "water.static_level | +5 | unknown AMBIGUOUS_SIGN",
        "well.depth | -5 | unreadable IMPOSSIBLE",
        "well.depth | 5 gal | unreadable WRONG_DIMENSION",
        "well.depth | 5 furlongs | unreadable UNKNOWN_UNIT",
        "well.depth | N/A | n/a",
        "well.depth | NA | unknown",
        "well.depth | ? | unknown",
        "well.depth | #VALUE! | unknown",
        "well.cap | none | none",
        "pump.splice | none | none",
        "well.casing_material | none | n/a",
        "sample.tap | unknown | unknown",
        "well.casing_material | Stainless Steel | stainless steel",
        "well.casing_material | brick | unreadable NOT_A_CHOICE",
        "well.open_hole | Y | 1",
        "well.open_hole | non | 0",
        "well.tag | AB-12 | ab-12",
        "dates.completed | 2009-05-01 | 14365",
        "grout.bags | 12 bags | 12",
        "grout.bags | 12.5 | unreadable NOT_WHOLE",
        "wire.gauge | 2/0 | -1",
        "wire.gauge | 12/2 | 12 CABLE",
        "wire.gauge | 1/0 | 0",
        "wire.gauge | #0 | 0",
        "wire.gauge | 0 AWG | 0",
        "wire.gauge | 0 | unknown DOUBTED_ZERO",
        "pump.shutoff_pressure | 231 ft | 690474.459",
        "pressure.cut_in | 100 ft | unreadable WRONG_DIMENSION",
        "pump.insulation_resistance | OL | 2000000..Infinity OVER_RANGE",
      })
  void readsEveryKindOfCell(String key, String text, String expected) {
    assertEquals(expected, brief(read(key, text, CellStyle.PLAIN), key));
  }

  @Test
  void aFlowingLevelSaysThatTheWellFlows() {
    WellRecord r = RecordReader.of(Map.of("water.static_level", "overflow @ 1 gpm"));
    assertEquals("1 FLOWING", brief(r, "water.flowing"));
    assertEquals("6.30901964e-05 FLOWING", brief(r, "water.free_flow"));
  }

  @ParameterizedTest
  @CsvSource({
    "flowing,1,unknown",
    "FLOWING @ 3 gpm,1,0.000189270589 FLOWING",
    "Free flowing,1,unknown",
    "0verflowing,1,unknown",
    "not flowing,0,unknown",
    "flowing?,unreadable NOT_A_CHOICE,unknown",
    "dry,unreadable NOT_A_CHOICE,unknown",
  })
  void flowingInWordsIsReadWhereItIsAsked(String text, String flows, String rate) {
    WellRecord r = read("water.flowing", text, CellStyle.PLAIN);
    assertEquals(flows, brief(r, "water.flowing"));
    assertEquals(rate, brief(r, "water.free_flow"));
  }

  /**
   * Whatever the order of the columns: a blank or an unknown beside a flowing level says nothing.
   */
  @Test
  void whatAFlowingLevelSaysDoesNotHangOnTheOrderOfColumns() {
    for (String other : new String[] {"", "unknown", "?"}) {
      for (boolean levelFirst : new boolean[] {true, false}) {
        RecordFiller filler = new RecordFiller(CATALOGUE);
        filler.clear("a.csv", 2);
        CellReader reader = new CellReader(CATALOGUE);
        String[][] cells = {{"water.static_level", "flowing @ 3 gpm"}, {"water.flowing", other}};
        for (int i = 0; i < 2; i++) {
          String[] cell = cells[levelFirst ? i : 1 - i];
          int entry = CATALOGUE.index(cell[0]);
          reader.read(filler, entry, cell[1], null, UnitSystem.US, CellStyle.PLAIN);
        }
        assertEquals("1 FLOWING", brief(filler.record(), "water.flowing"), other);
      }
    }
    WellRecord denied =
        RecordReader.of(Map.of("water.static_level", "flowing", "water.flowing", "no"));
    assertEquals("0", brief(denied, "water.flowing"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "flowing | -Infinity..0 FLOWING",
        "Flowing well | -Infinity..0 FLOWING",
        "FLOWS | -Infinity..0 FLOWING",
        "over top | -Infinity..0 FLOWING",
        "0verflowing | -Infinity..0 FLOWING",
        "overflow @ 1 gpm | -Infinity..0 FLOWING",
        "Flowing (2.5 L/min) | -Infinity..0 FLOWING",
        "flowing, 3 gpm | -Infinity..0 FLOWING",
        "flowing at 2 to 3 gpm | -Infinity..0 FLOWING",
        "flowing? | unreadable NOT_A_NUMBER",
        "flowing 2 ft above casing | unreadable NOT_A_NUMBER",
        "not flowing | unreadable NOT_A_NUMBER",
        "artesian | unreadable NOT_A_NUMBER",
        "DRY | unknown DRY",
        "dry hole | unknown DRY",
      })
  void readsWordsInPlaceOfALevel(String text, String expected) {
    assertEquals(
        expected, brief(read("water.static_level", text, CellStyle.PLAIN), "water.static_level"));
  }

  @Test
  void wordsOfALevelAreNoWordsOfADepth() {
    assertEquals(
        "unreadable NOT_A_NUMBER",
        brief(read("well.depth", "flowing", CellStyle.PLAIN), "well.depth"));
    assertEquals(
        "unreadable NOT_A_NUMBER", brief(read("well.depth", "dry", CellStyle.PLAIN), "well.depth"));
    assertEquals("unknown DRY", brief(read("water.yield", "Dry", CellStyle.PLAIN), "water.yield"));
  }

  /** Each of the many spellings of nothing, in an amount, a date, a choice and a text. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "unknown | unknown",
        "UNKNOWN | unknown",
        "unkown | unknown",
        "Unk. | unknown",
        "not known | unknown",
        "Not Available | unknown",
        "? | unknown",
        "- | unknown",
        "\u2014 | unknown",
        "Select | unknown",
        "#VALUE! | unknown",
        "#N/A | unknown",
        "NA | unknown",
        "NaN | unknown",
        "NULL | unknown",
        "no data | unknown",
        "TBD | unknown",
        "not recorded | unknown",
        "inconnu | unknown",
        "non renseign\u00E9 | unknown",
        "NON RENSEIGN\u00C9 | unknown",
        "n/a | n/a",
        "N/A | n/a",
        "N.A. | n/a",
        "not applicable | n/a",
        "None | n/a",
        "sans objet | n/a"
      })
  void readsTheWordsForNoValue(String text, String expected) {
    for (String key :
        new String[] {
          "well.depth",
          "dates.completed",
          "well.casing_material",
          "well.tag",
          "grout.bags",
          "well.open_hole",
          "record.variances",
          "site.latitude"
        }) {
      assertEquals(expected, brief(read(key, text, CellStyle.PLAIN), key), key + " " + text);
    }
  }

  @Test
  void whateverStandsForTheNumberOfTheRecordIsItsNumber() {
    for (String id : new String[] {"N/A", "unknown", "W-1", "-", "none"}) {
      assertEquals(
          id.toLowerCase(java.util.Locale.ROOT),
          brief(read("record.id", id, CellStyle.PLAIN), "record.id"));
    }
  }

  @Test
  void blanksLeaveTheEntryUnknownAndUnwritten() {
    for (String blank : new String[] {"", "  ", "\t", "\u00A0 ", "\u200B", "\u0000"}) {
      WellRecord r = read("well.depth", blank, CellStyle.PLAIN);
      assertEquals("unknown", brief(r, "well.depth"));
      assertEquals("", r.written(CATALOGUE.index("well.depth")));
    }
  }

  @Test
  void keepsWhatIsWrittenBesideWhatIsRead() {
    int depth = CATALOGUE.index("well.depth");
    assertEquals("212 ft.", read("well.depth", " 212 ft. ", CellStyle.PLAIN).written(depth));
    assertEquals("j20", read("well.depth", "j20\u00A0", CellStyle.PLAIN).written(depth));
    assertEquals("'212", read("well.depth", "'212", CellStyle.PLAIN).written(depth));
    assertEquals("Unknown", read("well.depth", "Unknown", CellStyle.PLAIN).written(depth));
  }

  private static final CellStyle OFFICE =
      CellStyle.PLAIN
          .withSentinels(
              Sentinels.of(Set.of("-999", "9999", "1900-01-01", "see file"), Set.of("not dug")))
          .withDateOrder(org.wellcurb.quantity.DateOrder.DAY_FIRST)
          .withPivotYear(1930)
          .withComma(org.wellcurb.quantity.Comma.EITHER);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "well.depth | -999 | unknown SENTINEL",
        "well.depth | -999.00 | unknown SENTINEL",
        "well.depth | 9999 ft | unknown SENTINEL",
        "well.depth | See File | unknown SENTINEL",
        "well.depth | not dug | n/a SENTINEL",
        "well.depth | unknown | unknown",
        "well.depth | 999 | 304.4952",
        "well.depth | 12,5 | 3.81",
        "well.depth | 1,250 | unknown AMBIGUOUS_COMMA",
        "dates.completed | 1900-01-01 | unknown SENTINEL",
        "dates.completed | 01/01/1900 | unknown SENTINEL",
        "dates.completed | 1/5/09 | 14365",
        "dates.completed | 05/13/2009 | unreadable NOT_A_DATE",
        "well.tag | 9999 | unknown SENTINEL",
        "well.casing_material | see file | unknown SENTINEL",
        "well.casing_material | STEEL | steel",
        "well.open_hole | yes | 1",
      })
  void readsAnOfficesOwnStyle(String key, String text, String expected) {
    assertEquals(expected, brief(read(key, text, OFFICE), key));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "wire.material | aluminum | aluminium",
        "well.casing_material | Fiberglass | fibreglass",
        "pump.phase | single phase | 1",
        "record.datum | Top of Casing | casing top",
        "well.use | Domestic | household",
        "record.covers | both | well and pump",
      })
  void readsOtherSpellingsOfChoices(String key, String text, String expected) {
    assertEquals(expected, brief(read(key, text, CellStyle.PLAIN), key));
  }

  @ParameterizedTest
  @CsvSource({
    "yes, 1",
    "Y, 1",
    "TRUE, 1",
    "1, 1",
    "oui, 1",
    "\u2713, 1",
    "no, 0",
    "N, 0",
    "False, 0",
    "0, 0",
    "NON, 0",
    "x, unreadable NOT_A_CHOICE",
    "maybe, unreadable NOT_A_CHOICE",
    "2, unreadable NOT_A_CHOICE"
  })
  void readsYesAndNo(String text, String expected) {
    assertEquals(expected, brief(read("well.open_hole", text, CellStyle.PLAIN), "well.open_hole"));
  }

  @Test
  void readsVariances() {
    WellRecord r =
        RecordReader.of(
            Map.of("record.variances", " septic-distance: V 12/2009 ; casing ;; : lost ; a:b:c"));
    assertEquals(
        List.of(
            new Variance("septic-distance", "V 12/2009"),
            new Variance("casing", ""),
            new Variance("a", "b:c")),
        r.variances());
    assertEquals(
        WellRecord.UNREADABLE,
        RecordReader.of(Map.of("layers", "clay")).state(CATALOGUE.index("layers")));
  }

  @Test
  void theUnitInTheCellWinsOverTheColumnsAndThatOverTheRecords() {
    RecordFiller filler = new RecordFiller(CATALOGUE);
    filler.clear("a.csv", 2);
    CellReader reader = new CellReader(CATALOGUE);
    int depth = CATALOGUE.index("well.depth");
    reader.read(filler, depth, "10", null, UnitSystem.METRIC, CellStyle.PLAIN);
    assertEquals(10, filler.record().hi(depth), 1e-12);
    reader.read(filler, depth, "10", Units.FOOT, UnitSystem.METRIC, CellStyle.PLAIN);
    assertEquals(3.048, filler.record().hi(depth), 1e-12);
    reader.read(filler, depth, "10 in", Units.FOOT, UnitSystem.METRIC, CellStyle.PLAIN);
    assertEquals(0.254, filler.record().hi(depth), 1e-12);
    reader.read(filler, depth, "10", Units.GPM, UnitSystem.METRIC, CellStyle.PLAIN);
    assertEquals("unreadable WRONG_DIMENSION", brief(filler.record(), "well.depth"));
    int boost = CATALOGUE.index("pump.shutoff_pressure");
    reader.read(filler, boost, "100", Units.FOOT, UnitSystem.US, CellStyle.PLAIN);
    assertEquals(Units.FOOT_OF_WATER, filler.record().unit(boost));
  }

  @Test
  void anUnknownKeyNamesTheNearest() {
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () -> RecordReader.of(Map.of("relief.seting", "75 psi")));
    assertEquals("no entry 'relief.seting'; did you mean 'relief.setting'?", e.getMessage());
  }

  @Test
  void bareNumbersAreInTheUnitsOfTheRecord() {
    WellRecord metric = RecordReader.of(Map.of("record.units", "SI", "well.depth", "61"));
    assertEquals(61, metric.lo(CATALOGUE.index("well.depth")), 0);
    assertEquals(UnitSystem.METRIC, metric.system(CATALOGUE.index("well.depth")));
    WellRecord us = RecordReader.of(Map.of("well.depth", "200"));
    assertEquals(UnitSystem.US, us.system(CATALOGUE.index("well.depth")));
  }
}
