package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Tables with faults of every kind strewn in: each row is screened or set aside, in every count;
 * what was set aside is mended and run again, and then every well of the table has been screened.
 */
class NothingIsLostTest {
  @TempDir Path dir;

  /** A row that is sound; its last cell may hold what needs quotes. */
  private static String sound(int number, char delimiter, Random random) {
    String[] tags = {"T", "", "\"a " + delimiter + " b\"", "\"two\nlines\"", "6 5/8\"", "é"};
    return "W-"
        + number
        + delimiter
        + "alder"
        + delimiter
        + (20 + random.nextInt(400))
        + delimiter
        + tags[random.nextInt(tags.length)];
  }

  private static String spoilt(String row, char delimiter, Random random) {
    return switch (random.nextInt(6)) {
      case 0 -> row + delimiter + delimiter;
      case 1 -> row.substring(0, row.indexOf(delimiter));
      case 2 -> row.substring(row.indexOf(delimiter));
      case 3 -> row.replace("alder", "al\0der");
      case 4 -> row.replace("alder", "\"alder\"x");
      default -> row.replace("alder", "nowhere");
    };
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void everyRowIsScreenedOrSetAsideAndScreenedOnceMended(long seed) throws Exception {
    Random random = new Random(seed);
    char delimiter = ",;\t|".charAt(random.nextInt(4));
    String end = random.nextBoolean() ? "\n" : "\r\n";
    String header =
        "record.id,record.jurisdiction,well.depth [ft],well.tag".replace(',', delimiter);
    int rows = 50 + random.nextInt(400);
    List<String> good = new ArrayList<>();
    StringBuilder text = new StringBuilder(random.nextBoolean() ? "\uFEFF" : "");
    text.append(header).append(end);
    Set<String> ids = new TreeSet<>();
    for (int i = 0; i < rows; i++) {
      boolean bad = random.nextInt(6) == 0;
      String row = sound(i, delimiter, random).replace(bad ? "\n" : "\0", bad ? " " : "");
      good.add(row);
      ids.add("W-" + i);
      text.append(bad ? spoilt(row, delimiter, random) : row).append(end);
    }
    Path in = dir.resolve("in.csv");
    Files.writeString(in, text.toString(), StandardCharsets.UTF_8);
    Path out = dir.resolve("out");
    List<String> packs = List.of(Runs.ALDER, Runs.BIRCH);
    ScreenSummary first = Runs.run(Runs.withWorkers(Runs.request(out, packs, in), 2));
    reconcile(out, first, rows, seed);
    Set<String> screened = idsOf(out);

    Path again = Files.createDirectories(dir.resolve("again")).resolve("in.csv");
    String kept = Files.readString(out.resolve("set-aside/in.csv"));
    assertTrue(kept.contains(header), "its own header, seed " + seed);
    StringBuilder mended = new StringBuilder(header).append('\n');
    for (int i = 0; i < rows; i++) {
      if (!screened.contains("W-" + i)) {
        mended.append(good.get(i)).append('\n');
      }
    }
    Files.writeString(again, mended.toString(), StandardCharsets.UTF_8);
    Path out2 = dir.resolve("out2");
    ScreenSummary second = Runs.run(Runs.withWorkers(Runs.request(out2, packs, again), 2));
    assertEquals(first.setAside(), second.screened(), "seed " + seed);
    assertEquals(0, second.setAside(), "seed " + seed);
    screened.addAll(idsOf(out2));
    assertEquals(ids, screened, "seed " + seed);
  }

  /** As it stands, what was set aside is set aside again, the same rows for the same reasons. */
  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13})
  void unmendedRowsAreSetAsideAgain(long seed) throws Exception {
    Random random = new Random(seed);
    StringBuilder text =
        new StringBuilder("record.id,record.jurisdiction,well.depth [ft],well.tag\n");
    for (int i = 0; i < 200; i++) {
      String row = sound(i, ',', random).replace("\n", " ");
      text.append(i % 3 == 0 ? spoilt(row, ',', random) : row).append('\n');
    }
    Path in = Files.writeString(dir.resolve("in.csv"), text);
    List<String> packs = List.of(Runs.ALDER, Runs.BIRCH);
    ScreenSummary first = Runs.run(Runs.request(dir.resolve("out"), packs, in));
    Path kept = Files.createDirectories(dir.resolve("again")).resolve("in.csv");
    Files.copy(dir.resolve("out/set-aside/in.csv"), kept);
    ScreenSummary second = Runs.run(Runs.request(dir.resolve("out2"), packs, kept));
    assertEquals(first.setAside(), second.setAside(), "seed " + seed);
    assertEquals(0, second.screened(), "seed " + seed);
    assertEquals(reasons("out"), reasons("out2"), "seed " + seed);
  }

  private List<String> reasons(String out) throws Exception {
    return Runs.rows(dir.resolve(out).resolve("set-aside.csv")).stream()
        .map(row -> row.get("reason"))
        .toList();
  }

  private static Set<String> idsOf(Path out) throws Exception {
    Set<String> ids = new TreeSet<>();
    for (Map<String, String> row : Runs.rows(out.resolve("records.csv"))) {
      assertTrue(ids.add(row.get("record_id")), "screened twice: " + row);
    }
    return ids;
  }

  private static void reconcile(Path out, ScreenSummary summary, int rows, long seed)
      throws Exception {
    String said = "seed " + seed + ", " + summary;
    assertEquals(rows, summary.rowsRead(), said);
    assertEquals(rows, summary.screened() + summary.setAside(), said);
    assertEquals(summary.screened(), Runs.rows(out.resolve("records.csv")).size(), said);
    assertEquals(summary.setAside(), Runs.rows(out.resolve("set-aside.csv")).size(), said);
    JsonNode run = new ObjectMapper().readTree(out.resolve("run.json").toFile());
    assertEquals(rows, run.at("/counts/rowsRead").asLong(), said);
    assertEquals(rows, run.at("/inputs/0/rowsRead").asLong(), said);
    for (JsonNode column : run.at("/inputs/0/columns")) {
      long cells = 0;
      for (String state : List.of("given", "blank", "unknown", "notApplicable", "unreadable")) {
        cells += column.path(state).asLong();
      }
      assertTrue(cells >= summary.screened() && cells <= rows, said + column);
    }
  }
}
