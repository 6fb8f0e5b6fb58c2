package org.wellcurb.intake;

/** Counts the chunks that were given out and those that have been read. */
final class Progress {
  private long given;
  private long read;

  synchronized void given() {
    given++;
  }

  synchronized void read() {
    read++;
    notifyAll();
  }

  /**
   * Waits until every chunk that was given out has been read. The last chunk of a run waits for
   * those before it; as these wait for nothing, it comes to an end.
   */
  synchronized void await() throws InterruptedException {
    while (read < given) {
      wait();
    }
  }
}
