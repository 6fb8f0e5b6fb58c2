package org.wellcurb.report.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.wellcurb.formula.FrenchSpaces;

/** Numbers as pages print them: no grouping, the decimal sign of the language. */
public final class Numerals {
  /** Numerals of a figure in the unit in which it was written. */
  public static final int FULL = 6;

  /** Numerals of a figure brought to another unit: what a person can use. */
  public static final int TIDY = 4;

  /** Numerals of a difference brought to another unit, which nobody measured. */
  public static final int ROUGH = 3;

  private static final double HUGE = 1e12;
  private static final double TINY = 1e-9;

  private Numerals() {}

  /** At most this many significant digits, no trailing zeros. */
  public static String of(double x, int significant, Language language) {
    String text = of(x, significant);
    return language == Language.FR ? FrenchSpaces.number(text) : text;
  }

  /** A figure of so many significant digits. */
  static BigDecimal rounded(double x, int significant) {
    BigDecimal exact = new BigDecimal(x);
    // A whole number is quoted as it stands: 99999999 is not a hundred millions.
    boolean isQuoted = significant == FULL && x == Math.rint(x) && Math.abs(x) < HUGE;
    return isQuoted ? exact : exact.round(new MathContext(significant, RoundingMode.HALF_UP));
  }

  /** A written amount with the decimal sign of the language: {@code 14.9 m} is 14,9 m in French. */
  public static String written(String amount, Language language) {
    return language == Language.FR ? amount.replaceAll("(\\d)\\.(\\d)", "$1,$2") : amount;
  }

  private static String of(double x, int significant) {
    if (Double.isNaN(x)) {
      return "?";
    }
    if (Double.isInfinite(x)) {
      return x > 0 ? "∞" : "−∞";
    }
    double size = Math.abs(x);
    if (size < TINY) {
      return "0";
    }
    BigDecimal rounded = rounded(x, significant);
    if (size >= HUGE) {
      // No real well comes near; a line of zeros would only break the page.
      int exponent = rounded.precision() - rounded.scale() - 1;
      return rounded.movePointLeft(exponent).stripTrailingZeros().toPlainString()
          + " × 10^"
          + exponent;
    }
    return rounded.stripTrailingZeros().toPlainString();
  }
}
