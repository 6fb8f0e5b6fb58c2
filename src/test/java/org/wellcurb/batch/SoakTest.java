package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.bench.BigFile;

/**
 * Run after run, good ones, refused ones and interrupted ones, leaves nothing behind: no thread, no
 * file, no open handle, and always the same report. {@code -Dsoak=50} for fifty rounds.
 */
class SoakTest {
  private static final int ROUNDS = Integer.getInteger("soak", 4);
  private static final int RECORDS = 1_000;
  private static final int SHEETS = 3;

  /** What the JVM itself may open between two looks: jars and the like. */
  private static final int SPARE_HANDLES = 8;

  @TempDir Path dir;

  @Test
  void leavesNothingBehind() throws Exception {
    Files.createDirectory(dir.resolve("in"));
    BigFile.write(1, RECORDS, dir.resolve("in/a.csv"));
    new Region(2).write(dir.resolve("in/b.csv"), RECORDS / 5);
    Map<String, String> first = round();
    Set<String> stands = names(dir);
    Set<Thread> threads = Thread.getAllStackTraces().keySet();
    int handles = handles();
    for (int i = 1; i < ROUNDS; i++) {
      assertEquals(first, round());
      assertEquals(stands, names(dir));
    }
    int open = handles();
    assertTrue(open <= handles + SPARE_HANDLES, () -> open + " handles, not " + handles);
    assertEquals(List.of(), livingOurs(threads));
  }

  /** A good run, one that is refused, one that is interrupted, one whose input breaks off. */
  private Map<String, String> round() throws Exception {
    Path out = dir.resolve("out");
    ScreenRequest good = request(out, "common-practice", dir.resolve("in").toString());
    Runs.run(Runs.withWorkers(Runs.withSheets(good, SheetsFor.FLAGGED, SHEETS), 2));
    assertThrows(
        RunFailure.class, () -> Runs.run(request(out, "no such pack", dir.resolve("in") + "")));
    Stop stop = new Stop(line -> {}, 0);
    assertEquals("interrupted", failure(out, endless(stop::askAndWait), stop));
    InputStream broken =
        endless(
            () -> {
              throw new IOException("planted");
            });
    assertEquals("-", failure(out, broken, new Stop()));
    return Runs.files(out);
  }

  private static ScreenRequest request(Path out, String pack, String records) {
    return ScreenRequest.plain(List.of(records), List.of(pack), out, Runs.AS_OF);
  }

  /** How a run on standard input fails, as far as the first colon. */
  private static String failure(Path out, InputStream in, Stop stop) {
    ScreenRequest plain = request(out, "common-practice", "-");
    ScreenRequest request = plain.with(plain.input().from(in)).by(2);
    RunFailure failure =
        assertThrows(RunFailure.class, () -> new ScreenRun(request, Progress.SILENT, stop).run());
    return failure.line().substring(0, failure.line().indexOf(':'));
  }

  /** What happens in the midst of an input. */
  private interface Happening {
    void happen() throws IOException;
  }

  /** Rows without end; after some parts, something happens. */
  private static InputStream endless(Happening then) {
    byte[] header = "record.id,well.depth [ft],remarks\n".getBytes(StandardCharsets.UTF_8);
    byte[] row = ("W-1,120," + "so ".repeat(500) + "\n").getBytes(StandardCharsets.UTF_8);
    return new SequenceInputStream(
        new ByteArrayInputStream(header),
        new InputStream() {
          private long given;

          @Override
          public int read() throws IOException {
            if (given == 3L << 20) {
              then.happen();
            }
            return row[(int) (given++ % row.length)];
          }
        });
  }

  private static Set<String> names(Path folder) throws IOException {
    try (Stream<Path> list = Files.list(folder)) {
      return list.map(path -> path.getFileName().toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private static int handles() throws IOException {
    Path open = Path.of("/proc/self/fd");
    return Files.isDirectory(open) ? names(open).size() : 0;
  }

  /** Threads that run or wait and were not there before; ended ones get a moment to be gone. */
  private static List<String> livingOurs(Set<Thread> before) throws InterruptedException {
    List<String> living = new ArrayList<>();
    for (Thread thread : Thread.getAllStackTraces().keySet()) {
      if (!before.contains(thread) && thread.isDaemon() && isOurs(thread)) {
        thread.join(10_000);
        if (thread.isAlive()) {
          living.add(thread.getName());
        }
      }
    }
    return living;
  }

  private static boolean isOurs(Thread thread) {
    return Set.of("screening", "hashing", "templates", "notice", "stopping")
        .contains(thread.getName());
  }
}
