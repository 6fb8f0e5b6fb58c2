package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class AwaitedTest {
  @Test
  void whatComesOfATask() throws Exception {
    FutureTask<String> task = new FutureTask<>(() -> "done");
    Thread thread = new Thread(task);
    thread.start();
    assertEquals("done", Awaited.of(task, List.of(thread)));
    thread.join();
    assertEquals("done", Awaited.of(task, List.of(thread)));
  }

  @Test
  void howATaskFailed() throws Exception {
    FutureTask<String> task =
        new FutureTask<>(
            () -> {
              throw new IllegalStateException("planted");
            });
    Thread thread = new Thread(task);
    thread.start();
    assertThrows(ExecutionException.class, () -> Awaited.of(task, List.of(thread)));
  }

  /** A thread that ended without a word: memory ran out while it said how its task had ended. */
  @Test
  @Timeout(60)
  void aTaskThatNobodyWorksOnIsNotWaitedForForEver() throws Exception {
    FutureTask<String> task = new FutureTask<>(() -> "never run");
    Thread alive = new Thread(() -> {});
    Thread gone = new Thread(() -> {}, "screening");
    gone.start();
    gone.join();
    OutOfMemoryError error =
        assertThrows(OutOfMemoryError.class, () -> Awaited.of(task, List.of(alive, gone)));
    assertEquals("thread screening is gone", error.getMessage());
  }
}
