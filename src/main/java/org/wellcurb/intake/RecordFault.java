package org.wellcurb.intake;

import java.io.Serial;

/** Why a JSON object is no record. */
final class RecordFault extends Exception {
  @Serial private static final long serialVersionUID = 1L;

  private final String pointer;
  private final String reason;

  /**
   * @param pointer JSON pointer (RFC 6901) to what is at fault
   */
  RecordFault(String pointer, String reason) {
    super(reason, null, false, false);
    this.pointer = pointer;
    this.reason = reason;
  }

  String pointer() {
    return pointer;
  }

  String reason() {
    return reason;
  }
}
