package org.wellcurb.intake;

/**
 * Why a row of a table is no record.
 *
 * @param column the column at fault; empty where it is the row as a whole
 * @param reason why, in one line
 */
record Fault(String column, String reason) {
  static Fault row(String reason) {
    return new Fault("", reason);
  }
}
