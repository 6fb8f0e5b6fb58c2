package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Extra;
import org.wellcurb.record.WellRecord;

class TableReadingTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();
  private static final String HEADER = "record.id,well.tag,driller.licence\n";

  private static String written(WellRecord record, String key) {
    return record.written(CATALOGUE.index(key));
  }

  @Test
  void cellsGoToTheEntriesThatTheHeaderNames() {
    Gathered all = Gathered.csv(HEADER + "A-1,T 7,D-12\nA-2,,D-13\n");
    assertEquals(List.of("A-1", "A-2"), all.ids());
    assertEquals("T 7", written(all.records.get(0), "well.tag"));
    assertEquals("D-13", written(all.records.get(1), "driller.licence"));
    assertEquals(2, all.records.get(0).row());
    assertEquals(3, all.records.get(1).row());
    assertEquals("test.csv", all.records.get(0).file());
    assertEquals(List.of("A-1,T 7,D-12", "A-2,,D-13"), all.raw);
    assertEquals(2, all.rows);
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t", "|"})
  void theDelimiterIsFound(String delimiter) {
    Gathered all = Gathered.csv((HEADER + "A-1,T 7,D-12\n").replace(",", delimiter));
    assertEquals("D-12", written(all.records.get(0), "driller.licence"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void everyLineEndIsRead(String end) {
    String text = HEADER + "A-1,T 7,D-12\n\nA-2,\"a\nb\",\nA-3,,";
    Gathered all = Gathered.csv(text.replace("\n", end));
    assertEquals(List.of("A-1", "A-2", "A-3"), all.ids());
    assertEquals("a" + end + "b", written(all.records.get(1), "well.tag"));
    assertEquals(List.of(2L, 4L, 6L), all.records.stream().map(WellRecord::row).toList());
  }

  @Test
  void everyEncodingIsReadAndNamed() {
    String text = HEADER + "A-1,Brøndby é,D-12\n";
    byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
    byte[] marked = ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
    byte[] little = ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE);
    byte[] big = ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16BE);
    byte[] windows = text.getBytes(Charset.forName("windows-1252"));
    for (byte[] bytes : List.of(utf8, marked, little, big, windows)) {
      Gathered all = Gathered.csv(bytes);
      assertEquals("Brøndby é", written(all.records.get(0), "well.tag"));
      assertEquals(List.of("A-1"), all.ids());
    }
    assertEquals(TextEncoding.UTF_8, TextEncoding.of(utf8, true));
    assertEquals(TextEncoding.UTF_8_MARKED, TextEncoding.of(marked, true));
    assertEquals(TextEncoding.UTF_16_LE, TextEncoding.of(little, true));
    assertEquals(TextEncoding.UTF_16_BE, TextEncoding.of(big, true));
    assertEquals(TextEncoding.WINDOWS_1252, TextEncoding.of(windows, true));
  }

  @Test
  void aSampleMayEndWithinACharacterButAFileMayNot() {
    byte[] half = {'a', (byte) 0xC3};
    assertEquals(TextEncoding.UTF_8, TextEncoding.of(half, false));
    assertEquals(TextEncoding.WINDOWS_1252, TextEncoding.of(half, true));
  }

  @Test
  void columnsThatNoEntryTakesAreKept() {
    Gathered all = Gathered.csv("record.id,well.tga,Remarks\nA-1,x,\"as, built\"\nA-2,,\n");
    assertEquals(
        List.of(new Extra("well.tga", "x"), new Extra("Remarks", "as, built")),
        all.records.get(0).extras());
    assertEquals(List.of(), all.records.get(1).extras());
  }

  @Test
  void aQuoteWithinAnUnquotedCellIsACharacter() {
    Gathered all = Gathered.csv(HEADER + "A-1,6 5/8\",12'\nA-2,\"6 5/8\"\"\",12'\n");
    assertEquals("6 5/8\"", written(all.records.get(0), "well.tag"));
    assertEquals("6 5/8\"", written(all.records.get(1), "well.tag"));
  }

  @Test
  void rowsThatAreNoRecordsAreSetAsideWithPlaceAndReason() {
    Gathered all =
        Gathered.csv(
            HEADER
                + "A-1,T\n"
                + ",T,D\n"
                + "A-2,T,D,\n"
                + "A-3,\"T\"x,D\n"
                + "A\0-4,T,D\n"
                + "record.id,well.tag,driller.licence\n"
                + "A-5,T,D\n"
                + "A-6,\"not closed,D\n"
                + "A-7,T,D");
    assertEquals(List.of("A-5", "A-7"), all.ids());
    assertEquals(
        List.of(
            "2: has 2 cells, the header has 3",
            "3: no record.id",
            "4: has 4 cells, the header has 3",
            "5: " + RowFault.TEXT_AFTER_QUOTE,
            "6: " + RowFault.NUL,
            "7: the header again",
            "9: " + RowFault.NOT_CLOSED),
        all.reasons());
    assertEquals("record.id", all.aside.get(1).column());
    assertEquals("A-3,\"T\"x,D", all.aside.get(3).text());
    assertEquals("A-6,\"not closed,D", all.aside.get(6).text());
    assertEquals(9, all.rows);
  }

  @Test
  void aCellOfTenMegabytesCostsOneRow() {
    String big = "x".repeat(10 << 20);
    for (String cell : List.of(big, "\"" + big + "\"", "\"" + big, "y".repeat(Bounds.CELL + 1))) {
      Gathered all = Gathered.csv(HEADER + "A-1,T,D\nA-2," + cell + ",D\r\nA-3,T,D\n");
      assertEquals(List.of("A-1", "A-3"), all.ids());
      assertEquals(4, all.records.get(1).row());
      assertEquals(1, all.aside.size());
      assertEquals(3, all.aside.get(0).row());
      assertTrue(all.aside.get(0).text().length() <= Bounds.ROW);
    }
  }

  @Test
  void aQuoteNotClosedWithinTheBoundCostsOneLine() {
    String line = "A-2,T,D\n";
    int count = (2 << 20) / line.length();
    Gathered all = Gathered.counted(HEADER + "A-1,\"T,D\n" + line.repeat(count));
    assertEquals(count, all.recordCount);
    assertEquals(List.of("2: " + RowFault.NOT_CLOSED), all.reasons());
    assertEquals(3, all.records.get(0).row());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "\n\n",
        "a,b,c\n1,2,3\n",
        "record.id,well.tag,well.tag\nA,1,2\n",
        "record.di,well.tag\nA,1\n",
        "record.id,well.depth [ft],well.depth [m]\nA,1,2\n"
      })
  void aFileWithoutAUsableHeaderIsSetAsideWhole(String text) {
    Gathered all = Gathered.csv(text);
    assertEquals(1, all.aside.size());
    assertTrue(all.aside.get(0).isFile());
    assertEquals(List.of(), all.records);
    assertEquals(0, all.rows);
  }

  @Test
  void theUnitsOfTheRowAreReadBeforeItsNumbersWhereverTheyStand() {
    Gathered all =
        Gathered.csv("record.id,well.depth,record.units\nA-1,30,metric\nA-2,30,us\nA-3,30,\n");
    int depth = CATALOGUE.index("well.depth");
    assertEquals(30, all.records.get(0).lo(depth), 1e-12);
    assertEquals(9.144, all.records.get(1).lo(depth), 1e-12);
    assertEquals(9.144, all.records.get(2).lo(depth), 1e-12);
  }

  @Test
  void numbersInAColumnWhoseUnitIsOfAnotherDimensionAreUnreadable() {
    Gathered all = Gathered.csv("record.id,well.depth [psi],pump.voltage [furlong]\nA-1,30,230\n");
    assertEquals(List.of(), all.aside);
    WellRecord record = all.records.get(0);
    assertEquals(WellRecord.UNREADABLE, record.state(CATALOGUE.index("well.depth")));
    assertEquals("30", written(record, "well.depth"));
    assertEquals(List.of(new Extra("pump.voltage [furlong]", "230")), record.extras());
  }

  private static final String FIVE =
      "record.id,site.owner_note,well.depth [ft],dates.completed,well.tag\n";

  @Test
  void anEmptyCellAtTheEndOfEachRowIsNoLostRow() {
    StringBuilder rows = new StringBuilder(FIVE);
    for (int i = 0; i < 30; i++) {
      rows.append("B-").append(i).append(",by hand,120,2001-04-0").append(i % 9 + 1).append(",,\n");
    }
    Gathered all =
        Gathered.csv(
            rows + "A-1,\"D\n13\",90,,,\nA-2,,80,, , \nA-3,,70,,,more\nA-4,,60,,,,\nA-5,,50,,\n");
    assertEquals(33, all.records.size());
    assertEquals(List.of("A-1", "A-2", "A-5"), all.ids().subList(30, 33));
    assertEquals(
        List.of("35: has 6 cells, the header has 5", "36: has 7 cells, the header has 5"),
        all.reasons());
    assertEquals(35, all.rows);
    assertEquals(32, all.endedBeyond);

    Gathered again = Gathered.csv(all.frame + "A-3,,70,,more,\n");
    assertEquals(List.of("A-3"), again.ids(), all.frame);
  }

  @Test
  void aCommaInEachNameIsNoEmptyCellAtTheEnd() {
    StringBuilder rows = new StringBuilder(FIVE);
    for (int i = 0; i < 30; i++) {
      rows.append("B-").append(i).append(",Smith, J,120,2001-04-03,\n");
    }
    Gathered all = Gathered.csv(rows.toString());
    assertEquals(0, all.records.size());
    assertEquals(30, all.aside.size());
  }

  @Test
  void codesThatNobodyKnowsDoNotMakeAnEmptyCellAtTheEndDoubtful() {
    String header = "record.id,well.use,well.depth [ft],pump.voltage\n";
    String rows = "A-1,ZZ,120,230,\nA-2,ZZ,,,\nA-3,QQ,90,abc,\nA-4,,60,,\n";
    Gathered all = Gathered.csv(header + rows);
    assertEquals(List.of(), all.reasons());
    assertEquals(4, all.endedBeyond);
    WellRecord first = all.records.get(0);
    assertEquals(WellRecord.UNREADABLE, first.state(CATALOGUE.index("well.use")));
    assertEquals(120 * 0.3048, first.lo(CATALOGUE.index("well.depth")), 1e-9);
    WellRecord third = all.records.get(2);
    assertEquals(WellRecord.UNREADABLE, third.state(CATALOGUE.index("pump.voltage")));
  }

  @Test
  void oneRowWithAnEmptyCellMoreIsNoHabit() {
    Gathered all = Gathered.csv(HEADER + "A-1,Smith, J,\nA-2,,\nA-3,,\nA-4,,\n");
    assertEquals(List.of("2: has 4 cells, the header has 3"), all.reasons());
  }
}
