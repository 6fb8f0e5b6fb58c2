package org.wellcurb.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * What goes wrong around a run: whatever it is, there is one line, the earlier report stands as it
 * was, and the next run finds nothing in its way. Each run is a process of its own.
 */
class FaultsTest {
  private static final String HEADER = "record.id,well.depth [ft],well.tag\n";
  private static final String ROW = "W-%d,120,some words to make the row a little longer\n";

  private static final String PLACED = ",44.5,-72.5,44.5005,-72.5,septic tank,90\n";

  @TempDir Path dir;
  private Map<String, String> before = Map.of();

  @BeforeEach
  void anEarlierReportStands() throws Exception {
    Files.createDirectory(dir.resolve("tmp"));
    Files.writeString(dir.resolve("in.csv"), HEADER + String.format(ROW, 1));
    assertEquals(0, wait(start("", "in.csv")), said());
    before = report();
    assertTrue(before.containsKey("index.html"));
  }

  /** Starts the program on an input in the folder; {@code limits} is said to the shell first. */
  private Process start(String limits, String input) throws IOException {
    return start(limits, List.of(), System.getProperty("java.class.path"), input);
  }

  private Process start(String limits, List<String> options, String classPath, String input)
      throws IOException {
    List<String> java = new ArrayList<>();
    java.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    java.addAll(List.of("-XX:-UsePerfData", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    java.add("-Djava.io.tmpdir=" + dir.resolve("tmp"));
    java.addAll(options);
    java.addAll(List.of("-cp", classPath));
    java.addAll(List.of("org.wellcurb.cli.Main", "screen", input, "--rules"));
    java.addAll(List.of("common-practice", "--as-of", "2026-01-01", "--workers", "2"));
    java.addAll(List.of("--sheets", "none", "--out", "out"));
    List<String> command = new ArrayList<>(List.of("sh", "-c", limits + "exec \"$@\"", "sh"));
    command.addAll(java);
    return new ProcessBuilder(command)
        .directory(dir.toFile())
        .redirectOutput(dir.resolve("said").toFile())
        .redirectError(dir.resolve("err").toFile())
        .start();
  }

  private static int wait(Process process) throws Exception {
    if (!process.waitFor(120, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("the program hangs");
    }
    return process.exitValue();
  }

  private String said() throws IOException {
    return Files.readString(dir.resolve("err"));
  }

  private Map<String, String> report() throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> walk = Files.walk(dir.resolve("out"))) {
      for (Path path : walk.filter(Files::isRegularFile).toList()) {
        files.put(
            dir.resolve("out").relativize(path).toString(),
            Files.readString(path, StandardCharsets.ISO_8859_1));
      }
    }
    return files;
  }

  private List<String> leftovers() throws IOException {
    try (Stream<Path> list = Files.list(dir)) {
      return list.map(p -> p.getFileName().toString())
          .filter(name -> name.startsWith(".out"))
          .sorted()
          .toList();
    }
  }

  /** Whatever a run did, and however it ended, it wrote nothing elsewhere. */
  @AfterEach
  void nothingIsLeftInTheFolderForTemporaryFiles() throws IOException {
    try (Stream<Path> list = Files.list(dir.resolve("tmp"))) {
      assertEquals(List.of(), list.toList());
    }
  }

  private void assertOneLineAndAllAsItWas(String saying) throws IOException {
    assertEquals(1, said().lines().count(), said());
    assertTrue(said().contains(saying), said());
    assertFalse(said().contains("unexpected"), said());
    assertEquals(before, report());
    assertEquals(List.of(), leftovers());
  }

  private void assertTheNextRunIsGood() throws Exception {
    assertEquals(0, wait(start("", "in.csv")), said());
    assertEquals(before, report());
    assertEquals(List.of(), leftovers());
  }

  /** No more than 64 KiB may be written to one file: as good as a full disk to the program. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aDiskThatIsFull() throws Exception {
    StringBuilder rows = new StringBuilder(HEADER);
    for (int i = 0; i < 3_000; i++) {
      rows.append(String.format(ROW, i));
    }
    Files.writeString(dir.resolve("many.csv"), rows);
    assertEquals(2, wait(start("ulimit -f 128; ", "many.csv")), said());
    assertOneLineAndAllAsItWas("out: cannot be written");
    assertTheNextRunIsGood();
  }

  /** A file that is there, may be opened, and gives an error when read. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aFileThatCannotBeRead() throws Exception {
    Files.createSymbolicLink(dir.resolve("bad.csv"), Path.of("/proc/self/mem"));
    assertEquals(3, wait(start("", "bad.csv")), said());
    assertOneLineAndAllAsItWas("bad.csv: cannot be read");
    assertTheNextRunIsGood();
  }

  /**
   * The library of distances, which only workers ask, is replaced by one that throws: it stands for
   * any fault of the program that nobody foresaw.
   */
  @Test
  void aWorkerThatThrows() throws Exception {
    Path sources = Files.createDirectories(dir.resolve("planted/org/wellcurb/workings"));
    Path source = sources.resolve("ShortestLine.java");
    Files.writeString(
        source,
        """
        package org.wellcurb.workings;
        final class ShortestLine {
          static double length(double lat1, double lat2, double east) {
            throw new IllegalStateException("planted\\nfault");
          }
        }
        """);
    String classPath = System.getProperty("java.class.path");
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    String planted = dir.resolve("planted").toString();
    String file = source.toString();
    assertEquals(0, compiler.run(null, null, null, "-cp", classPath, "-d", planted, file));
    StringBuilder rows =
        new StringBuilder(
            "record.id,site.latitude,site.longitude,site.septic_latitude,site.septic_longitude,"
                + "site.septic_position_of,setback.septic_tank [ft]\n");
    for (int i = 0; i < 20_000; i++) {
      rows.append("W-").append(i).append(i < 10_000 ? ",,,,,,90\n" : PLACED);
    }
    Files.writeString(dir.resolve("placed.csv"), rows);
    String first = planted + java.io.File.pathSeparator + classPath;
    int code = wait(start("", List.of(), first, "placed.csv"));
    assertEquals(2, code, said());
    assertEquals(1, said().lines().count(), said());
    assertTrue(said().startsWith("unexpected: "), said());
    assertTrue(said().contains("planted fault"), said());
    assertEquals(before, report());
    assertEquals(List.of(), leftovers());
    assertTheNextRunIsGood();
  }

  /** A heap too small for even one part. */
  @Test
  void memoryThatIsNotEnough() throws Exception {
    StringBuilder rows = new StringBuilder(HEADER);
    for (int i = 0; i < 60_000; i++) {
      rows.append(String.format(ROW, i));
    }
    Files.writeString(dir.resolve("many.csv"), rows);
    String classPath = System.getProperty("java.class.path");
    assertEquals(2, wait(start("", List.of("-Xmx18m"), classPath, "many.csv")), said());
    assertOneLineAndAllAsItWas("not enough memory");
    assertTheNextRunIsGood();
  }

  @Test
  void aFileThatIsNotThere() throws Exception {
    assertEquals(3, wait(start("", "none.csv")), said());
    assertOneLineAndAllAsItWas("none.csv: is not there");
  }

  /** Rows without end come in; then somebody stops it. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void anInterruptInMidRun() throws Exception {
    Process process = startAndFeed();
    process.destroy();
    assertTrue(wait(process) != 0);
    assertOneLineAndAllAsItWas("interrupted");
    assertTheNextRunIsGood();
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aRunThatIsKilledLeavesWhatTheNextOneClears() throws Exception {
    Process process = startAndFeed();
    process.destroyForcibly();
    wait(process);
    assertEquals(before, report());
    assertFalse(leftovers().isEmpty(), "it was killed while it wrote");
    assertTheNextRunIsGood();
  }

  private Process startAndFeed() throws Exception {
    Process process = start("", "-");
    Thread feeder =
        new Thread(
            () -> {
              try (OutputStream out = process.getOutputStream()) {
                out.write(HEADER.getBytes(StandardCharsets.UTF_8));
                for (int i = 0; process.isAlive(); i++) {
                  out.write(String.format(ROW, i).getBytes(StandardCharsets.UTF_8));
                }
              } catch (IOException e) {
                // The program is gone, and so is who reads.
              }
            });
    feeder.setDaemon(true);
    feeder.start();
    Path fresh = dir.resolve(".out.wellcurb-new/records.csv");
    while (process.isAlive() && !(Files.exists(fresh) && Files.size(fresh) > 0)) {
      Thread.sleep(20);
    }
    return process;
  }

  /** Nobody takes what the program says until it has ended; then nobody takes it at all. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aReaderThatIsSlowOrGone() throws Exception {
    Process gone = startInto("| sleep 0", "in.csv");
    wait(gone);
    assertEquals("", said());
    assertEquals(before, report());
    Process slow = startInto("| (sleep 3; cat)", "in.csv");
    wait(slow);
    assertTrue(Files.readString(dir.resolve("said")).contains("1 row read: 1 screened"));
    assertEquals(before, report());
  }

  private Process startInto(String pipe, String input) throws IOException {
    return start("\"$@\" " + pipe + "; exit $?; ", input);
  }
}
