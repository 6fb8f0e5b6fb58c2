package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same input gives the same bytes, whatever the machine. */
class SameBytesTest {
  private static final long SEED = 20260101;

  /** Enough for several parts, so that threads have something to get out of order. */
  private static final int ROWS = 30_000;

  @TempDir static Path dir;
  private static Map<String, String> expected = Map.of();

  @BeforeAll
  static void onceWithOneWorker() throws Exception {
    new Region(SEED).write(dir.resolve("in/a.csv"), ROWS);
    new Region(SEED + 1).write(dir.resolve("in/sub/b.csv"), 50);
    Files.writeString(dir.resolve("in/notes.md"), "not records");
    Files.writeString(dir.resolve("in/empty.csv"), "");
    expected = run("one", 1);
    assertTrue(expected.get("records.csv").lines().count() > ROWS / 2, "too small to be a test");
    assertTrue(expected.containsKey("set-aside/a.csv"), () -> "" + expected.keySet());
  }

  private static Map<String, String> run(String name, int workers) throws Exception {
    Path out = dir.resolve(name);
    ScreenRequest plain = Runs.request(out, List.of(Runs.ALDER, Runs.BIRCH), dir.resolve("in"));
    Runs.run(Runs.withWorkers(plain, workers));
    return Runs.files(out);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5})
  void anyNumberOfWorkers(int workers) throws Exception {
    assertSame(run("workers" + workers, workers));
  }

  @Test
  void anyLocaleAndZone() throws Exception {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      // Turkish folds I apart from i; Arabic writes digits of its own; Kiritimati is a day ahead.
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      assertSame(run("turkish", 2));
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertSame(run("arabic", 2));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  /** A process of its own, since what a file's text is read as is settled when Java starts. */
  @Test
  void anyEncodingOfTheMachine() throws Exception {
    Path out = dir.resolve("latin");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of(
            "-Dfile.encoding=ISO-8859-1",
            "-Duser.language=de",
            "-Duser.country=DE",
            "-Duser.timezone=America/Anchorage",
            "-cp",
            System.getProperty("java.class.path"),
            "org.wellcurb.cli.Main",
            "screen",
            dir.resolve("in").toString(),
            "--rules",
            Runs.ALDER,
            "--rules",
            Runs.BIRCH,
            "--as-of",
            Runs.AS_OF.toString(),
            "--outcomes",
            "--workers",
            "3",
            "--quiet",
            "--out",
            out.toString()));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said =
        new String(
            process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), said);
    assertEquals("", said);
    assertSame(Runs.files(out));
  }

  private static void assertSame(Map<String, String> files) {
    assertEquals(expected.keySet(), files.keySet());
    for (String name : expected.keySet()) {
      assertTrue(expected.get(name).equals(files.get(name)), name + " differs, seed " + SEED);
    }
  }
}
