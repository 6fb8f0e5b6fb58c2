package org.wellcurb.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HeadersCommandTest {
  @TempDir Path dir;

  private static void row(Worksheet sheet, int row, Object... cells) {
    for (int i = 0; i < cells.length; i++) {
      if (cells[i] instanceof Number number) {
        sheet.value(row, i, number);
      } else {
        sheet.value(row, i, cells[i].toString());
      }
    }
  }

  /** A cover, a sheet that is empty, the wells, and their layers, of which there are more. */
  private Path workbook() throws Exception {
    Path path = dir.resolve("office.xlsx");
    try (OutputStream out = Files.newOutputStream(path);
        Workbook book = new Workbook(out, "test", "1.0")) {
      row(book.newWorksheet("Cover"), 0, "Wells of the district, as of spring");
      book.newWorksheet("Blank");
      Worksheet wells = book.newWorksheet("Wells 1");
      row(wells, 0, "Well No", "Well depth (ft)", "Casing diameter (in)");
      Worksheet layers = book.newWorksheet("Log");
      row(layers, 0, "Ref", "Upper", "Lower", "Met");
      for (int i = 0; i < 5; i++) {
        row(wells, i + 1, "W-" + i, 100 + i, 6);
        row(layers, 2 * i + 1, "W-" + i, 0, 20, "clay");
        row(layers, 2 * i + 2, "W-" + i, 20, 100 + i, "rock");
      }
    }
    return path;
  }

  @Test
  void aTableOfTheSameWellsIsJoinedInTheDraft() throws Exception {
    Path wells =
        Files.writeString(
            dir.resolve("wells.csv"),
            "PERMIT,WELL_DEPTH_FT,TEST_DATE\nW-1,100,2004-01-05\nW-2,90,2004-01-06\n");
    Path log =
        Files.writeString(
            dir.resolve("log.csv"),
            "SEQ,PERMIT,FROM_FT,TO_FT,LITHOLOGY\n1,W-1,0,30,clay\n2,W-1,30,100,sand\n3,W-2,0,90,peat\n");
    Path tests =
        Files.writeString(
            dir.resolve("tests.csv"),
            "WELL,TEST_RATE_GPM,TEST_DATE\nW-1,5,2004-02-01\nW-2,6,2004-02-02\n");
    Path other = Files.writeString(dir.resolve("zones.csv"), "PERMIT,ZONE\nQ-1,x\nQ-2,y\n");
    Path map = dir.resolve("map.json");
    Ran headers =
        Ran.with(
            "headers",
            wells.toString(),
            log.toString(),
            tests.toString(),
            other.toString(),
            "--out",
            map.toString());
    assertEquals(0, headers.code(), headers.err());
    String said = headers.out();
    assertTrue(said.contains("log.csv, by PERMIT, which says the same as PERMIT"), said);
    assertTrue(said.contains("tests.csv, by WELL, which says the same as PERMIT"), said);
    assertTrue(said.contains("not drafted: zones.csv"), said);
    Path out = dir.resolve("out");
    Ran screened =
        Ran.with(
            "screen",
            wells.toString(),
            log.toString(),
            tests.toString(),
            "--headers",
            map.toString(),
            "--rules",
            "common-practice",
            "--sheets",
            "all",
            "--out",
            out.toString());
    assertEquals(0, screened.code(), screened.err());
    assertTrue(screened.out().contains("2 rows read: 2 screened, 0 set aside"), screened.out());
    String sheet = Files.readString(out.resolve("sheets/W-1.html"));
    assertTrue(sheet.contains("2004-01-05") && sheet.contains("sand"), sheet);
    assertTrue(sheet.contains("5 gpm"), sheet);
  }

  @Test
  void ofAWorkbookTheSheetMostLikeWellsIsDrafted() throws Exception {
    Path map = dir.resolve("map.json");
    Path book = workbook();
    Ran headers = Ran.with("headers", book.toString(), "--out", map.toString());
    assertEquals(0, headers.code(), headers.err());
    assertTrue(headers.out().contains("draft of a map for office.xlsx!Wells 1"), headers.out());
    assertTrue(headers.out().contains("not drafted: "), headers.out());
    assertTrue(headers.out().contains("office.xlsx!Log"), headers.out());
    assertTrue(headers.out().contains("office.xlsx!Blank"), headers.out());
    assertTrue(Files.readString(map).contains("\"sheet\" : \"Wells 1\""), Files.readString(map));
    Ran screened =
        Ran.with(
            "screen",
            book.toString(),
            "--headers",
            map.toString(),
            "--rules",
            "common-practice",
            "--out",
            dir.resolve("out").toString());
    assertEquals(0, screened.code(), screened.err());
    assertTrue(screened.out().contains("5 rows read: 5 screened, 0 set aside"), screened.out());
  }
}
