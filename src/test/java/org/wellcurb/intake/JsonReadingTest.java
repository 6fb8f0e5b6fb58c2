package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Extra;
import org.wellcurb.record.Layer;
import org.wellcurb.record.WellRecord;

class JsonReadingTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();

  private static Gathered read(String name, String text) {
    return Gathered.of(name, text.getBytes(StandardCharsets.UTF_8), RowSplitter.CHUNK);
  }

  private static Gathered one(String text) {
    return read("one.json", text);
  }

  private static String written(WellRecord record, String key) {
    return record.written(CATALOGUE.index(key));
  }

  private static double si(WellRecord record, String key) {
    return record.lo(CATALOGUE.index(key));
  }

  @Test
  void aSingleObjectIsARecord() {
    WellRecord record =
        one("""
            {
              "well": { "depth": "212 ft", "tag": "T \\"7\\"", "open_hole": true },
              "pump": { "intake_depth": 64.60 },
              "record": { "units": "metric", "id": "A-1", "variances": ["r-1: V 7", "r-2"] }
            }
            """)
            .records
            .get(0);
    assertEquals("A-1", record.id());
    assertEquals(1, record.row());
    assertEquals(64.6176, si(record, "well.depth"), 1e-12);
    assertEquals(64.6, si(record, "pump.intake_depth"), 1e-12);
    assertEquals(0.005, record.halfPlace(CATALOGUE.index("pump.intake_depth")), 1e-12);
    assertEquals("T \"7\"", written(record, "well.tag"));
    assertEquals(1, si(record, "well.open_hole"));
    assertEquals(2, record.variances().size());
    assertEquals("V 7", record.variances().get(0).reference());
  }

  @Test
  void anArrayCountsPlacesAndLinesCountLines() {
    String array = "[ {\"record\":{\"id\":\"A\"}},\n\n {\"record\":{\"id\":\"B\"}} ]";
    Gathered all = one(array);
    assertEquals(List.of("A", "B"), all.ids());
    assertEquals(List.of(1L, 2L), all.records.stream().map(WellRecord::row).toList());
    String lines = "{\"record\":{\"id\":\"A\"}}\r\n\n{\"record\":{\"id\":\"B\"}}";
    for (String name : List.of("x.ndjson", "x.jsonl", "x.json")) {
      all = read(name, lines);
      assertEquals(List.of("A", "B"), all.ids());
      assertEquals(List.of(1L, 3L), all.records.stream().map(WellRecord::row).toList());
    }
  }

  @Test
  void otherEncodingsAreRead() {
    String text = "{\"record\":{\"id\":\"Brønd é\"}}";
    for (byte[] bytes :
        List.of(
            ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8),
            ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE),
            ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16BE),
            text.getBytes(Charset.forName("windows-1252")))) {
      assertEquals(List.of("Brønd é"), Gathered.of("a.json", bytes, 64).ids());
    }
  }

  @Test
  void layersAndSetbacksMayBeLists() {
    WellRecord record =
        one("""
            {"record":{"id":"A"},
             "layers":[{"from":0,"to":"12 m","material":"sandy clay"},{"from":"12 m","to":"?"}],
             "setbacks":[{"from":"septic tank","distance":"75 ft"},
                         {"from":"septic_tank","distance":"60 ft"},
                         {"from":"kennel","distance":"5 ft"}]}
            """)
            .records
            .get(0);
    List<Layer> layers = record.layers();
    assertEquals(2, layers.size());
    assertEquals(12, layers.get(0).to().hi(), 1e-12);
    assertEquals("sandy clay", layers.get(0).material());
    assertTrue(layers.get(1).to().isAll());
    assertEquals(60 * 0.3048, si(record, "setback.septic_tank"), 1e-12);
    assertEquals(List.of(new Extra("setbacks.kennel", "5 ft")), record.extras());
  }

  @Test
  void namesThatNoEntryHasAreKept() {
    WellRecord record =
        one("{\"record\":{\"id\":\"A\",\"note\":\"x\"},\"well\":{\"dept\":7},\"office\":{\"a\":[1,2]}}")
            .records
            .get(0);
    assertEquals(
        List.of(
            new Extra("record.note", "x"),
            new Extra("well.dept", "7"),
            new Extra("office", "{\"a\":[1,2]}")),
        record.extras());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"record\":{}} | /record/id | no record.id",
        "{\"well\":{\"depth\":3}} | /record/id | no record.id",
        "{\"record\":{\"id\":\"A\"},\"well\":{\"depth\":1,\"depth\":2}} | /well/depth | stands twice",
        "{\"record\":{\"id\":\"A\"},\"record\":{}} | /record | stands twice",
        "{\"record\":{\"id\":\"A\"},\"x\":1,\"x\":2} | /x | stands twice",
        "{\"record\":{\"id\":\"A\"},\"x\":{\"y\":1,\"y\":2}} | /x/y | stands twice",
        "{\"record\":{\"id\":\"A\"},\"well\":{\"depth\":[1]}} | /well/depth | is not a number or text",
        "{\"record\":{\"id\":\"A\"},\"well\":3} | /well | is not an object",
        "{\"record\":{\"id\":\"A\"},\"layers\":3} | /layers | is not a list",
        "{\"record\":{\"id\":\"A\"},\"layers\":[{\"to\":true}]} | /layers/0/to | is not a number or text",
        "{\"record\":{\"id\":\"A\"}} {} | `` | text follows the object",
      })
  void whatIsNoRecordIsSetAsideWithItsPointer(String text, String pointer, String reason) {
    Gathered all = read("x.ndjson", text + "\n{\"record\":{\"id\":\"B\"}}");
    assertEquals(List.of("B"), all.ids());
    assertEquals(pointer, all.aside.get(0).column());
    assertEquals(reason, all.aside.get(0).reason());
    assertEquals(text, all.aside.get(0).text());
    assertEquals(2, all.rows);
  }

  @Test
  void brokenJsonSaysWhereInTheRecordAndWhatWouldMendIt() {
    Gathered all = one("[{\"record\":{\"id\":\"A\"},\n \"well\":{\"cap\":\"é\" 7}}]");
    assertEquals(
        "is not JSON at line 2, column 20 of it; look at the quotes, commas and brackets there",
        all.aside.get(0).reason());
  }

  @Test
  void brokenJsonDeepJsonAndLongTextsAreSetAside() {
    String deep = "{\"record\":{\"id\":\"D\"},\"x\":" + "[".repeat(5000) + "]".repeat(5000) + "}";
    String big = "{\"record\":{\"id\":\"" + "x".repeat(10 << 20) + "\"}}";
    String longText = "{\"record\":{\"id\":\"" + "x".repeat(Bounds.CELL + 1) + "\"}}";
    String good = "{\"record\":{\"id\":\"B\"}}";
    for (String bad : List.of(deep, big, longText, "{\"a\":nul}", "{\"a\":01}", "{'a':1}")) {
      assertEquals(List.of("B"), read("x.ndjson", bad + "\n" + good).ids());
      assertEquals(List.of("B", "B"), one("[" + good + ",\n" + bad + ",\n" + good + "]").ids());
    }
  }

  @Test
  void aBraceForgottenInAnArrayCostsOneRecord() {
    Gathered all =
        one(
            """
            [
              {"record":{"id":"A"}},
              {"record":{"id":"B"},
              {"record":{"id":"C"}},
              {"record":{"id":"D},
              {"record":{"id":"E"}}
            ]
            """);
    assertEquals(List.of("A", "C", "E"), all.ids());
    assertEquals(2, all.aside.size());
    assertEquals(2, all.aside.get(0).row());
    assertEquals(RowFault.OBJECT_NOT_CLOSED, all.aside.get(0).reason());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\0c",
        "{\0\0\0}",
        "\0{\"record\":{\"id\":\"A\"}}",
        "{\"record\":{\"id\":\"A\0\"}}"
      })
  void zeroBytesAreNoSignOfAnotherEncoding(String text) {
    Gathered all =
        one("[{\"record\":{\"id\":\"B\"}},\n" + text + ",\n{\"record\":{\"id\":\"C\"}}]");
    assertTrue(all.ids().contains("B"), all.reasons().toString());
    assertTrue(!all.aside.isEmpty(), "it is set aside");
  }

  @Test
  void anArrayThatIsCutOffSaysSo() {
    Gathered all = one("[{\"record\":{\"id\":\"A\"}},{\"record\":{\"id\":\"B\"}");
    assertEquals(List.of("A"), all.ids());
    assertEquals(2, all.aside.size());
    assertEquals("{\"record\":{\"id\":\"B\"}", all.aside.get(0).text());
    assertTrue(all.aside.get(1).reason().contains("ends before its array"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  \n", "<a/>", "record.id\nA"})
  void whatIsNoJsonIsSetAsideWhole(String text) {
    Gathered all = one(text);
    assertEquals(1, all.aside.size());
    assertTrue(all.aside.get(0).isFile());
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33})
  void theSizeOfChunksChangesNothing(long seed) {
    String[] pieces = {
      "{",
      "}",
      "[",
      "]",
      ",",
      ":",
      "\"",
      "\\",
      "\n",
      "\n",
      " ",
      "1",
      "x",
      "{\"record\":{\"id\":\"A\"}}",
      "{\"record\":{\"id\":\"B\\\"\"}}",
      ",\n{\"record\":{\"id\":\"C\"}}"
    };
    Random random = new Random(seed);
    for (int i = 0; i < 1500; i++) {
      StringBuilder text = new StringBuilder(random.nextBoolean() ? "[" : "{");
      for (int n = random.nextInt(30); n > 0; n--) {
        text.append(pieces[random.nextInt(pieces.length)]);
      }
      byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
      String name = random.nextBoolean() ? "a.json" : "a.ndjson";
      List<String> whole = Gathered.of(name, bytes, 1 << 12).told();
      for (int size : new int[] {1, 5, 20}) {
        assertEquals(
            whole, Gathered.of(name, bytes, size).told(), () -> "seed " + seed + ": " + text);
      }
    }
  }

  /** Followed again from each line on, these would take hours. */
  @ParameterizedTest
  @ValueSource(strings = {"{\n", "{\"a\":\n{\"b\":1},\n", "[{\n}\n", "{\"a\n"})
  void objectsThatNeverEndAreNotFollowedAgainAndAgain(String line) {
    String text = "[" + line.repeat((2 << 20) / line.length());
    assertTrue(Gathered.counted("a.json", text).rows > 1);
  }

  @Test
  void aKeyWrittenAsOneNameIsTold() {
    Gathered all =
        Gathered.of(
            "r.ndjson",
            "{\"record.id\":\"A-1\"}\n{\"x\":1}\n".getBytes(StandardCharsets.UTF_8),
            1 << 10);
    assertEquals(
        List.of(
            "1: no record.id; in JSON it is the name id within record, not one name with a dot",
            "2: no record.id"),
        all.reasons());
  }
}
