package org.wellcurb.report.drawing;

/**
 * Something in a drawing that has a label.
 *
 * @param key key of its entry; {@link #LIMIT} for a limit
 * @param amount where it is, in SI
 * @param text its label
 */
record Tag(String key, double amount, String text) {
  /** Stands in place of a key: a limit, which no entry gives. */
  static final String LIMIT = "";

  boolean isLimit() {
    return key.equals(LIMIT);
  }
}
