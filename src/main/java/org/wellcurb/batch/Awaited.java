package org.wellcurb.batch;

import java.util.Collection;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Waits for what threads of a pool work on. Where memory runs out while a task hands over how it
 * ended, its thread is gone and the task stays as it was: who only waited for it would wait for
 * ever.
 */
final class Awaited {
  private static final long MILLISECONDS_BETWEEN_LOOKS = 500;

  private Awaited() {}

  /**
   * What came of a task.
   *
   * @param threads those that may work on it; none of them ends while there is work
   * @throws OutOfMemoryError if one of them is gone
   */
  static <R> R of(Future<R> task, Collection<Thread> threads)
      throws InterruptedException, ExecutionException {
    while (true) {
      try {
        return task.get(MILLISECONDS_BETWEEN_LOOKS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException e) {
        for (Thread thread : threads) {
          if (thread.getState() == Thread.State.TERMINATED && !task.isDone()) {
            throw new OutOfMemoryError("thread " + thread.getName() + " is gone");
          }
        }
      }
    }
  }
}
