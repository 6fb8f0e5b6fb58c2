package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.ZipEntry;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.record.Catalogue;

/** What is read has limits, each of them written down, and each of them said where it is met. */
class BoundsTest {
  private static final Set<String> COUNTS =
      Set.of("COLUMNS", "PREAMBLE", "DEPTH", "JSON_VALUES", "MEMBERS", "RATIO", "DESK_RECORDS");

  @Test
  void eachIsWrittenDown() throws Exception {
    String text = Files.readString(Path.of("DEVELOPERS.md"));
    int named = 0;
    for (Field field : Bounds.class.getFields()) {
      String row = "| `" + field.getName() + "` | " + figure(field) + " |";
      assertTrue(text.contains(row), row);
      named++;
    }
    assertTrue(named > 10, named + " bounds");
  }

  private static String figure(Field field) throws IllegalAccessException {
    long value = ((Number) field.get(null)).longValue();
    if (COUNTS.contains(field.getName())) {
      return String.format(Locale.ROOT, "%,d", value);
    }
    return value >= 1L << 30
        ? (value >> 30) + " GiB"
        : value >= 1L << 20 ? (value >> 20) + " MiB" : (value >> 10) + " KiB";
  }

  private static Gathered header(int columns) {
    StringBuilder text = new StringBuilder("record.id");
    for (int i = 1; i < columns; i++) {
      text.append(",x").append(i);
    }
    return Gathered.csv(text + "\nA" + ",".repeat(columns - 1) + "\n");
  }

  @Test
  void aTableHasAsManyColumnsAndNoMore() {
    assertEquals(List.of("A"), header(Bounds.COLUMNS).ids());
    assertEquals(
        List.of("0: the header has 4097 columns; at most 4096 are read"),
        header(Bounds.COLUMNS + 1).reasons());
  }

  private static Gathered below(int lines) {
    return Gathered.csv("a remark\n".repeat(lines) + "record.id,well.tag\nA,7\n");
  }

  @Test
  void aHeaderComesAmongTheFirstRows() {
    assertEquals(List.of("A"), below(Bounds.PREAMBLE - 1).ids());
    Gathered beyond = below(Bounds.PREAMBLE);
    assertEquals(List.of(), beyond.ids());
    assertEquals(1, beyond.aside.size());
    assertTrue(beyond.aside.get(0).isFile(), beyond.reasons().toString());
  }

  private static Gathered values(int values) {
    String text = "{\"record\":{\"id\":\"A\"},\"x\":[" + "1,".repeat(values - 1) + "1]}\n";
    return Gathered.of("r.ndjson", text.getBytes(StandardCharsets.UTF_8), 1 << 20);
  }

  @Test
  void aRecordHasAsManyValuesAndNoMore() {
    assertEquals(0, values(Bounds.JSON_VALUES - 10).aside.size());
    Gathered beyond = values(Bounds.JSON_VALUES + 10);
    assertEquals(List.of(), beyond.ids());
    assertEquals(1, beyond.aside.size());
    String said = beyond.reasons().toString();
    assertTrue(said.contains(String.valueOf(Bounds.JSON_VALUES)), said);
  }

  private static Gathered nested(int depth) {
    String text =
        "{\"record\":{\"id\":\"A\"},\"x\":" + "[".repeat(depth - 1) + "]".repeat(depth - 1) + "}\n";
    return Gathered.of("r.ndjson", text.getBytes(StandardCharsets.UTF_8), 1 << 20);
  }

  @Test
  void aRecordIsNestedSoDeepAndNoDeeper() {
    assertEquals(0, nested(Bounds.DEPTH).aside.size());
    Gathered beyond = nested(Bounds.DEPTH + 1);
    assertEquals(List.of(), beyond.ids());
    assertTrue(beyond.reasons().toString().contains("16"), beyond.reasons().toString());
  }

  private static ZipEntry texts(long size, long packed) {
    ZipEntry entry = new ZipEntry("xl/sharedStrings.xml");
    entry.setSize(size);
    entry.setCompressedSize(packed);
    return entry;
  }

  @Test
  void theTextsOfAWorkbookAreHeldInMemoryAndBounded() {
    assertDoesNotThrow(() -> Workbooks.check(texts(Bounds.TEXTS, Bounds.TEXTS / 10)));
    CutShort texts =
        assertThrows(
            CutShort.class, () -> Workbooks.check(texts(Bounds.TEXTS + 1, Bounds.TEXTS / 10)));
    assertTrue(texts.reason().contains(String.valueOf(Bounds.TEXTS)), texts.reason());
    assertDoesNotThrow(() -> Workbooks.check(texts(Bounds.SMALL, 1)));
    CutShort dense =
        assertThrows(CutShort.class, () -> Workbooks.check(texts(2 * Bounds.SMALL, 1000)));
    assertTrue(dense.reason().contains("200 times"), dense.reason());
  }

  /** Gives one chunk without rows again and again. */
  private static final class Chunks implements TableSource.Rows {
    private final List<CutRows> left;

    Chunks(int count) {
      left = new ArrayList<>();
      CutRows one = new CutRows(0, new byte[1 << 20], 1, new RowMarks());
      for (int i = 0; i < count; i++) {
        left.add(one);
      }
    }

    @Override
    public @Nullable CutRows next() {
      return left.isEmpty() ? null : left.remove(left.size() - 1);
    }

    @Override
    public void close() {}
  }

  @Test
  void whatIsJoinedIsHeldInMemoryAndBounded() throws IOException {
    Input input = new Input("t.csv", null, Form.TABLE, () -> stream("record.id\nA\n"));
    try (var in = input.opener().open()) {
      TableOpening opening =
          new TableOpening(Catalogue.standard(), Sampled.of(input, in, TableMap.NONE));
      ColumnPlan plan = opening.plan();
      int most = (int) (Bounds.JOINED >> 20);
      assertEquals(0, new JoinTable("t.csv", plan, plan.id(), new Chunks(most)).rows());
      IntakeException beyond =
          assertThrows(
              IntakeException.class,
              () -> new JoinTable("t.csv", plan, plan.id(), new Chunks(most + 1)));
      assertTrue(beyond.getMessage().contains("split it by record"), beyond.getMessage());
    }
  }

  private static java.io.InputStream stream(String text) {
    return new java.io.ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }
}
