package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.Catalogue;

/**
 * Tables, JSON and header maps made of the pieces that such files are made of, and of noise: never
 * a crash, never a row too many or too few, never a reason of more than one line. The seed and the
 * number of the input are said, so that it can be made again.
 */
class GeneratedInputsTest {
  private static final String[] CELLS = {
    "A-1",
    "A-2",
    "120",
    "120 ft",
    "36,5",
    "-999",
    "0",
    "n/a",
    "?",
    "flowing",
    "2009-05-01",
    "\"",
    "\"\"",
    "\"a,b\"",
    "\"a\nb\"",
    "=1+1",
    "\u00A0",
    "\u0000",
    "\uFEFF",
    "é",
    "\uD83D\uDCA7",
    "x",
    "record.id",
    "well.depth [ft]",
    "\\",
    "'",
    "NaN",
    "1e999",
    " ",
    ""
  };
  private static final String[] BETWEEN = {",", ",", ",", ";", "\t", "|", "\n", "\n", "\r\n", "\r"};
  private static final String[] JSON = {
    "{",
    "}",
    "[",
    "]",
    ":",
    ",",
    "\"record\"",
    "\"id\"",
    "\"A-1\"",
    "\"well\"",
    "\"depth\"",
    "\"layers\"",
    "\"setbacks\"",
    "\"from\"",
    "\"to\"",
    "\"material\"",
    "\"distance\"",
    "120",
    "-0.0",
    "1e999",
    "true",
    "null",
    "\"\\ud800\"",
    "\"120 ft\"",
    "\n",
    "\\",
    "\"",
    "\u0000",
    "{\"record\":{\"id\":\"A-2\"}}",
    "{\"record\":{\"id\":\"A-3\"},\"well\":{\"depth\":90}}"
  };
  private static final String[] MAP = {
    "\"column\":\"A\"",
    "\"column\":2",
    "\"columns\":[\"A\",\"B\"]",
    "\"entry\":\"well.depth\"",
    "\"entry\":\"dates.completed\"",
    "\"entry\":\"well.use\"",
    "\"entry\":\"wel.tag\"",
    "\"unit\":\"m\"",
    "\"unit\":\"psi\"",
    "\"unitFrom\":\"U\"",
    "\"join\":\"range\"",
    "\"join\":\"feet and inches\"",
    "\"split\":\"/\"",
    "\"into\":[{\"entry\":\"well.tag\"}]",
    "\"scale\":0.1",
    "\"scale\":-1e300",
    "\"dates\":\"day first\"",
    "\"pivot\":1930",
    "\"words\":{\"x\":\"household\"}",
    "\"unknown\":[\"-999\"]",
    "\"ofSeveral\":\"most\"",
    "\"x\":1"
  };
  private static final String[] WHOLE = {
    "\"unknown\":[\"0\"]",
    "\"rows\":\"one record an id\"",
    "\"ignore\":[\"B\"]",
    "\"only\":[{\"column\":\"U\",\"is\":[\"m\"]}]",
    "\"constants\":{\"record.units\":\"metric\"}",
    "\"layers\":{\"to\":\"A\",\"material\":\"B\"}",
    "\"table\":{\"header\":0}",
    "\"table\":{\"delimiter\":\"semicolon\",\"header\":2}",
    "\"title\":7",
    "\"joins\":[]"
  };

  private static String said(long seed, int i, String text) {
    StringBuilder out = new StringBuilder("seed " + seed + ", input " + i + ": ");
    text.chars()
        .forEach(
            c -> {
              if (c < ' ' || c > '~') {
                out.append(String.format("\\u%04x", c));
              } else {
                out.append((char) c);
              }
            });
    return out.toString();
  }

  private static void holds(Gathered all, long seed, int i, String text) {
    long rowsAside = all.aside.stream().filter(a -> !a.isFile()).count();
    boolean sound =
        all.rows == all.recordCount + all.joinedRows + rowsAside
            && all.recordCount == all.records.size()
            && all.aside.stream().allMatch(GeneratedInputsTest::isOneLine);
    if (!sound) {
      fail(
          said(seed, i, text)
              + " gave "
              + all.rows
              + " rows, "
              + said(seed, i, all.reasons() + ""));
    }
  }

  private static boolean isOneLine(SetAside aside) {
    return aside.reason().lines().count() == 1 && !aside.reason().contains("Exception");
  }

  private static String pieces(Random random, String[] of, int most) {
    StringBuilder out = new StringBuilder();
    for (int n = random.nextInt(most); n > 0; n--) {
      out.append(of[random.nextInt(of.length)]);
    }
    return out.toString();
  }

  private static String table(Random random) {
    StringBuilder out = new StringBuilder();
    if (random.nextInt(4) > 0) {
      out.append("record.id,well.depth [ft],dates.completed\n");
    }
    for (int n = random.nextInt(24); n > 0; n--) {
      out.append(CELLS[random.nextInt(CELLS.length)]);
      out.append(BETWEEN[random.nextInt(BETWEEN.length)]);
    }
    return out.toString();
  }

  @Test
  void tables() {
    long seed = 4180;
    Random random = new Random(seed);
    long records = 0;
    for (int i = 0; i < 120_000; i++) {
      String text = table(random);
      byte[] bytes =
          random.nextInt(8) == 0
              ? text.getBytes(StandardCharsets.UTF_16LE)
              : text.getBytes(StandardCharsets.UTF_8);
      Gathered all = Gathered.of("a.csv", bytes, 1 << 12);
      holds(all, seed, i, text);
      records += all.recordCount;
    }
    assertTrue(records > 20_000, "the tables are no tables: " + records);
  }

  @Test
  void json() {
    long seed = 8259;
    Random random = new Random(seed);
    long records = 0;
    for (int i = 0; i < 120_000; i++) {
      String text = (random.nextBoolean() ? "[" : "") + pieces(random, JSON, 20);
      String name = random.nextBoolean() ? "a.json" : "a.ndjson";
      Gathered all = Gathered.of(name, text.getBytes(StandardCharsets.UTF_8), 1 << 12);
      holds(all, seed, i, text);
      records += all.recordCount;
    }
    assertTrue(records > 10_000, "the texts are no records: " + records);
  }

  private static String map(Random random) {
    StringBuilder out = new StringBuilder("{\"title\":\"t\",\"columns\":[");
    out.append("{\"column\":\"NO\",\"entry\":\"record.id\"}");
    for (int n = random.nextInt(3); n > 0; n--) {
      out.append(",{").append(joined(random, MAP, 2 + random.nextInt(3))).append('}');
    }
    out.append(']');
    for (int n = random.nextInt(3); n > 0; n--) {
      out.append(',').append(WHOLE[random.nextInt(WHOLE.length)]);
    }
    String whole = out.append('}').toString();
    return random.nextInt(10) == 0 ? whole.substring(0, random.nextInt(whole.length())) : whole;
  }

  private static String joined(Random random, String[] of, int n) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < n; i++) {
      out.append(i == 0 ? "" : ",").append(of[random.nextInt(of.length)]);
    }
    return out.toString();
  }

  @Test
  void headerMaps() throws IOException {
    long seed = 1930;
    Random random = new Random(seed);
    int sound = 0;
    for (int i = 0; i < 60_000; i++) {
      String json = map(random);
      try {
        HeaderMap map = HeaderMaps.parse("map.json", json, Catalogue.standard());
        sound++;
        holds(
            Gathered.mapped(map, "a.csv", "NO;A;B;U\n1;2;x;ft\n2;3,5/4;y;m\n2;;;\n3;1;2;cubit\n"),
            seed,
            i,
            json);
      } catch (MapException e) {
        assertFalse(e.problems().isEmpty(), said(seed, i, json));
        for (MapProblem problem : e.problems()) {
          assertEquals(1, problem.what().lines().count(), said(seed, i, json));
        }
      }
    }
    assertTrue(sound > 5_000, "hardly a map was sound: " + sound);
  }
}
