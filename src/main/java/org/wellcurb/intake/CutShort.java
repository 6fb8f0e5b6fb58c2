package org.wellcurb.intake;

import java.io.IOException;

/** An input that ends before its time: what came before is used, the rest is set aside. */
final class CutShort extends IOException {
  private static final long serialVersionUID = 1L;

  private final String reason;

  CutShort(String reason) {
    super(reason);
    this.reason = reason;
  }

  /** Why, in one line. */
  String reason() {
    return reason;
  }
}
