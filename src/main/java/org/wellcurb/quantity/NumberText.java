package org.wellcurb.quantity;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;

/**
 * Reads one unsigned number of a text made plain by {@link Glyphs}: decimals with separators of
 * thousands, an exponent, a fraction or a mixed number.
 *
 * <p>Only a proper fraction in lowest terms whose denominator is in use for sizes is a fraction:
 * {@code 12/2} and {@code 115/230} are not.
 */
final class NumberText {
  private static final int[] DENOMINATORS = {2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 32, 64, 128};
  private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅒";
  private static final int[] OVER = {
    1, 2, 1, 3, 2, 3, 1, 4, 3, 4, 1, 5, 2, 5, 3, 5, 4, 5, 1, 6, 5, 6, 1, 8, 3, 8, 5, 8, 7, 8, 1, 10
  };

  private final String text;
  private final Comma comma;
  private final boolean fractions;
  private final boolean gauges;

  /** Where the number ends. */
  int end;

  double value;

  /** Half a unit of the last written place; 0 for fractions. */
  double halfPlace;

  /** Why nothing was read. */
  Note problem = Note.NOT_A_NUMBER;

  /** True if it was a wire size such as {@code 2/0}, which takes no sign. */
  boolean isAught;

  /** True if the number has no point, fraction or exponent. */
  boolean digitsOnly;

  NumberText(String text, Comma comma, Expected expected) {
    this.text = text;
    this.comma = comma;
    this.fractions = expected.fractions();
    this.gauges = expected.dimension().equals(Dimension.WIRE_GAUGE);
  }

  /** Reads the number at {@code from}; false if there is none or its meaning is not sure. */
  boolean read(int from) {
    problem = Note.NOT_A_NUMBER;
    isAught = false;
    if (fractions && (vulgar(from, 0) || fraction(from, 0))) {
      return true;
    }
    if (gauges && aught(from)) {
      return true;
    }
    if (!decimal(from)) {
      return false;
    }
    if (fractions && digitsOnly) {
      double whole = value;
      int after = end;
      int next = skipBlanks(after);
      if (vulgar(next, whole)
          || (next > after && fraction(next, whole))
          || (next < text.length()
              && text.charAt(next) == '-'
              && (fraction(skipBlanks(next + 1), whole) || vulgar(skipBlanks(next + 1), whole)))) {
        return true;
      }
      end = after;
      value = whole;
    }
    return true;
  }

  /** Wire sizes beyond gauge 0: {@code 2/0} or {@code 00} is -1. */
  private boolean aught(int from) {
    int stop = digitsEnd(from);
    int size = stop - from;
    if (size == 1 && text.startsWith("/0", stop) && digitsEnd(stop + 1) == stop + 2) {
      size = text.charAt(from) - '0';
      stop += 2;
    } else if (size < 2 || !text.substring(from, stop).equals("0".repeat(size))) {
      return false;
    }
    if (size < 1 || size > 4) {
      return false;
    }
    end = stop;
    value = 1 - size;
    halfPlace = 0.5;
    digitsOnly = false;
    isAught = true;
    return true;
  }

  private boolean decimal(int from) {
    int at = from;
    while (at < text.length() && isPartOfNumber(at)) {
      at++;
    }
    while (at > from && !isDigit(at - 1) && text.charAt(at - 1) != '.') {
      at--;
    }
    if (at == from || (at == from + 1 && !isDigit(from))) {
      return false;
    }
    String digits = Thousands.plain(text.substring(from, at), comma);
    if (digits.isEmpty()) {
      problem = Thousands.problem(text.substring(from, at), comma);
      return false;
    }
    int point = digits.indexOf('.');
    int places = point < 0 ? 0 : digits.length() - point - 1;
    int exponentEnd = exponentEnd(at);
    if (exponentEnd > at) {
      int power = power(at, exponentEnd);
      digits = digits + "e" + power;
      places -= power;
    }
    value = JavaDoubleParser.parseDouble(digits);
    halfPlace = exponentEnd > at ? 0.5 * Math.pow(10, -places) : PlainNumber.halfPlace(places);
    digitsOnly = point < 0 && exponentEnd == at;
    end = exponentEnd;
    return value <= Double.MAX_VALUE && halfPlace <= Double.MAX_VALUE;
  }

  /** Digits, points and commas between digits, and blanks that may separate thousands. */
  private boolean isPartOfNumber(int at) {
    char c = text.charAt(at);
    if (isDigit(at) || c == '.') {
      return true;
    }
    if (c == ',') {
      return at > 0 && isDigit(at - 1) && isDigit(at + 1);
    }
    boolean separates = c == Glyphs.FIXED_BLANK || c == ' ';
    return separates && at > 0 && isDigit(at - 1) && threeDigits(at + 1);
  }

  private boolean threeDigits(int at) {
    return isDigit(at)
        && isDigit(at + 1)
        && isDigit(at + 2)
        && !isDigit(at + 3)
        && !(at + 3 < text.length() && text.charAt(at + 3) == '/');
  }

  private boolean isDigit(int at) {
    return at >= 0 && at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
  }

  private int exponentEnd(int at) {
    if (at >= text.length() || (text.charAt(at) != 'e' && text.charAt(at) != 'E')) {
      return at;
    }
    int digits = at + 1;
    if (digits < text.length() && (text.charAt(digits) == '+' || text.charAt(digits) == '-')) {
      digits++;
    }
    int stop = digits;
    while (isDigit(stop)) {
      stop++;
    }
    return stop > digits && stop - digits <= 3 ? stop : at;
  }

  private int power(int at, int to) {
    return Integer.parseInt(text.substring(at + 1, to));
  }

  private boolean vulgar(int at, double whole) {
    int found = at < text.length() ? VULGAR.indexOf(text.charAt(at)) : -1;
    if (found < 0) {
      return false;
    }
    take(at + 1, whole, OVER[2 * found], OVER[2 * found + 1]);
    return true;
  }

  private boolean fraction(int from, double whole) {
    int slash = digitsEnd(from);
    int bottom = skipBlanks(slash);
    if (slash == from
        || slash - from > 3
        || bottom >= text.length()
        || text.charAt(bottom) != '/') {
      return false;
    }
    bottom = skipBlanks(bottom + 1);
    int stop = digitsEnd(bottom);
    if (stop == bottom
        || stop - bottom > 3
        || (stop < text.length() && (text.charAt(stop) == '/' || isPoint(stop)))) {
      return false;
    }
    int numerator = Integer.parseInt(text.substring(from, slash));
    int denominator = Integer.parseInt(text.substring(bottom, stop));
    if (!isFraction(numerator, denominator)) {
      return false;
    }
    take(stop, whole, numerator, denominator);
    return true;
  }

  private boolean isPoint(int at) {
    return text.charAt(at) == '.' && isDigit(at + 1);
  }

  private static boolean isFraction(int numerator, int denominator) {
    if (numerator == 0 || numerator >= denominator) {
      return false;
    }
    for (int usual : DENOMINATORS) {
      if (denominator == usual) {
        return java.math.BigInteger.valueOf(numerator)
            .gcd(java.math.BigInteger.valueOf(denominator))
            .equals(java.math.BigInteger.ONE);
      }
    }
    return false;
  }

  private void take(int stop, double whole, int numerator, int denominator) {
    end = stop;
    value = whole + (double) numerator / denominator;
    halfPlace = 0;
    digitsOnly = false;
  }

  private int digitsEnd(int at) {
    int stop = at;
    while (isDigit(stop)) {
      stop++;
    }
    return stop;
  }

  private int skipBlanks(int at) {
    int next = at;
    while (next < text.length() && Glyphs.isBlank(text.charAt(next))) {
      next++;
    }
    return next;
  }
}
