package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where rows end and what their cells are, against the CSV library and against itself. */
class SplittingTest {
  private static final String HEADER = "record.id,well.tag,driller.licence\n";
  private static final String[] PIECES = {
    "a",
    "12",
    "6\"",
    "\"\"",
    "\"",
    ",",
    ",",
    ";",
    "\n",
    "\n",
    "\r\n",
    "\r",
    " ",
    "\t",
    "é",
    "\"a\"",
    "\"b,\nc\"",
    ",\"",
    "\",",
    "x\"\"y",
    "",
    "A-1,T,D\n",
    "|"
  };

  private static String text(Random random) {
    StringBuilder out = new StringBuilder();
    int n = random.nextInt(40);
    for (int i = 0; i < n; i++) {
      out.append(PIECES[random.nextInt(PIECES.length)]);
    }
    return out.toString();
  }

  /** The rows of a text, cut into cells; null if any row is unsound. */
  private static List<List<String>> ours(byte[] bytes, byte delimiter) {
    RowScanner scanner = new RowScanner(delimiter);
    List<List<String>> rows = new ArrayList<>();
    int at = 0;
    while (at < bytes.length) {
      int status = scanner.scan(bytes, at, bytes.length, true);
      if (status > RowMarks.QUOTED) {
        return null;
      }
      if (scanner.to() > at) {
        rows.add(RowCells.of(bytes, at, scanner.to(), (byte) status, delimiter));
      }
      at = scanner.next();
    }
    return rows;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void textsOfSoundQuotingAreReadAsTheLibraryReadsThem(long seed) throws IOException {
    Random random = new Random(seed);
    int compared = 0;
    for (int i = 0; i < 8_000; i++) {
      String text = text(random);
      byte delimiter = (byte) ",;\t|".charAt(random.nextInt(4));
      List<List<String>> ours = ours(text.getBytes(StandardCharsets.UTF_8), delimiter);
      if (ours == null) {
        continue;
      }
      List<List<String>> theirs = new ArrayList<>();
      try (CSVParser parser = CSVParser.parse(text, RowCells.format(delimiter))) {
        for (CSVRecord row : parser) {
          theirs.add(row.toList());
        }
      }
      assertEquals(theirs, ours, () -> "seed " + seed + ": " + text);
      compared++;
    }
    assertTrue(compared > 2_000, "compared " + compared);
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14})
  void theSizeOfChunksChangesNothing(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 1_000; i++) {
      String text = HEADER + text(random) + text(random);
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      List<String> whole = Gathered.of("a.csv", bytes, 1 << 12).told();
      for (int size : new int[] {2, 7, 33}) {
        assertEquals(
            whole, Gathered.of("a.csv", bytes, size).told(), () -> "seed " + seed + ": " + text);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22})
  void everyByteIsInARecordOrSetAside(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 2_000; i++) {
      String text = HEADER + text(random);
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      Gathered all = Gathered.of("a.csv", bytes, 1 << 12);
      List<String> rows = new ArrayList<>(all.raw);
      all.aside.forEach(a -> rows.add(a.text()));
      assertEquals(all.rows, rows.size(), () -> "seed " + seed + ": " + text);
      assertEquals(
          sorted(text.substring(HEADER.length())),
          sorted(String.join("", rows)),
          () -> "seed " + seed + ": " + text);
    }
  }

  private static String sorted(String text) {
    char[] chars = text.replaceAll("[\r\n]", "").toCharArray();
    Arrays.sort(chars);
    return new String(chars);
  }

  /** Read again from each line on, four megabytes of these would take hours. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "a\",\"\n",
        "\"\"\"\",\"\n",
        ",\"\n\",\"x\n",
        "\",\"\n",
        "a,\"b\n",
        "\"a\",\"\"\"\n"
      })
  void linesThatAreAllBadAreNotReadAgainAndAgain(String line) {
    String text = "record.id,well.tag\n" + line.repeat((2 << 20) / line.length()) + "\"x";
    assertTrue(Gathered.counted(text).rows > 1000);
  }
}
