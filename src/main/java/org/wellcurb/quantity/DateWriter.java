package org.wellcurb.quantity;

import java.time.LocalDate;

/**
 * Prints intervals of days so that {@link DateReader} reads them back: {@code 2009-05-01}, {@code
 * 2009-05} and {@code 2009} where the interval is just that month or year, {@code 1975-01-01 to
 * 1980-12-31}, {@code <=1927-12-31}.
 */
public final class DateWriter {
  private DateWriter() {}

  /**
   * An interval of days since 1970-01-01, both ends included; empty where nothing at all is known.
   */
  public static String interval(double from, double to) {
    boolean open = Double.isInfinite(from);
    if (open && Double.isInfinite(to)) {
      return "";
    }
    if (open) {
      return "<=" + day(to);
    }
    if (Double.isInfinite(to)) {
      return ">=" + day(from);
    }
    if (from == to) {
      return day(from);
    }
    LocalDate first = date(from);
    LocalDate last = date(to);
    if (first.getDayOfMonth() == 1 && last.equals(endOfMonth(first))) {
      return day(from).substring(0, 7);
    }
    if (first.getDayOfYear() == 1 && last.equals(endOfYear(first))) {
      return day(from).substring(0, 4);
    }
    return day(from) + " to " + day(to);
  }

  /** One day, ISO. */
  public static String day(double day) {
    return date(day).toString();
  }

  private static LocalDate date(double day) {
    return LocalDate.ofEpochDay((long) day);
  }

  private static LocalDate endOfMonth(LocalDate date) {
    return date.withDayOfMonth(date.lengthOfMonth());
  }

  private static LocalDate endOfYear(LocalDate date) {
    return LocalDate.of(date.getYear(), 12, 31);
  }
}
