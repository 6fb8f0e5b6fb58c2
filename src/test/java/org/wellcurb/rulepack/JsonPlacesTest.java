package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Values know where they stand, whatever stands around and in them. */
class JsonPlacesTest {

  private static Json read(String text) {
    Problems problems = new Problems(PackText.of("test", text));
    Json json = JsonReader.read(problems);
    assertTrue(problems.isEmpty(), () -> problems.list() + "\n" + text);
    return assertNotNullJson(json);
  }

  private static Json assertNotNullJson(Json json) {
    assertNotNull(json);
    return json;
  }

  @Test
  void pointersAreThoseOfRfc6901() {
    Json.Obj root = (Json.Obj) read("{\"a/b\": {\"m~n\": [1, {\"\": 2}]}}");
    Json.Obj inner = (Json.Obj) root.get("a/b");
    Json.Arr list = (Json.Arr) inner.get("m~n");
    assertEquals("/a~1b/m~0n/1/", ((Json.Obj) list.items().get(1)).get("").pointer());
    assertEquals("", root.pointer());
  }

  @Test
  void linesEndInAnyWayAndColumnsCountCharacters() {
    PackText text = PackText.of("test", "a\r\nb\rc\n\uD83D\uDEB0x");
    assertEquals(1, text.line(0));
    assertEquals(1, text.line(2));
    assertEquals(2, text.line(3));
    assertEquals(3, text.line(5));
    assertEquals(4, text.line(9));
    assertEquals(2, text.column(9));
    assertEquals("\uD83D\uDEB0x", text.lineAt(9));
    assertEquals("a", text.lineAt(1));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void everyValueStandsWhereItSays(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 60; i++) {
      StringBuilder out = new StringBuilder();
      write(random, out, 0);
      String text = out.toString();
      check(read(text), text, "seed " + seed + ", number " + i + ": " + text);
    }
  }

  private static void check(Json json, String text, String hint) {
    String there = text.substring(json.from(), json.to());
    if (json instanceof Json.Obj object) {
      assertEquals("{", there, hint);
      object.members().forEach(m -> check(m.key(), text, hint));
      object.members().forEach(m -> check(m.value(), text, hint));
    } else if (json instanceof Json.Arr list) {
      assertEquals("[", there, hint);
      list.items().forEach(item -> check(item, text, hint));
    } else if (json instanceof Json.Text value) {
      assertEquals(value.value(), ((Json.Text) read(there)).value(), hint);
      eachCharacter(value, text, hint);
    } else {
      assertEquals(written(json), there, hint);
    }
  }

  private static String written(Json json) {
    return json instanceof Json.Num number ? number.value() : ((Json.Word) json).value();
  }

  /** The place of each character of a text, escapes included. */
  private static void eachCharacter(Json.Text value, String text, String hint) {
    for (int i = 0; i < value.value().length(); i++) {
      int from = Escapes.offset(text, value.from() + 1, i);
      int to = Escapes.offset(text, value.from() + 1, i + 1);
      char c = value.value().charAt(i);
      if (!Character.isSurrogate(c)) {
        String one = "\"" + text.substring(from, to) + "\"";
        assertEquals(String.valueOf(c), ((Json.Text) read(one)).value(), hint);
      }
    }
    assertEquals('"', text.charAt(Escapes.closing(text, value.from())), hint);
  }

  private static void write(Random random, StringBuilder out, int depth) {
    space(random, out);
    switch (random.nextInt(depth > 4 ? 3 : 6)) {
      case 0 -> out.append(random.nextInt(2000) - 1000);
      case 1 -> out.append(List.of("true", "false", "null").get(random.nextInt(3)));
      case 2 -> text(random, out, "");
      case 3, 4 -> {
        out.append('{');
        int members = random.nextInt(4);
        for (int i = 0; i < members; i++) {
          out.append(i == 0 ? "" : ",");
          space(random, out);
          text(random, out, "k" + i);
          space(random, out);
          out.append(':');
          write(random, out, depth + 1);
        }
        out.append('}');
      }
      default -> {
        out.append('[');
        int items = random.nextInt(4);
        for (int i = 0; i < items; i++) {
          out.append(i == 0 ? "" : ",");
          write(random, out, depth + 1);
        }
        out.append(']');
      }
    }
    space(random, out);
  }

  private static void text(Random random, StringBuilder out, String start) {
    List<String> parts =
        List.of("a", "é", "\uD83D\uDEB0", "\\\"", "\\\\", "\\n", "\\u0041", "\\ud83d\\udeb0", "/");
    out.append('"').append(start);
    int length = random.nextInt(6);
    for (int i = 0; i < length; i++) {
      out.append(parts.get(random.nextInt(parts.size())));
    }
    out.append('"');
  }

  private static void space(Random random, StringBuilder out) {
    out.append(List.of("", " ", "\n", "\r\n", "\t").get(random.nextInt(5)));
  }
}
