package org.wellcurb.batch;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Small things done to folders. Links are never followed. */
final class Folders {
  private Folders() {}

  /** True for a folder that is not a link to one. */
  static boolean isFolder(Path path) {
    return Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
  }

  /** True if anything stands there, a dangling link too. */
  static boolean exists(Path path) {
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }

  /** What a folder holds, by name in code point order. */
  static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> names = Files.list(folder)) {
      List<Path> sorted = new ArrayList<>(names.toList());
      sorted.sort((a, b) -> a.toString().compareTo(b.toString()));
      return sorted;
    }
  }

  /** Removes a folder with all it holds; a link in it is removed, not what it leads to. */
  static void delete(Path folder) throws IOException {
    if (!exists(folder)) {
      return;
    }
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path visited, @Nullable IOException failed)
              throws IOException {
            if (failed != null) {
              throw failed;
            }
            Files.delete(visited);
            return FileVisitResult.CONTINUE;
          }
        });
  }

  /** What went wrong with a file, without the path (the caller names that) and in plain words. */
  static String reason(IOException e) {
    if (e instanceof java.nio.file.AccessDeniedException) {
      return "access is denied";
    }
    if (e instanceof java.nio.file.NoSuchFileException) {
      return "it does not exist";
    }
    String reason = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
    if (reason == null || reason.isBlank()) {
      return e.getClass().getSimpleName();
    }
    // What Unix says where a process, or the whole machine, may open no more.
    return reason.contains("Too many open files")
        ? "too many files are open at once (raise the limit: ulimit -n)"
        : reason;
  }
}
