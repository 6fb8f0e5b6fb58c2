package org.wellcurb.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.Outputs;

/**
 * The folder that a run writes: made beside the one asked for, and put in its place when whole. A
 * run that fails, or is killed, leaves the earlier report as it was; what a killed run left behind
 * is removed by the next.
 *
 * <p>The names beside {@code demo} are {@code .demo.wellcurb-new} (being written), {@code
 * .demo.wellcurb-old} (the earlier report, for the moment between two renames) and {@code
 * .demo.wellcurb-lock}.
 */
public final class FreshFolder implements AutoCloseable {
  private static final String MARK = ".wellcurb-";

  /** Enough to see that a run.json is ours. */
  private static final int HEAD = 256;

  private final Path target;
  private final Path fresh;
  private final Path old;
  private final FolderLock lock;
  private final Deque<Path> parentsMade;
  private boolean swapped;

  private FreshFolder(Path target, FolderLock lock, Deque<Path> parentsMade) {
    this.target = target;
    this.fresh = sibling(target, "new");
    this.old = sibling(target, "old");
    this.lock = lock;
    this.parentsMade = parentsMade;
  }

  /**
   * Makes the folder to write in.
   *
   * @param target where the report is to stand: absent, empty, or an earlier report of ours
   * @throws RunFailure if it holds something else or cannot be written
   */
  public static FreshFolder beside(Path target) throws RunFailure {
    Path whole = target.toAbsolutePath().normalize();
    if (whole.getFileName() == null || whole.getParent() == null) {
      throw RunFailure.unusable(target + ": cannot be replaced; name a folder of its own");
    }
    Deque<Path> made = new ArrayDeque<>();
    FolderLock lock = null;
    try {
      makeParents(whole.getParent(), made);
      Path real = whole.getParent().toRealPath().resolve(whole.getFileName());
      if (Path.of("").toAbsolutePath().startsWith(real)) {
        throw RunFailure.unusable(
            target + ": is the folder you are in, or holds it; name a folder inside it");
      }
      lock = FolderLock.take(sibling(real, "lock"));
      if (lock == null) {
        throw RunFailure.unusable(
            target + ": another run is writing it; wait for it, or name another folder");
      }
      FreshFolder folder = new FreshFolder(real, lock, made);
      folder.clearLeftovers();
      checkReplaceable(target, real);
      Files.createDirectory(folder.fresh);
      return folder;
    } catch (IOException e) {
      abandon(lock, made);
      throw unwritable(target, e);
    } catch (RunFailure e) {
      abandon(lock, made);
      throw e;
    }
  }

  /** Where to write. */
  public Path path() {
    return fresh;
  }

  /** Puts the folder in its place; the earlier report goes. */
  public void swapIn() throws IOException {
    if (Folders.exists(target)) {
      Files.move(target, old);
    }
    try {
      Files.move(fresh, target);
      swapped = true;
    } finally {
      if (!swapped && Folders.exists(old)) {
        Files.move(old, target);
      }
    }
    // The report stands. An old one that cannot be removed now goes at the next run.
    try {
      Folders.delete(old);
    } catch (IOException e) {
      return;
    }
  }

  /** Removes what was written, unless it has been put in its place. */
  @Override
  public void close() {
    if (!swapped) {
      try {
        Folders.delete(fresh);
      } catch (IOException e) {
        // What is left goes at the next run; the failure that led here is what the user must see.
      }
    }
    abandon(lock, swapped ? new ArrayDeque<>() : parentsMade);
  }

  /** The failure to write, as one line. */
  public static RunFailure unwritable(Path target, IOException e) {
    return RunFailure.unusable(
        target
            + ": cannot be written: "
            + Folders.reason(e)
            + (e instanceof AccessDeniedException
                ? "; check its permissions or name another folder"
                : "; make room or name another folder")
            + " (an earlier report there is as it was)",
        e);
  }

  private static Path sibling(Path target, String what) {
    return target.resolveSibling("." + target.getFileName() + MARK + what);
  }

  /** What a killed run left: its half-written folder goes, an earlier report comes back. */
  private void clearLeftovers() throws IOException {
    if (Folders.exists(old)) {
      if (Folders.exists(target)) {
        Folders.delete(old);
      } else {
        Files.move(old, target);
      }
    }
    Folders.delete(fresh);
  }

  private static void checkReplaceable(Path asGiven, Path target) throws RunFailure, IOException {
    if (!Folders.exists(target)) {
      return;
    }
    if (!Folders.isFolder(target)) {
      throw RunFailure.unusable(asGiven + ": is not a folder; name another");
    }
    boolean empty = true;
    for (Path held : Folders.list(target)) {
      empty = false;
      if (!Outputs.ALL.contains(held.getFileName().toString())) {
        throw RunFailure.unusable(
            asGiven
                + ": holds "
                + held.getFileName()
                + ", which no run wrote; name a folder that is empty or absent");
      }
    }
    if (!empty && !isOurs(target.resolve(Outputs.RUN_JSON))) {
      throw RunFailure.unusable(
          asGiven
              + ": holds no "
              + Outputs.RUN_JSON
              + " of an earlier run; name a folder that is empty or absent");
    }
  }

  private static boolean isOurs(Path runJson) throws IOException {
    if (!Files.isRegularFile(runJson, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try (var in = Files.newInputStream(runJson, LinkOption.NOFOLLOW_LINKS)) {
      return new String(in.readNBytes(HEAD), StandardCharsets.UTF_8)
          .contains("\"program\": \"wellcurb\"");
    }
  }

  private static void makeParents(Path parent, Deque<Path> made) throws IOException {
    Deque<Path> missing = new ArrayDeque<>();
    for (Path p = parent; p != null && !Files.exists(p); p = p.getParent()) {
      missing.push(p);
    }
    for (Path p : missing) {
      Files.createDirectory(p);
      made.push(p);
    }
  }

  private static void abandon(@Nullable FolderLock lock, Deque<Path> parentsMade) {
    if (lock != null) {
      lock.close();
    }
    for (Path p : parentsMade) {
      try {
        Files.deleteIfExists(p);
      } catch (IOException e) {
        return;
      }
    }
  }
}
