package org.wellcurb.quantity;

import java.util.Locale;
import java.util.Set;

/** A laboratory's words for nothing found, without its limit. */
final class NotDetected {
  private static final Set<String> WORDS =
      Set.of(
          "nd",
          "n.d.",
          "n.d",
          "bdl",
          "bql",
          "brl",
          "not detected",
          "non-detect",
          "non detect",
          "none detected",
          "nondetect",
          "below detection",
          "below detection limit");

  private NotDetected() {}

  static boolean isSaid(String plain) {
    return WORDS.contains(plain.toLowerCase(Locale.ROOT));
  }
}
