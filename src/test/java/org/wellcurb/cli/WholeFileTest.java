package org.wellcurb.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.batch.RunFailure;

/** A file that a command writes is whole, and as readable as any other file made there. */
class WholeFileTest {
  private static final byte[] BYTES = "a page".getBytes(StandardCharsets.UTF_8);

  @TempDir Path dir;

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void whoMayReadFilesMadeHereMayReadIt() throws Exception {
    Path any = Files.createFile(dir.resolve("any"));
    Path file = dir.resolve("page.html");
    WholeFile.write(file, BYTES);
    assertEquals(Files.getPosixFilePermissions(any), Files.getPosixFilePermissions(file));
  }

  @Test
  void nothingElseIsLeftBesideIt() throws Exception {
    String own = ".wellcurb-" + ProcessHandle.current().pid() + ".part";
    Path other = Files.writeString(dir.resolve(own), "of another run");
    Path file = dir.resolve("page.html");
    Files.writeString(file, "an older page");
    WholeFile.write(file, BYTES);
    assertArrayEquals(BYTES, Files.readAllBytes(file));
    assertEquals("of another run", Files.readString(other));
    try (Stream<Path> files = Files.list(dir)) {
      assertEquals(List.of(other, file), files.sorted().toList());
    }
  }

  @Test
  void aFolderIsNoFile() throws Exception {
    Path folder = Files.createDirectory(dir.resolve("folder"));
    assertThrows(RunFailure.class, () -> WholeFile.write(folder, BYTES));
  }
}
