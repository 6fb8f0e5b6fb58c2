package org.wellcurb.report;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Numbers in outputs: a point for decimals, no grouping, no exponent, the shortest digits that read
 * back to six significant.
 */
final class Digits {
  private static final MathContext SIX = new MathContext(6);

  /** Smaller numbers take the long way. */
  private static final double LEAST_QUICK = 0.001;

  /** Far more than what a product of two doubles is off, and far less than what one sees. */
  private static final double TOO_NEAR = 1e-5;

  private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

  private Digits() {}

  /** Adds the number; nothing where it is NaN, {@code inf} or {@code -inf} where it has no end. */
  static void put(ByteText out, double number) {
    double size = Math.abs(number);
    if (!(size >= LEAST_QUICK && size < 1e6)) {
      out.put(text(number));
      return;
    }
    int places = 5;
    for (double power = 10; power <= size; power *= 10) {
      places--;
    }
    for (double power = 1; power > size; power /= 10) {
      places++;
    }
    if (!putRounded(out, number, places)) {
      out.put(text(number));
    }
  }

  /**
   * Adds a number rounded to so many decimals, ends of zeros left out; false, with nothing added,
   * if it lies so near the middle of two such numbers that a double cannot tell.
   *
   * @param number of no more than nine figures with these decimals
   */
  static boolean putRounded(ByteText out, double number, int places) {
    double scaled = Math.abs(number) * POWERS[places];
    long whole = (long) scaled;
    double over = scaled - whole;
    if (Math.abs(over - 0.5) < TOO_NEAR) {
      return false;
    }
    long rest = over > 0.5 ? whole + 1 : whole;
    int decimals = places;
    while (decimals > 0 && rest % 10 == 0) {
      rest /= 10;
      decimals--;
    }
    if (number < 0 && rest > 0) {
      out.put('-');
    }
    long power = (long) POWERS[decimals];
    out.whole(rest / power);
    if (decimals > 0) {
      out.put('.');
      for (long at = power / 10; at > 0; at /= 10) {
        out.put((char) ('0' + rest / at % 10));
      }
    }
    return true;
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
