package org.wellcurb.batch;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * Keeps two runs from writing the same folder. The lock is the operating system's, so that it ends
 * with the process; the file alone, left by a killed run, locks nothing.
 */
final class FolderLock implements AutoCloseable {
  private final Path file;
  private final FileChannel channel;

  private FolderLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** The lock; null if another run holds it. */
  static @Nullable FolderLock take(Path file) throws IOException {
    String token = ProcessHandle.current().pid() + " " + System.nanoTime();
    while (true) {
      FileChannel channel =
          FileChannel.open(
              file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
      try {
        FileLock lock = channel.tryLock();
        if (lock == null) {
          channel.close();
          return null;
        }
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(token.getBytes(StandardCharsets.UTF_8)));
        // The run before may have removed the file after this one opened it: then the lock is on
        // a file that nobody else can find, and counts for nothing.
        if (Files.exists(file) && Files.readString(file).equals(token)) {
          return new FolderLock(file, channel);
        }
        channel.close();
      } catch (OverlappingFileLockException e) {
        channel.close();
        return null;
      } catch (IOException e) {
        channel.close();
        throw e;
      }
    }
  }

  @Override
  public void close() {
    try {
      Files.deleteIfExists(file);
      channel.close();
    } catch (IOException e) {
      // The lock ends with the process at the latest.
      return;
    }
  }
}
