package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.quantity.Units;

class CsvLineTest {
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+cmd|x", "-5 ft", "@sum(a1)", "\tx", "\rx", "\nx", "-", "+"})
  void textThatWouldStartAFormulaIsDefused(String text) throws Exception {
    assertEquals(List.of("'" + text), read(line().text(text)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-5", "+5", "-5.25", "-.5", "5", "W-12", "a=b", "'x", " =1", ""})
  void numbersAndOtherTextStayAsTheyAre(String text) throws Exception {
    assertEquals(List.of(text, "x"), read(line().text(text).word("x")));
  }

  @Test
  void quotesCommasAndLineEndsAreQuoted() {
    ByteText out = new ByteText();
    new CsvLine(out).text("a,b").text("c\"d").text("e\nf").text("g\rh").text("plain").end();
    assertEquals("\"a,b\",\"c\"\"d\",\"e\nf\",\"g\rh\",plain\n", out.toString());
  }

  @ParameterizedTest
  @CsvSource({
    "0,0",
    "-0.0,0",
    "212,212",
    "0.1,0.1",
    "-12.5,-12.5",
    "1234567,1234570",
    "0.00012345678,0.000123457",
    "1e12,1000000000000",
    "60.96000000000001,60.96",
    "0.30000000000000004,0.3",
    "1e-7,0.0000001",
    "NaN,",
    "Infinity,inf",
    "-Infinity,-inf",
    "999999.5,1000000",
    "99999.94,99999.9"
  })
  void numbersAreTheShortestThatReadBackToSixSignificant(double number, String text) {
    ByteText out = new ByteText();
    new CsvLine(out).number(number).end();
    assertEquals((text == null ? "" : text) + "\n", out.toString());
  }

  @Test
  void wholeNumbersAndUnits() {
    ByteText out = new ByteText();
    new CsvLine(out)
        .whole(0)
        .whole(9)
        .whole(10)
        .whole(Long.MAX_VALUE)
        .whole(-3)
        .nothing()
        .unit(Units.FOOT)
        .unit(null)
        .end();
    assertEquals("0,9,10,9223372036854775807,-3,,ft,\n", out.toString());
  }

  /** Whatever text goes in comes out of a strict CSV reader, but for the apostrophe. */
  @Test
  void anyTextIsReadBackByAnotherReader() throws Exception {
    long seed = 20260101;
    Random random = new Random(seed);
    String letters = "ab1 ,\"'=+-@\t\r\n\0é€😀;|";
    int[] points = letters.codePoints().toArray();
    for (int i = 0; i < 20_000; i++) {
      List<String> texts = new ArrayList<>();
      ByteText out = new ByteText();
      CsvLine line = new CsvLine(out);
      line.word("x");
      for (int cell = 0; cell < 3; cell++) {
        StringBuilder text = new StringBuilder();
        for (int n = random.nextInt(5); n > 0; n--) {
          text.appendCodePoint(points[random.nextInt(points.length)]);
        }
        line.text(text.toString());
        texts.add((CsvLine.startsFormula(text.toString()) ? "'" : "") + text);
      }
      line.end();
      String where = "seed " + seed + ", line " + i;
      try (CSVParser parser = CSVParser.parse(out.toString(), CSVFormat.RFC4180)) {
        List<CSVRecord> rows = parser.getRecords();
        assertEquals(1, rows.size(), where);
        assertEquals(texts, rows.get(0).stream().skip(1).toList(), where);
      }
    }
  }

  private static List<String> read(CsvLine line) throws Exception {
    line.end();
    try (CSVParser parser = CSVParser.parse(shared.toString(), CSVFormat.RFC4180)) {
      List<CSVRecord> rows = parser.getRecords();
      return rows.isEmpty() ? List.of("") : rows.get(0).stream().toList();
    }
  }

  private static ByteText shared = new ByteText();

  private static CsvLine line() {
    shared = new ByteText();
    return new CsvLine(shared);
  }

  @Test
  void bytesAreThoseOfTheJdk() {
    long seed = 7;
    Random random = new Random(seed);
    for (int i = 0; i < 5_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(8); n > 0; n--) {
        text.append((char) random.nextInt(0x10000));
      }
      byte[] expected = text.toString().getBytes(StandardCharsets.UTF_8);
      assertEquals(
          new String(expected, StandardCharsets.UTF_8),
          new ByteText().put(text.toString()).toString(),
          "seed " + seed + ", text " + i);
    }
  }
}
