package org.wellcurb.report.drawing;

import org.wellcurb.quantity.Interval;

/**
 * Something in a drawing that has a label.
 *
 * @param key key of its entry; {@link #LIMIT} for a limit
 * @param range all that it may be, in SI
 * @param text its label
 */
record Tag(String key, Interval range, String text) {
  /** Stands in place of a key: a limit, which no entry gives. */
  static final String LIMIT = "";

  /** Stands in place of a key: something that the drawing reckons, and words say by themselves. */
  static final String DRAWN = "+";

  /** Stands in place of a key: the frost that the rules have. */
  static final String FROST = "frost";

  /** Where its label stands: the middle of a range, the end of half a one. */
  double amount() {
    return Sketch.middle(range);
  }

  /** The greatest end that is known. */
  double most() {
    return range.greatestKnown();
  }

  /** True where an entry of the form gives it. */
  boolean isOnForm() {
    return key.contains(".");
  }

  boolean isLimit() {
    return key.equals(LIMIT);
  }
}
