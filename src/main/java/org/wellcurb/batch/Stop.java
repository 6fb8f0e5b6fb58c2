package org.wellcurb.batch;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * How someone outside a run ends it before it is done: the run looks here between parts and within
 * them, removes what it has written, and says so in one line. Where it does not come to look in
 * time, the line is said for it.
 */
public final class Stop {
  private static final long PATIENCE_MILLISECONDS = 5_000;

  private final CountDownLatch ended = new CountDownLatch(1);
  private final Consumer<String> say;
  private final long patience;
  private volatile boolean asked;
  private volatile boolean isWriting;

  /** One that says nothing by itself. */
  public Stop() {
    this(line -> {});
  }

  /**
   * @param say takes the line where the run did not end in time
   */
  public Stop(Consumer<String> say) {
    this(say, PATIENCE_MILLISECONDS);
  }

  Stop(Consumer<String> say, long patience) {
    this.say = say;
    this.patience = patience;
  }

  /** Asks the run to end and waits a little until it has. */
  public void askAndWait() {
    asked = true;
    try {
      if (!ended.await(patience, TimeUnit.MILLISECONDS) && isWriting) {
        say.accept(
            "interrupted: the run did not end in time and was cut off; an earlier report is as it"
                + " was, and the next run clears what is left of this one");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Says that there is nothing to wait for any more. */
  public void ended() {
    ended.countDown();
  }

  /** Says that the report is in its place: from here on no interrupt undoes it. */
  void isInPlace() {
    isWriting = false;
  }

  /** Ends the run if that was asked. */
  void check() throws RunFailure {
    isWriting = true;
    if (asked) {
      throw failure();
    }
  }

  /**
   * Ends the work on a part if that was asked.
   *
   * @throws Asked which the pipeline turns into the failure of the run
   */
  void checkWithinPart() {
    if (asked) {
      throw new Asked();
    }
  }

  private static RunFailure failure() {
    return RunFailure.unusable("interrupted: nothing was written; an earlier report is as it was");
  }

  /** That the run is to end, said where records are taken one by one. */
  static final class Asked extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What the run fails with. */
    RunFailure asFailure() {
      return failure();
    }
  }
}
