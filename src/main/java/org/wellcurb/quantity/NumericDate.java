package org.wellcurb.quantity;

/**
 * Reads dates of three numbers, {@code 2009-05-31}, {@code 31/05/2009}, {@code 5.31.09}, with or
 * without a time behind them, without allocation. A time is checked for its shape and left out: a
 * date is the day as written, in no zone.
 *
 * <p>A date that the declared order, or all orders if none is declared, read alike is read; one
 * that they read differently is ambiguous.
 */
public final class NumericDate {
  /** The text has another shape. */
  public static final long OTHER = Long.MIN_VALUE;

  /** No such day. */
  public static final long INVALID = Long.MIN_VALUE + 1;

  /** It may be several days. */
  public static final long AMBIGUOUS = Long.MIN_VALUE + 2;

  /** A day of a year outside 1800 to 2200. */
  public static final long BEYOND = Long.MIN_VALUE + 3;

  /** Nothing says of which hundred its year is. */
  public static final long SHORT_YEAR = Long.MIN_VALUE + 4;

  private NumericDate() {}

  /** True if this answer is a day. */
  public static boolean isDay(long answer) {
    return answer > SHORT_YEAR;
  }

  /**
   * Days since 1970-01-01 of the date in {@code source[from, to)}, or one of the answers above.
   *
   * @param order order of the numbers where the first has not four digits
   * @param pivotYear first year of the hundred of two-digit years, or 0
   */
  public static long day(byte[] source, int from, int to, DateOrder order, int pivotYear) {
    if (to - from == 10 && source[from + 4] == '-' && source[from + 7] == '-') {
      int century = twoFigures(source, from);
      int year = twoFigures(source, from + 2);
      int month = twoFigures(source, from + 5);
      int day = twoFigures(source, from + 8);
      // Something else than a figure makes its number negative, and so the whole.
      if ((century | year | month | day) >= 0) {
        return day(century * 100 + year, month, day);
      }
    }
    int firstEnd = digits(source, from, to);
    if (firstEnd == from || firstEnd - from == 3 || firstEnd - from > 4 || firstEnd >= to) {
      return OTHER;
    }
    byte separator = source[firstEnd];
    if (separator != '-' && separator != '/' && separator != '.') {
      return OTHER;
    }
    int secondEnd = digits(source, firstEnd + 1, to);
    int secondWidth = secondEnd - firstEnd - 1;
    if (secondWidth < 1 || secondWidth > 2 || secondEnd >= to || source[secondEnd] != separator) {
      return OTHER;
    }
    int thirdEnd = digits(source, secondEnd + 1, to);
    int thirdWidth = thirdEnd - secondEnd - 1;
    if (thirdWidth < 1 || thirdWidth > 4 || !isTime(source, thirdEnd, to)) {
      return OTHER;
    }
    int a = value(source, from, firstEnd);
    int b = value(source, firstEnd + 1, secondEnd);
    int c = value(source, secondEnd + 1, thirdEnd);
    if (firstEnd - from == 4) {
      return thirdWidth <= 2 ? day(a, b, c) : OTHER;
    }
    if (thirdWidth == 4) {
      return fullYearLast(a, b, c, order);
    }
    return thirdWidth == 2 ? shortYear(a, b, c, order, pivotYear) : OTHER;
  }

  private static long fullYearLast(int a, int b, int year, DateOrder order) {
    return switch (order) {
      case DAY_FIRST -> day(year, b, a);
      case MONTH_FIRST -> day(year, a, b);
      case ISO_ONLY, YEAR_FIRST -> either(day(year, b, a), day(year, a, b));
    };
  }

  private static long shortYear(int a, int b, int c, DateOrder order, int pivotYear) {
    if (pivotYear == 0) {
      return SHORT_YEAR;
    }
    long dayFirst = day(year(c, pivotYear), b, a);
    long monthFirst = day(year(c, pivotYear), a, b);
    long yearFirst = day(year(a, pivotYear), b, c);
    return switch (order) {
      case DAY_FIRST -> dayFirst;
      case MONTH_FIRST -> monthFirst;
      case YEAR_FIRST -> yearFirst;
      case ISO_ONLY -> either(either(dayFirst, monthFirst), yearFirst);
    };
  }

  /** The year of the hundred from {@code pivotYear} that ends in these two digits. */
  static int year(int twoDigits, int pivotYear) {
    return pivotYear + Math.floorMod(twoDigits - pivotYear, 100);
  }

  static long day(int year, int month, int day) {
    if (!CalendarDays.isDate(year, month, day)) {
      return INVALID;
    }
    return CalendarDays.isYear(year) ? CalendarDays.day(year, month, day) : BEYOND;
  }

  private static long either(long one, long two) {
    if (one == two || two == INVALID) {
      return one;
    }
    return one == INVALID ? two : AMBIGUOUS;
  }

  /** The number of two figures; negative if one is none. */
  private static int twoFigures(byte[] source, int at) {
    int tens = source[at] - '0';
    int ones = source[at + 1] - '0';
    return (tens | ones | (9 - tens) | (9 - ones)) < 0 ? -1 : tens * 10 + ones;
  }

  private static int digits(byte[] source, int from, int to) {
    int at = from;
    while (at < to && source[at] >= '0' && source[at] <= '9') {
      at++;
    }
    return at;
  }

  private static int value(byte[] source, int from, int to) {
    int value = 0;
    for (int i = from; i < to; i++) {
      value = value * 10 + source[i] - '0';
    }
    return value;
  }

  /** Nothing, or a time of day: {@code T07:30:00Z}, {@code 7:30 PM}, {@code 00:00:00.000+02:00}. */
  static boolean isTime(byte[] source, int from, int to) {
    if (from == to) {
      return true;
    }
    if (source[from] != 'T' && source[from] != 't' && source[from] != ' ') {
      return false;
    }
    int at = twoDigits(source, from + 1, to, 24);
    int parts = 0;
    while (at > 0 && at < to && source[at] == ':' && parts < 2) {
      at = twoDigits(source, at + 1, to, 59);
      parts++;
    }
    if (at < 0 || parts == 0) {
      return false;
    }
    if (at < to && (source[at] == '.' || source[at] == ',')) {
      int end = digits(source, at + 1, to);
      at = end > at + 1 ? end : -1;
    }
    return at >= 0 && isTimeEnd(source, at, to);
  }

  private static boolean isTimeEnd(byte[] source, int from, int to) {
    int at = from;
    while (at < to && source[at] == ' ') {
      at++;
    }
    if (at == to) {
      return true;
    }
    int letter = source[at] | 0x20;
    if (letter == 'z') {
      return at + 1 == to;
    }
    if (letter == 'a' || letter == 'p') {
      return at + 2 == to && (source[at + 1] | 0x20) == 'm';
    }
    if (source[at] != '+' && source[at] != '-') {
      return false;
    }
    at = twoDigits(source, at + 1, to, 23);
    if (at > 0 && at < to && source[at] == ':') {
      at++;
    }
    return at > 0 && (at == to || twoDigits(source, at, to, 59) == to);
  }

  /** Past one or two digits of at most {@code most}; -1 if they are not there. */
  private static int twoDigits(byte[] source, int from, int to, int most) {
    int end = digits(source, from, Math.min(to, from + 2));
    return end == from || value(source, from, end) > most ? -1 : end;
  }
}
