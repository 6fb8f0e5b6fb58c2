package org.wellcurb.batch;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * How someone outside a run ends it before it is done: the run looks here between parts, removes
 * what it has written, and says so in one line.
 */
public final class Stop {
  private static final long PATIENCE_SECONDS = 5;

  private final CountDownLatch ended = new CountDownLatch(1);
  private volatile boolean asked;

  /** Asks the run to end and waits a little until it has. */
  public void askAndWait() {
    asked = true;
    try {
      // Where the run does not answer (it waits for input), what it wrote goes at the next run.
      if (!ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        return;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Says that there is nothing to wait for any more. */
  public void ended() {
    ended.countDown();
  }

  /** Ends the run if that was asked. */
  void check() throws RunFailure {
    if (asked) {
      throw RunFailure.unusable("interrupted: nothing was written; an earlier report is as it was");
    }
  }
}
