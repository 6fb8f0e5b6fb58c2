package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Rows with faults of several kinds, in each thing that rows come in: what is set aside is mended
 * in the file that the run wrote, and run again; then every well has been screened, once.
 */
class SetAsideContainersTest {
  private static final int ROWS = 40;
  private static final String HEADER = "record.id,record.jurisdiction,well.depth [ft],well.tag";

  @TempDir Path dir;

  private enum Container {
    FILE,
    FOLDER,
    ZIP,
    GZIP,
    STREAM,
    WORKBOOK,
    OBJECTS,
    OBJECT_LINES
  }

  /** A row, sound or with one of the faults that this container may have. */
  private static List<String> cells(int i, boolean isMended, boolean isSheet) {
    List<String> cells =
        new ArrayList<>(List.of("W-" + i, "alder", String.valueOf(100 + i), "T" + i + "."));
    if (!isMended) {
      switch (i % 5) {
        case 1 -> cells.set(0, "");
        case 2 -> cells.set(1, "nowhere");
        // A sheet has no row of too many cells: what stands beyond its header is a column.
        case 3 -> cells.set(isSheet ? 1 : 3, isSheet ? "" : "T" + i + ".,beyond");
        default -> {}
      }
    }
    return cells;
  }

  private static String line(int i, boolean isMended) {
    // A cell that is closed and goes on, beside those faults that a workbook may have, too.
    String line = String.join(",", cells(i, isMended, false));
    return !isMended && i % 5 == 4 ? line.replace("alder", "\"alder\"x") : line;
  }

  private static String table() {
    StringBuilder text = new StringBuilder(HEADER).append('\n');
    for (int i = 0; i < ROWS; i++) {
      text.append(line(i, false)).append('\n');
    }
    return text.toString();
  }

  private static String object(int i, boolean isMended) {
    String sound =
        "{\"record\": {\"id\": \"W-%d\", \"jurisdiction\": \"alder\"},"
            + " \"well\": {\"depth\": \"%d ft\", \"tag\": \"T%d.\"}}";
    String object = String.format(sound, i, 100 + i, i);
    if (isMended) {
      return object;
    }
    return switch (i % 5) {
      case 1 -> object.replace("\"id\": \"W-" + i + "\", ", "");
      case 2 -> object.replace("alder", "nowhere");
      case 3 -> object.replace("\"alder\"", "[\"alder\"]");
      case 4 -> object.replace("\"tag\"", "\"depth\": 3, \"tag\"");
      default -> object;
    };
  }

  private static String objects(String between) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < ROWS; i++) {
      all.add(object(i, false));
    }
    return String.join(between, all);
  }

  private Path write(Container container) throws IOException {
    byte[] table = table().getBytes(StandardCharsets.UTF_8);
    return switch (container) {
      case FILE, STREAM -> Files.write(dir.resolve("in.csv"), table);
      case FOLDER -> {
        Path inner = Files.createDirectories(dir.resolve("in/1999"));
        Files.write(inner.resolve("in.csv"), table);
        yield dir.resolve("in");
      }
      case ZIP -> {
        Path path = dir.resolve("in.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(path))) {
          zip.putNextEntry(new ZipEntry("old/in.csv"));
          zip.write(table);
        }
        yield path;
      }
      case GZIP -> {
        Path path = dir.resolve("in.csv.gz");
        try (OutputStream gz = new GZIPOutputStream(Files.newOutputStream(path))) {
          gz.write(table);
        }
        yield path;
      }
      case WORKBOOK -> workbook();
      case OBJECTS -> Files.writeString(dir.resolve("in.json"), "[" + objects(",\n") + "]");
      case OBJECT_LINES -> Files.writeString(dir.resolve("in.ndjson"), objects("\n") + "\n");
    };
  }

  private Path workbook() throws IOException {
    Path path = dir.resolve("in.xlsx");
    try (OutputStream out = Files.newOutputStream(path);
        Workbook book = new Workbook(out, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("Wells");
      String[] names = HEADER.split(",", -1);
      for (int c = 0; c < names.length; c++) {
        sheet.value(0, c, names[c]);
      }
      for (int i = 0; i < ROWS; i++) {
        List<String> cells = cells(i, false, true);
        for (int c = 0; c < cells.size(); c++) {
          if (c == 2) {
            sheet.value(i + 1, c, 100 + i);
          } else if (!cells.get(c).isEmpty()) {
            sheet.value(i + 1, c, cells.get(c));
          }
        }
      }
    }
    return path;
  }

  private static ScreenSummary run(Path out, Path in, boolean isStream) throws Exception {
    ScreenRequest plain = Runs.request(out, List.of(Runs.ALDER, Runs.BIRCH), in);
    if (!isStream) {
      return Runs.run(plain);
    }
    InputStream bytes = new ByteArrayInputStream(Files.readAllBytes(in));
    return Runs.run(plain.with(new InputOptions(List.of("-"), null, bytes)));
  }

  /** The same file, each row that can be told by its tag as it should have been. */
  private static String mended(String text, boolean areObjects) {
    String all = text;
    for (int i = 0; i < ROWS; i++) {
      String sound = areObjects ? object(i, true) : line(i, true);
      all = all.replace(areObjects ? object(i, false) : line(i, false), sound);
      if (!areObjects) {
        all = all.replace(String.join(",", cells(i, false, true)), sound);
      }
    }
    return all;
  }

  @ParameterizedTest
  @EnumSource(Container.class)
  void whatIsSetAsideIsMendedAndScreened(Container container) throws Exception {
    boolean areObjects = container == Container.OBJECTS || container == Container.OBJECT_LINES;
    Path out = dir.resolve("out");
    ScreenSummary first = run(out, write(container), container == Container.STREAM);
    long sound = ROWS / 5 * (container == Container.WORKBOOK ? 2 : 1);
    assertEquals(ROWS, first.rowsRead());
    assertEquals(sound, first.screened());
    assertEquals(ROWS - sound, first.setAside());
    assertEquals(
        container == Container.WORKBOOK ? 3 : 4,
        Runs.rows(out.resolve("set-aside.csv")).stream()
            .map(row -> row.get("reason").replaceAll("[0-9]+", "#"))
            .distinct()
            .count());

    Path again = Files.createDirectories(dir.resolve("again"));
    List<Path> kept;
    try (Stream<Path> files = Files.walk(out.resolve("set-aside"))) {
      kept = files.filter(Files::isRegularFile).toList();
    }
    assertEquals(1, kept.size());
    String text = Files.readString(kept.get(0));
    assertTrue(!mended(text, areObjects).equals(text), text);
    Files.writeString(
        again.resolve(kept.get(0).getFileName().toString()), mended(text, areObjects));
    Path out2 = dir.resolve("out2");
    ScreenSummary second = run(out2, again, false);
    assertEquals(0, second.setAside(), () -> text);
    assertEquals(first.setAside(), second.screened());
    TreeSet<String> ids = new TreeSet<>();
    for (Path run : List.of(out, out2)) {
      for (Map<String, String> row : Runs.rows(run.resolve("records.csv"))) {
        assertTrue(ids.add(row.get("record_id")), () -> "screened twice: " + row);
      }
    }
    assertEquals(ROWS, ids.size());
  }
}
