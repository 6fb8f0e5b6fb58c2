package org.wellcurb.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.bench.BigFile;
import org.wellcurb.cli.Main;
import org.wellcurb.rulepack.PackLoader;

/** The engine's counts are those of the plain run, to the byte. */
class ManyMachinesTest {
  private static final long SEED = 11;
  private static final int RECORDS = 6_000;
  private static final Task TASK = new Task("fenwick-county", LocalDate.of(2026, 1, 1));
  private static JavaSparkContext spark;

  @TempDir Path dir;

  @BeforeAll
  static void start() {
    spark = new JavaSparkContext(new SparkConf().setAppName("test").setMaster("local[3]"));
  }

  @AfterAll
  static void stop() {
    spark.close();
  }

  @Test
  void linesCutAnywhere() throws Exception {
    Path file = dir.resolve("wells.ndjson");
    BigFile.write(SEED, RECORDS, file);
    Files.writeString(
        file,
        "{\"well\":{\"depth\":120}}\n{\"record\":{\"id\":\"é\"}}\nno record\n",
        java.nio.file.StandardOpenOption.APPEND);
    assertSameAsPlainRun(file.toString(), 2);
  }

  @Test
  void filesOfAFolder() throws Exception {
    Path folder = Files.createDirectory(dir.resolve("in"));
    for (int i = 0; i < 5; i++) {
      BigFile.write(SEED + i, RECORDS / 10, folder.resolve("wells" + i + ".csv"));
    }
    Files.writeString(
        folder.resolve("quotes.csv"),
        "record.id,well.depth [ft],remarks\n"
            + "W-1,120,\"two\nlines, one cell\"\n,130,no number\nW-2,1,2,3,4\nW-3,64.6 m,\n");
    assertSameAsPlainRun(folder.toString(), 2);
  }

  private void assertSameAsPlainRun(String records, long setAside) throws Exception {
    Path out = dir.resolve("out");
    String[] command = {
      "screen",
      records,
      "--rules",
      TASK.pack(),
      "--as-of",
      TASK.asOf().toString(),
      "--sheets",
      "none",
      "--notices",
      "none",
      "--quiet",
      "--out",
      out.toString()
    };
    assertEquals(0, Main.run(command, sink(), System.err));
    Counts counts = ManyMachines.counts(spark, TASK, records);
    Path rules = dir.resolve("rules.csv");
    ManyMachines.write(TASK, counts, rules);
    assertEquals(Files.readString(out.resolve("rules.csv")), Files.readString(rules));
    assertEquals(setAside, counts.setAside());
    try (Stream<String> lines = Files.lines(out.resolve("set-aside.csv"))) {
      assertEquals(lines.count() - 1, counts.setAside());
    }
    assertTrue(counts.tally(PackLoader.load(TASK.pack())).records() > RECORDS / 4);
  }

  private static PrintStream sink() {
    return new PrintStream(java.io.OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
  }
}
