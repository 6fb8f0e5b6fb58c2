package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said where there is no pack, or a file that is not to be read as one. */
class FaultyFilesTest {
  @TempDir Path folder;

  @Test
  void aPackThatIsNotThereIsSaidWithTheNearestThatShips() {
    assertEquals(
        "fenwik-county: there is no such pack; did you mean fenwick-county?",
        said("fenwik-county"));
    assertEquals(
        "zzz-qqqqqqqqq: there is no such pack; give a folder with a pack.json in it, or such a"
            + " file",
        said("zzz-qqqqqqqqq"));
  }

  @Test
  void aFileThatIsTooLargeIsNotRead() throws IOException {
    Path file = Files.createDirectories(folder.resolve("large")).resolve("pack.json");
    Files.writeString(file, " ".repeat(PackBytes.MOST + 1));
    assertEquals(
        file + ": the file is larger than 4 MiB; split it: a pack can be built on others",
        said(file.getParent().toString()));
  }

  private static String said(String what) {
    PackException e = assertThrows(PackException.class, () -> PackLoader.load(what));
    return e.shown();
  }
}
