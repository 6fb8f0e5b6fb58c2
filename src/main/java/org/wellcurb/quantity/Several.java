package org.wellcurb.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * Three values and more in one cell, {@code 40; 55; 60 ft}: the range that holds them all. Each
 * must be a lone number; those without a unit have that of the last.
 */
final class Several {
  private static final int LEAST = 3;
  private static final String[] BETWEEN = {";", "&", ", ", " and ", " or "};

  private Several() {}

  /** The reading of a list; {@code other} if the text is none. */
  static Reading read(String text, Expected expected, Unit bare, Comma comma, Reading other) {
    List<String> parts = parts(text);
    if (parts.size() < LEAST) {
      return other;
    }
    double lo = Double.POSITIVE_INFINITY;
    double hi = Double.NEGATIVE_INFINITY;
    Unit unit = bare;
    for (int i = parts.size() - 1; i >= 0; i--) {
      Reading one = new AmountText(parts.get(i), expected, unit, comma).read();
      if (!(one instanceof Reading.Amount a) || a.lo() != a.hi() || a.note() != Note.NONE) {
        return other;
      }
      boolean first = i == parts.size() - 1;
      if (!first && !a.unit().equals(unit) && a.unit().system() != unit.system()) {
        return new Reading.Unreadable(Note.UNITS_DISAGREE);
      }
      unit = first ? a.unit() : unit;
      lo = Math.min(lo, a.lo());
      hi = Math.max(hi, a.hi());
    }
    return new Reading.Amount(lo, hi, 0, unit, Note.SEVERAL);
  }

  private static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    for (int at = 0; at < text.length(); at++) {
      for (String sign : BETWEEN) {
        if (text.startsWith(sign, at)) {
          add(parts, text.substring(from, at));
          from = at + sign.length();
          at = from - 1;
          break;
        }
      }
    }
    add(parts, text.substring(from));
    return parts;
  }

  /** {@code 40, 55, and 60} holds nothing between comma and word. */
  private static void add(List<String> parts, String part) {
    String trimmed = Glyphs.trim(part);
    if (!trimmed.isEmpty()) {
      parts.add(trimmed);
    }
  }
}
