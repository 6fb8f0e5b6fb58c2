package org.wellcurb.batch;

/** Why a run did not write its report: one line that says where, what, and what would mend it. */
public final class RunFailure extends Exception {
  private static final long serialVersionUID = 1L;

  /** What could not be used. */
  public enum Kind {
    /** The command line, a pack, a map or the folder to write to. */
    UNUSABLE,
    /** No input could be read. */
    NO_INPUT
  }

  private final Kind kind;

  private RunFailure(Kind kind, String line, Throwable cause) {
    super(line, cause);
    this.kind = kind;
  }

  private RunFailure(Kind kind, String line) {
    super(line);
    this.kind = kind;
  }

  public static RunFailure unusable(String line) {
    return new RunFailure(Kind.UNUSABLE, line);
  }

  public static RunFailure unusable(String line, Throwable cause) {
    return new RunFailure(Kind.UNUSABLE, line, cause);
  }

  public static RunFailure noInput(String line) {
    return new RunFailure(Kind.NO_INPUT, line);
  }

  public Kind kind() {
    return kind;
  }

  /** The line for the user. */
  public String line() {
    String message = getMessage();
    return message == null ? "" : message;
  }
}
