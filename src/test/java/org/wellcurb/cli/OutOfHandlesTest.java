package org.wellcurb.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.bench.BigFile;

/**
 * However few files a process may open: there is the whole report or one line that says why not,
 * and the earlier report stands. Never a report that lacks what could not be opened.
 */
class OutOfHandlesTest {
  private static final Pattern LINE =
      Pattern.compile("(\\d+) free, code (\\d+), (as it was|ANOTHER REPORT): (.*)");

  @TempDir Path dir;
  @TempDir Path log;

  @Test
  @EnabledOnOs(OS.LINUX)
  void aReportOrALine() throws Exception {
    Path in = Files.createDirectories(dir.resolve("in/sub")).getParent();
    BigFile.write(3, 20, in.resolve("a.csv"));
    BigFile.write(4, 20, in.resolve("sub/b.ndjson"));
    Files.writeString(in.resolve("c.csv"), "record.id,well.depth [ft]\nW-1,\"120\n\n");
    Path member = in.resolve("d.csv");
    BigFile.write(5, 20, member);
    try (OutputStream out = Files.newOutputStream(in.resolve("e.zip"));
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("f.csv"));
      zip.write(Files.readAllBytes(member));
    }
    List<String> said = said();
    boolean hasFailed = false;
    boolean isWhole = false;
    for (String line : said.subList(0, said.size() - 1)) {
      Matcher matcher = LINE.matcher(line);
      assertTrue(matcher.matches(), line);
      assertEquals("as it was", matcher.group(3), line);
      isWhole = matcher.group(2).equals("0");
      if (!isWhole) {
        hasFailed = true;
        assertTrue(matcher.group(2).matches("[23]"), line);
        assertTrue(
            matcher
                .group(4)
                .matches(".*(too many files are open|Too many open files|cannot be read).*"),
            line);
        assertTrue(!matcher.group(4).contains("|"), line);
      }
    }
    assertTrue(hasFailed && isWhole, () -> String.join("\n", said));
    assertEquals("left over: []", said.get(said.size() - 1));
  }

  private List<String> said() throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Process process =
        new ProcessBuilder(
                "sh",
                "-c",
                "ulimit -n 400; exec \"$@\"",
                "sh",
                java,
                "-XX:-UsePerfData",
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "org.wellcurb.cli.OutOfHandles",
                dir.toString())
            .redirectOutput(log.resolve("said").toFile())
            .redirectError(log.resolve("err").toFile())
            .start();
    if (!process.waitFor(240, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("the program hangs");
    }
    assertEquals(0, process.exitValue(), Files.readString(log.resolve("err")));
    return Files.readAllLines(log.resolve("said"));
  }
}
