package org.wellcurb.cli;

/** How a command ends. */
final class ExitCode {
  static final int DONE = 0;
  static final int GATE = 1;
  static final int UNUSABLE = 2;
  static final int NO_INPUT = 3;

  private ExitCode() {}
}
