package org.wellcurb.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** With which options the start script starts Java, told by a Java that only says its arguments. */
@DisabledOnOs(OS.WINDOWS)
class StartScriptTest {
  private static final String QUICK = "-XX:TieredStopAtLevel=1";
  private static final List<String> BETTER =
      List.of("-XX:MaxInlineLevel=9", "-XX:FreqInlineSize=100", "-XX:InlineSmallCode=1000");
  private static final long MEGABYTE = 1 << 20;

  @TempDir Path folder;

  @BeforeEach
  void layOut() throws IOException {
    Files.createDirectories(folder.resolve("bin"));
    Files.createDirectories(folder.resolve("lib"));
    Files.createDirectories(folder.resolve("jdk/bin"));
    Files.copy(Path.of("src/dist/bin/wellcurb"), folder.resolve("bin/wellcurb"));
    Files.createFile(folder.resolve("lib/wellcurb.jar"));
    Path java = folder.resolve("jdk/bin/java");
    Files.writeString(java, "#!/bin/sh\nfor a; do echo \"$a\"; done\n");
    for (Path program : List.of(java, folder.resolve("bin/wellcurb"))) {
      Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  private List<String> started(String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(folder.resolve("bin/wellcurb").toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
    builder.environment().put("JAVA_HOME", folder.resolve("jdk").toString());
    builder.environment().put("XDG_CACHE_HOME", folder.resolve("cache").toString());
    builder.environment().remove("JAVA_OPTS");
    builder.environment().remove("WELLCURB_ARCHIVE");
    Process process = builder.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), said);
    return said.lines().toList();
  }

  private boolean isQuick(String... records) throws IOException, InterruptedException {
    List<String> arguments = new ArrayList<>(List.of("screen"));
    arguments.addAll(List.of(records));
    arguments.addAll(List.of("--rules", "large.csv", "--quiet"));
    return started(arguments.toArray(String[]::new)).contains(QUICK);
  }

  private void file(String name, long megabytes) throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(folder.resolve(name).toFile(), "rw")) {
      file.setLength(megabytes * MEGABYTE);
    }
  }

  @Test
  void onlyLargeInputsGetTheCompilerThatTakesLonger() throws IOException, InterruptedException {
    file("small.csv", 100);
    file("large.csv", 200);
    file("small.jsonl", 200);
    file("large.jsonl", 400);
    file("small.zip", 10);
    file("large.zip", 20);
    Files.createSymbolicLink(folder.resolve("link.csv"), Path.of("large.csv"));
    for (String quick : List.of("small.csv", "small.jsonl", "small.zip", "missing.csv")) {
      assertEquals(true, isQuick(quick), quick);
    }
    for (String slow : List.of("large.csv", "large.jsonl", "large.zip", "link.csv", ".", "-")) {
      assertEquals(false, isQuick(slow), slow);
    }
    assertEquals(false, isQuick("small.csv", "large.csv"));
    for (String large : List.of("large.csv", "-")) {
      assertEquals(
          BETTER,
          started("screen", large).stream().filter(each -> each.contains("Inline")).toList(),
          large);
    }
    assertEquals(
        List.of(),
        started("screen", "small.csv").stream().filter(each -> each.contains("Inline")).toList());
    assertEquals(false, isQuick("large.csv", "small.csv"));
  }

  @Test
  void onlyAScreeningMakesTheArchiveOfClasses() throws IOException, InterruptedException {
    String making = "-XX:ArchiveClassesAtExit=";
    file("small.csv", 1);
    assertEquals(
        1, started("screen", "small.csv").stream().filter(a -> a.startsWith(making)).count());
    assertEquals(0, started("prove", "x").stream().filter(a -> a.startsWith(making)).count());
    assertEquals(List.of("prove", "x y"), started("prove", "x y").subList(3, 5));
  }
}
