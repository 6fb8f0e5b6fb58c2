package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.VisibilityState;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;

class WorkbookTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();

  @TempDir Path folder;

  /** Writes sheets. */
  private interface Filling {
    void fill(Workbook workbook) throws IOException;
  }

  private Path write(String name, Filling filling) throws IOException {
    Path path = folder.resolve(name);
    try (OutputStream out = Files.newOutputStream(path);
        Workbook workbook = new Workbook(out, "test", "1.0")) {
      filling.fill(workbook);
    }
    return path;
  }

  private static List<Input> inputs(Path path) throws IOException {
    return Inputs.of(List.of(path.toString()), InputStream.nullInputStream()).inputs();
  }

  private static Gathered read(Path path) throws IOException {
    return Gathered.of(inputs(path).get(0), RowSplitter.CHUNK);
  }

  private static void row(Worksheet sheet, int row, String... cells) {
    for (int i = 0; i < cells.length; i++) {
      if (!cells[i].isEmpty()) {
        sheet.value(row, i, cells[i]);
      }
    }
  }

  private static String written(WellRecord record, String key) {
    return record.written(CATALOGUE.index(key));
  }

  /** Simple writers leave out the part for formats; then no number is shown as a date. */
  @Test
  void aWorkbookWithoutFormatsIsRead() throws Exception {
    Path path =
        write(
            "full.xlsx",
            book -> {
              Worksheet sheet = book.newWorksheet("s");
              row(sheet, 0, "record.id", "well.depth [ft]");
              row(sheet, 1, "A", "");
              sheet.value(1, 1, 120);
            });
    Path bare = folder.resolve("bare.xlsx");
    try (ZipFile from = new ZipFile(path.toFile());
        ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(bare))) {
      for (ZipEntry entry : from.stream().map(ZipEntry.class::cast).toList()) {
        if (!entry.getName().endsWith("styles.xml")) {
          String text =
              new String(from.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
          to.putNextEntry(new ZipEntry(entry.getName()));
          String without =
              text.replaceAll("<Override [^>]*styles\\+xml[^>]*/>", "")
                  .replaceAll("<Relationship [^>]*styles\\.xml[^>]*/>", "");
          to.write(without.getBytes(StandardCharsets.UTF_8));
        }
      }
    }
    assertEquals("120", written(read(bare).records.get(0), "well.depth"));
    List<Input> held = Input.of("bare.xlsx", Files.readAllBytes(bare));
    Gathered again = Gathered.of(held.get(0), RowSplitter.CHUNK);
    assertEquals("120", written(again.records.get(0), "well.depth"));
  }

  @Test
  void aStoredNumberHasNoThousandsWhereTextsHaveDecimalCommas() throws Exception {
    Path path =
        write(
            "commas.xlsx",
            book -> {
              Worksheet sheet = book.newWorksheet("s");
              row(sheet, 0, "NO", "D");
              row(sheet, 1, "A", "");
              sheet.value(1, 1, 38.125);
              row(sheet, 2, "B", "38,25");
              row(sheet, 3, "C", "1.250");
              row(sheet, 4, "D", "1.250 in");
              sheet.value(5, 0, "E \"x\"");
              sheet.value(5, 1, 6.125);
            });
    HeaderMap map =
        HeaderMaps.parse(
            "map.json",
            "{\"title\":\"t\",\"comma\":\"decimal\",\"columns\":[{\"column\":\"NO\",\"entry\":"
                + "\"record.id\"},{\"column\":\"D\",\"entry\":\"well.bore_diameter\",\"unit\":\"in\"}]}",
            CATALOGUE);
    int entry = CATALOGUE.index("well.bore_diameter");
    Gathered all = Gathered.of(new Sources(CATALOGUE, map), inputs(path));
    assertEquals(38.125 * 0.0254, all.records.get(0).lo(entry), 1e-12);
    assertEquals(38.25 * 0.0254, all.records.get(1).lo(entry), 1e-12);
    assertEquals("AMBIGUOUS_COMMA", all.records.get(2).note(entry).name());
    assertEquals("AMBIGUOUS_COMMA", all.records.get(3).note(entry).name());
    assertEquals(6.125 * 0.0254, all.records.get(4).lo(entry), 1e-12);
  }

  @Test
  void numbersDatesFormulasAndTextsAreReadAsTheyAreShown() throws IOException {
    Path path =
        write(
            "wells.xlsx",
            workbook -> {
              Worksheet sheet = workbook.newWorksheet("Wells");
              row(
                  sheet,
                  0,
                  "record.id",
                  "well.depth [ft]",
                  "dates.completed",
                  "water.static_level [m]",
                  "well.tag",
                  "well.open_hole");
              sheet.value(1, 0, 1041);
              sheet.value(1, 1, 212.3);
              sheet.value(1, 2, LocalDate.of(2009, 5, 31));
              sheet.style(1, 2).format("dd/mm/yyyy").set();
              sheet.formula(1, 3, "10+2.5");
              sheet.value(1, 4, "a, \"b\"\nc");
              sheet.value(1, 5, true);
              row(sheet, 4, "A-2", "12 ft 6 in");
            });
    Gathered all = read(path);
    assertEquals(List.of("1041", "A-2"), all.ids());
    assertEquals("workbook, sheet Wells", all.label);
    WellRecord first = all.records.get(0);
    assertEquals("212.3", written(first, "well.depth"));
    assertEquals("2009-05-31", written(first, "dates.completed"));
    assertEquals("a, \"b\" c", written(first, "well.tag"));
    assertEquals(1, first.lo(CATALOGUE.index("well.open_hole")));
    assertEquals(2, first.row());
    assertEquals(5, all.records.get(1).row());
    assertEquals(List.of(), all.aside);
  }

  @Test
  void theStoredResultOfAFormulaIsRead() throws IOException {
    byte[] sheet =
        ("<?xml version=\"1.0\"?><worksheet"
                + " xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>"
                + "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>record.id</t></is></c>"
                + "<c r=\"B1\" t=\"inlineStr\"><is><t>well.depth</t></is></c>"
                + "<c r=\"C1\" t=\"inlineStr\"><is><t>well.tag</t></is></c>"
                + "<c r=\"D1\" t=\"inlineStr\"><is><t>well.casing_depth</t></is></c></row>"
                + "<row r=\"2\"><c r=\"A2\" t=\"str\"><f>\"A\"&amp;1</f><v>A1</v></c>"
                + "<c r=\"B2\"><f>100+12</f><v>112</v></c>"
                + "<c r=\"C2\" t=\"e\"><f>1/0</f><v>#DIV/0!</v></c>"
                + "<c r=\"D2\" t=\"str\"><f>IF(A2=1,1,&quot;&quot;)</f><v></v></c></row>"
                + "</sheetData></worksheet>")
            .getBytes(StandardCharsets.UTF_8);
    Path plain = write("plain.xlsx", workbook -> row(workbook.newWorksheet("S"), 0, "x"));
    Path path = folder.resolve("formulas.xlsx");
    try (java.util.zip.ZipFile from = new java.util.zip.ZipFile(plain.toFile());
        ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(path))) {
      for (ZipEntry entry : from.stream().map(ZipEntry.class::cast).toList()) {
        to.putNextEntry(new ZipEntry(entry.getName()));
        boolean isSheet = entry.getName().endsWith("sheet1.xml");
        to.write(isSheet ? sheet : from.getInputStream(entry).readAllBytes());
        to.closeEntry();
      }
    }
    WellRecord record = read(path).records.get(0);
    assertEquals("A1", record.id());
    assertEquals(112 * 0.3048, record.lo(CATALOGUE.index("well.depth")), 1e-12);
    assertFalse(record.isGiven(CATALOGUE.index("well.tag")));
    assertEquals(WellRecord.UNKNOWN, record.state(CATALOGUE.index("well.casing_depth")));
  }

  /** A program that never worked its formulas out stores none: such a cell is not blank. */
  @Test
  void aFormulaWithoutAResultIsUnreadable() throws IOException {
    Path path =
        write(
            "unsaved.xlsx",
            workbook -> {
              Worksheet sheet = workbook.newWorksheet("Wells");
              row(sheet, 0, "record.id", "well.depth [ft]", "well.tag", "dates.completed", "Odd");
              row(sheet, 1, "A-1", "100", "7", "2009-05-31", "x");
              row(sheet, 2, "A-2");
              for (int column = 1; column < 5; column++) {
                sheet.formula(2, column, "A" + column + "/10");
              }
            });
    Gathered all = read(path);
    WellRecord record = all.records.get(1);
    for (String key : List.of("well.depth", "well.tag", "dates.completed")) {
      int entry = CATALOGUE.index(key);
      assertEquals(WellRecord.UNREADABLE, record.state(entry), key);
      assertEquals("NO_RESULT", record.note(entry).name(), key);
    }
  }

  @Test
  void aHeaderOnTwoLinesWithMergedGroupsIsBroughtTogether() throws IOException {
    Path path =
        write(
            "groups.xlsx",
            workbook -> {
              Worksheet sheet = workbook.newWorksheet("S");
              row(sheet, 0, "Wells of the north");
              row(sheet, 2, "record.id", "Casing", "", "Screen", "", "well.tag");
              row(sheet, 3, "", "From", "To", "From", "To", "");
              row(sheet, 4, "A", "1", "2", "3", "4", "T");
              sheet.range(2, 1, 2, 2).merge();
              sheet.range(2, 0, 3, 0).merge();
            });
    Gathered all = read(path);
    assertEquals(List.of("A"), all.ids());
    assertEquals(
        List.of("Casing From", "Casing To", "Screen From", "Screen To"),
        all.records.get(0).extras().stream().map(e -> e.name()).toList());
    assertEquals("T", written(all.records.get(0), "well.tag"));
  }

  @Test
  void eachSheetThatIsShownIsAnInput() throws IOException {
    Path path =
        write(
            "book.xlsx",
            workbook -> {
              row(workbook.newWorksheet("Old wells"), 0, "record.id");
              Worksheet hidden = workbook.newWorksheet("Lists");
              hidden.setVisibilityState(VisibilityState.HIDDEN);
              row(workbook.newWorksheet("New"), 0, "record.id");
            });
    Inputs inputs = Inputs.of(List.of(path.toString()), InputStream.nullInputStream());
    assertEquals(
        List.of("book.xlsx!Old wells", "book.xlsx!New"),
        inputs.inputs().stream().map(Input::file).toList());
    assertEquals("book.xlsx!Lists", inputs.passedOver().get(0).file());
  }

  @Test
  void aWorkbookInAnArchiveIsRead() throws IOException {
    Path book =
        write(
            "in.xlsx",
            workbook -> {
              Worksheet sheet = workbook.newWorksheet("S");
              row(sheet, 0, "record.id", "well.tag");
              row(sheet, 1, "A", "T");
            });
    Path zip = folder.resolve("a.zip");
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
      out.putNextEntry(new ZipEntry("in.xlsx"));
      Files.copy(book, out);
    }
    assertEquals("a.zip!in.xlsx", inputs(zip).get(0).file());
    assertEquals(List.of("A"), read(zip).ids());
  }

  @Test
  void whatIsNoWorkbookIsSetAsideWhole() throws IOException {
    Path path = Files.writeString(folder.resolve("bad.xlsx"), "record.id\nA\n");
    Gathered all = read(path);
    assertTrue(all.aside.get(0).isFile());
  }

  @Test
  void whatIsWrittenBesideTheTableMakesItsRowTooLong() throws IOException {
    Path path =
        write(
            "wide.xlsx",
            workbook -> {
              Worksheet sheet = workbook.newWorksheet("S");
              row(sheet, 0, "record.id", "well.tag");
              for (int i = 1; i < 300; i++) {
                row(sheet, i, "A" + i, "T");
              }
              sheet.value(299, 5, "sum");
            });
    Gathered all = read(path);
    assertEquals(298, all.records.size());
    assertEquals(300, all.aside.get(0).row());
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "14, ``, true",
        "22, ``, true",
        "0, ``, false",
        "2, ``, false",
        "18, ``, false",
        "164, yyyy-mm-dd, true",
        "164, d. mmm, true",
        "164, mmm, true",
        "164, 0.00, false",
        "164, h:mm:ss, false",
        "164, [Red]0.0, false",
        "164, `0.0 \"days\"`, false",
        "164, General, false",
        "164, [$-409]d-mmm-yy, true",
        "164, `0\\d`, false"
      })
  void theFormatOfANumberTellsWhetherItIsADay(int id, String pattern, boolean date) {
    assertEquals(date, SheetCell.isDate(id, pattern));
  }

  @Test
  void aWorkbookHeldInMemoryGivesEachSheetThatCanBeSeen() throws IOException {
    java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "test", "1.0")) {
      for (String name : List.of("north", "south", "hidden")) {
        Worksheet sheet = workbook.newWorksheet(name);
        sheet.value(0, 0, "record.id");
        sheet.value(1, 0, name + "-1");
        if (name.equals("hidden")) {
          sheet.setVisibilityState(VisibilityState.HIDDEN);
        }
      }
    }
    List<Input> inputs = Input.of("book.xlsx", out.toByteArray());
    assertEquals(
        List.of("book.xlsx!north", "book.xlsx!south"), inputs.stream().map(Input::file).toList());
    for (Input input : inputs) {
      try (RecordSource source = new Sources(Catalogue.standard()).open(input)) {
        assertEquals(null, source.unusable());
      }
    }
  }

  @Test
  void aWorkbookHeldInMemoryIsBoundedAndABrokenOneSaid() throws IOException {
    java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("xl/sharedStrings.xml"));
      byte[] blanks = new byte[1 << 20];
      for (int i = 0; i < 300; i++) {
        zip.write(blanks);
      }
    }
    for (byte[] bytes :
        List.of(out.toByteArray(), "PK no workbook".getBytes(StandardCharsets.UTF_8))) {
      List<Input> inputs = Input.of("book.xlsx", bytes);
      assertEquals(1, inputs.size());
      try (RecordSource source = new Sources(Catalogue.standard()).open(inputs.get(0))) {
        SetAside whole = source.unusable();
        assertTrue(whole != null && whole.reason().startsWith("is not a workbook"), "" + whole);
      }
    }
  }

  @Test
  void wordsAloneBelowTheTableAreNoRecord() throws Exception {
    Path path =
        write(
            "cards.xlsx",
            book -> {
              Worksheet sheet = book.newWorksheet("s");
              row(sheet, 0, "record.id", "well.depth [ft]", "well.tag");
              row(sheet, 1, "A 1 north", "", "");
              row(sheet, 2, "B", "120", "x");
              row(sheet, 3, "END OF FILE", "", "");
            });
    Gathered all = Gathered.of(new Sources(CATALOGUE, HeaderMap.NONE), inputs(path));
    assertEquals(2, all.records.size());
    assertEquals(List.of("4: only a remark stands in it"), all.reasons());
  }
}
