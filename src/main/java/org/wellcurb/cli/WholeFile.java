package org.wellcurb.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.jspecify.annotations.Nullable;
import org.wellcurb.batch.RunFailure;

/** Writes a file whole or not at all: beside its place first, then moved into it. */
final class WholeFile {
  private WholeFile() {}

  static void write(Path file, byte[] bytes) throws RunFailure {
    Path folder = file.toAbsolutePath().normalize().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw RunFailure.unusable(file + ": its folder is not there; make it first");
    }
    if (Files.isDirectory(file)) {
      throw RunFailure.unusable(file + ": is a folder; name a file");
    }
    @Nullable Path beside = null;
    try {
      beside = beside(folder);
      Files.write(beside, bytes);
      Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      discard(beside);
      throw RunFailure.unusable(
          file + ": cannot be written (" + e.getMessage() + "); name another place", e);
    }
  }

  /** A new file that whoever may read files made here may read: a temporary one is its maker's. */
  private static Path beside(Path folder) throws IOException {
    long number = ProcessHandle.current().pid();
    while (true) {
      try {
        return Files.createFile(folder.resolve(".wellcurb-" + number + ".part"));
      } catch (FileAlreadyExistsException e) {
        number++;
      }
    }
  }

  private static void discard(@Nullable Path beside) {
    if (beside != null) {
      try {
        Files.deleteIfExists(beside);
      } catch (IOException e) {
        // The place that could not be written cannot be cleared either; the error says so already.
        return;
      }
    }
  }
}
