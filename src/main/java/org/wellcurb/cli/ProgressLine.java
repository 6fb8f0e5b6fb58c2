package org.wellcurb.cli;

import java.io.Console;
import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import org.wellcurb.batch.Progress;

/** One line on a terminal that says how far a run has come; nothing anywhere else. */
final class ProgressLine implements Progress, AutoCloseable {
  /** Rows between two lines: often enough to see that it moves. */
  private static final long STEP = 10_000;

  private final @Nullable PrintWriter terminal;
  private long last;

  private ProgressLine(@Nullable PrintWriter terminal) {
    this.terminal = terminal;
  }

  static ProgressLine start(boolean quiet) {
    // There is a console only where standard input and output are both a terminal.
    Console console = quiet ? null : System.console();
    return new ProgressLine(console == null ? null : console.writer());
  }

  @Override
  public void rows(long rows) {
    if (terminal != null && rows - last >= STEP) {
      last = rows;
      terminal.print("\r" + rows + " rows read");
      terminal.flush();
    }
  }

  @Override
  public void close() {
    if (terminal != null && last > 0) {
      terminal.print("\r" + " ".repeat((last + " rows read").length()) + "\r");
      terminal.flush();
    }
  }
}
