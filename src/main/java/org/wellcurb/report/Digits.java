package org.wellcurb.report;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Numbers in outputs: a point for decimals, no grouping, no exponent, the shortest digits that read
 * back to six significant.
 */
final class Digits {
  private static final MathContext SIX = new MathContext(6);

  private Digits() {}

  /** Adds the number; nothing where it is NaN, {@code inf} or {@code -inf} where it has no end. */
  static void put(ByteText out, double number) {
    out.put(text(number));
  }

  static String text(double number) {
    if (Double.isNaN(number)) {
      return "";
    }
    if (Double.isInfinite(number)) {
      return number > 0 ? "inf" : "-inf";
    }
    if (number == 0) {
      return "0";
    }
    return BigDecimal.valueOf(number).round(SIX).stripTrailingZeros().toPlainString();
  }
}
