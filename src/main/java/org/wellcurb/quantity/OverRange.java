package org.wellcurb.quantity;

import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Resistance that a meter could not show. */
final class OverRange {
  /**
   * What a meter that shows {@code OL} has ruled out: 2 Mohm is the top of the smallest range in
   * common use (common practice). The true value may be anything above.
   */
  private static final double LEAST_OHMS = 2e6;

  private static final Set<String> WORDS =
      Set.of(
          "ol",
          "o.l.",
          "o.l",
          "0l",
          "inf",
          "infinite",
          "infinity",
          "\u221E",
          "over range",
          "overrange",
          "over limit",
          "open",
          "open line");

  private OverRange() {}

  /** A bound from below; null if the text says something else. */
  static @Nullable Reading read(String plain, Unit bare) {
    // Blanks are looked for in the text itself: a letter may be two in lower case.
    int end = plain.length();
    for (int at = plain.indexOf(' '); at > 0; at = plain.indexOf(' ', at + 1)) {
      @Nullable Unit unit = UnitNames.find(plain.substring(at + 1));
      if (unit != null && unit.dimension().equals(Dimension.RESISTANCE)) {
        end = at;
        break;
      }
    }
    return WORDS.contains(plain.substring(0, end).toLowerCase(Locale.ROOT))
        ? new Reading.Amount(LEAST_OHMS, Double.POSITIVE_INFINITY, 0, bare, Note.OVER_RANGE)
        : null;
  }
}
