package org.wellcurb.crosscheck;

import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.jspecify.annotations.Nullable;

/**
 * A piece of work on a thread of its own, or, where there is to be none, at the place where it is
 * asked for. Closing waits until its thread is gone, whatever became of the work.
 */
final class Beside<T> implements AutoCloseable {
  private final FutureTask<T> task;
  private final @Nullable Thread thread;

  /**
   * Begins the work.
   *
   * @param isOwn whether it has a thread of its own
   */
  Beside(Callable<T> work, boolean isOwn) {
    task = new FutureTask<>(work);
    if (isOwn) {
      thread = new Thread(task, "cross-check");
      thread.setDaemon(true);
      thread.start();
    } else {
      thread = null;
    }
  }

  /**
   * What came of it.
   *
   * @throws IOException or what else the work threw
   */
  T get() throws IOException {
    if (thread == null) {
      task.run();
    }
    boolean isInterrupted = false;
    try {
      while (true) {
        try {
          return task.get();
        } catch (InterruptedException e) {
          isInterrupted = true;
        } catch (ExecutionException e) {
          throw thrown(e);
        }
      }
    } finally {
      if (isInterrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  private static IOException thrown(ExecutionException e) {
    Throwable cause = e.getCause();
    if (cause instanceof IOException io) {
      return io;
    }
    if (cause instanceof RuntimeException unchecked) {
      throw unchecked;
    }
    if (cause instanceof Error error) {
      throw error;
    }
    throw new IllegalStateException(cause);
  }

  @Override
  public void close() {
    boolean isInterrupted = false;
    while (thread != null && thread.isAlive()) {
      try {
        thread.join();
      } catch (InterruptedException e) {
        isInterrupted = true;
      }
    }
    if (isInterrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
