package org.wellcurb.intake;

import java.io.IOException;

/** An input that cannot be used: one line that says where, what, and what would mend it. */
public final class IntakeException extends IOException {
  private static final long serialVersionUID = 1L;

  public IntakeException(String message) {
    super(message);
  }

  public IntakeException(String message, Throwable cause) {
    super(message, cause);
  }
}
