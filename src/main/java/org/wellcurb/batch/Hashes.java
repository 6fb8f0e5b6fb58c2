package org.wellcurb.batch;

import java.io.Closeable;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;

/**
 * SHA-256 of inputs, worked out beside the screening. A file that has changed since the run began
 * ends it: what was read of it is no file that anyone has.
 */
final class Hashes implements Closeable {
  private static final int BUFFER = 1 << 18;

  private final Queue<Thread> started = new ConcurrentLinkedQueue<>();
  private final ExecutorService thread = Executors.newSingleThreadExecutor(this::hashing);
  private final Map<Path, Future<String>> byPath = new HashMap<>();
  private final Map<Path, Stand> stands = new HashMap<>();
  private final DigestInputStream standardInput;
  private volatile boolean closed;

  Hashes(InputStream standardInput) {
    this.standardInput = new DigestInputStream(standardInput, sha256());
  }

  /**
   * What a file is like at one moment.
   *
   * @param size in bytes; -1 where it cannot be told
   * @param changed when it was last written
   */
  private record Stand(long size, FileTime changed) {
    static Stand of(Path path) {
      try {
        return new Stand(Files.size(path), Files.getLastModifiedTime(path));
      } catch (IOException e) {
        return new Stand(-1, FileTime.fromMillis(0));
      }
    }
  }

  /** Standard input, hashed while it is read. */
  InputStream standardInput() {
    // Whoever reads it closes it; what is left must still be hashed.
    return new FilterInputStream(standardInput) {
      @Override
      public void close() {}
    };
  }

  /** Starts on these files, each once. */
  void start(List<Path> paths) {
    for (Path path : paths) {
      // Its hash, or its failure, is asked for at the end.
      Future<String> unused = future(path);
    }
  }

  private Future<String> future(Path path) {
    stands.computeIfAbsent(path, Stand::of);
    return byPath.computeIfAbsent(path, p -> thread.submit(() -> hash(p)));
  }

  /**
   * The hash of a file that was started on, in lower-case hexadecimal.
   *
   * @param path null for standard input, which must have been read to its end
   * @throws RunFailure if the file has changed since it was started on, or cannot be read any more
   */
  String of(@Nullable Path path) throws IOException, InterruptedException, RunFailure {
    if (path == null) {
      standardInput.transferTo(java.io.OutputStream.nullOutputStream());
      return HexFormat.of().formatHex(standardInput.getMessageDigest().digest());
    }
    try {
      String hash = Awaited.of(future(path), started);
      if (!Stand.of(path).equals(stands.get(path))) {
        throw RunFailure.noInput(
            path
                + ": changed while it was read; nothing was written; run again when no program"
                + " writes it");
      }
      return hash;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException io) {
        throw RunFailure.noInput(
            path + ": cannot be read: " + Folders.reason(io) + "; nothing was written");
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  private String hash(Path path) throws IOException {
    MessageDigest digest = sha256();
    byte[] buffer = new byte[BUFFER];
    try (InputStream in = Files.newInputStream(path)) {
      for (int n = in.read(buffer); n >= 0 && !closed; n = in.read(buffer)) {
        digest.update(buffer, 0, n);
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  @Override
  public void close() {
    closed = true;
    thread.shutdownNow();
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private Thread hashing(Runnable work) {
    Thread made = new Thread(work, "hashing");
    made.setDaemon(true);
    started.add(made);
    return made;
  }
}
