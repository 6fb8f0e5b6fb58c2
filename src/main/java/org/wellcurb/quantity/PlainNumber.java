package org.wellcurb.quantity;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;

/**
 * Reads a plain decimal number, {@code -?digits[.digits]}, without allocation, from bytes or text.
 * The value is bit for bit that of {@link Double#parseDouble}. Signs other than a leading minus,
 * separators, exponents and units are left to {@link AmountReader}.
 *
 * <p>One per worker: the value and the number of places stay here until the next call.
 */
public final class PlainNumber {
  /** A product or quotient of a whole number below 2^53 and such a power is rounded only once. */
  private static final double[] POWERS = powers();

  private static final int EXACT_DIGITS = 15;

  private double value;
  private int places;

  private static double[] powers() {
    double[] powers = new double[23];
    for (int i = 0; i < powers.length; i++) {
      powers[i] = Double.parseDouble("1e" + i);
    }
    return powers;
  }

  /** The number last read; -0.0 where that is written. */
  public double value() {
    return value;
  }

  /** How many digits stand after its decimal point. */
  public int places() {
    return places;
  }

  /** Half a unit of the last place of a number with so many digits after the point. */
  public static double halfPlace(int places) {
    return places >= 0 && places < POWERS.length
        ? 0.5 / POWERS[places]
        : 0.5 * Math.pow(10, -places);
  }

  /** Reads {@code source[from, to)}; false if that is not a plain number or not a finite one. */
  public boolean read(byte[] source, int from, int to) {
    int at = from;
    boolean minus = at < to && source[at] == '-';
    if (minus) {
      at++;
    }
    long whole = 0;
    int digits = 0;
    int point = -1;
    int significant = 0;
    for (; at < to; at++) {
      int digit = source[at] - '0';
      if (digit >= 0 && digit <= 9) {
        digits++;
        if (significant > 0 || digit != 0) {
          significant++;
          if (significant <= EXACT_DIGITS) {
            whole = whole * 10 + digit;
          }
        }
      } else if (source[at] == '.' && point < 0) {
        point = digits;
      } else {
        return false;
      }
    }
    if (digits == 0) {
      return false;
    }
    places = point < 0 ? 0 : digits - point;
    if (significant > EXACT_DIGITS || places >= POWERS.length) {
      value = JavaDoubleParser.parseDouble(source, from, to - from);
      return !Double.isInfinite(value);
    }
    double magnitude = places == 0 ? whole : whole / POWERS[places];
    value = minus ? -magnitude : magnitude;
    return true;
  }

  /** Reads {@code text[from, to)}; false if that is not a plain number or not a finite one. */
  public boolean read(CharSequence text, int from, int to) {
    int at = from;
    boolean minus = at < to && text.charAt(at) == '-';
    if (minus) {
      at++;
    }
    long whole = 0;
    int digits = 0;
    int point = -1;
    int significant = 0;
    for (; at < to; at++) {
      char c = text.charAt(at);
      int digit = c - '0';
      if (digit >= 0 && digit <= 9) {
        digits++;
        if (significant > 0 || digit != 0) {
          significant++;
          if (significant <= EXACT_DIGITS) {
            whole = whole * 10 + digit;
          }
        }
      } else if (c == '.' && point < 0) {
        point = digits;
      } else {
        return false;
      }
    }
    if (digits == 0) {
      return false;
    }
    places = point < 0 ? 0 : digits - point;
    if (significant > EXACT_DIGITS || places >= POWERS.length) {
      value = JavaDoubleParser.parseDouble(text, from, to - from);
      return !Double.isInfinite(value);
    }
    double magnitude = places == 0 ? whole : whole / POWERS[places];
    value = minus ? -magnitude : magnitude;
    return true;
  }
}
