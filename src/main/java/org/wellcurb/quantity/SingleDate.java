package org.wellcurb.quantity;

import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One date, month, year, season or decade, in lower case, without words around it. */
final class SingleDate {
  private static final Pattern YEAR_MONTH = Pattern.compile("(\\d{4})[-/.](\\d{1,2})");
  private static final Pattern MONTH_YEAR = Pattern.compile("(\\d{1,2})[-/.](\\d{4})");
  private static final Pattern DECADE =
      Pattern.compile("(?:the )?(?:early |mid[ -]|late )?(?:the )?(\\d{3}0) ?'?s");
  private static final Pattern PART_OF_YEAR =
      Pattern.compile(
          "(?:early|mid|late|d\u00E9but|debut|fin|spring|summer|fall|autumn|printemps|\u00E9t\u00E9"
              + "|ete|automne)(?: of| de|,)?[ -]('?\\d{2}|\\d{4})");
  private static final Pattern WINTER =
      Pattern.compile("(?:winter|hiver)(?: of| de|,)?[ -]('?\\d{2}|\\d{4})");
  private static final Pattern DAY_NUMBER = Pattern.compile("(0|[1-9]\\d{0,5})(?:\\.\\d*)?");

  /** The last that a bare number is taken for among numbers of days. */
  private static final int LAST_YEAR = 2100;

  private SingleDate() {}

  static DateReading read(String text, DateOrder order, int pivotYear, DayNumbers dayNumbers) {
    if (text.isEmpty()) {
      return DateReading.not(Note.NOT_A_DATE);
    }
    byte[] source = text.getBytes(StandardCharsets.UTF_8);
    long day = NumericDate.day(source, 0, source.length, order, pivotYear);
    if (day != NumericDate.OTHER) {
      return answer(day);
    }
    if (dayNumbers != DayNumbers.NONE) {
      Matcher m = DAY_NUMBER.matcher(text);
      if (m.matches()) {
        return dayNumber(Integer.parseInt(m.group(1)), text.length() == 4, dayNumbers);
      }
    }
    if (text.length() == 4 && isDigits(text)) {
      return years(Integer.parseInt(text), 1);
    }
    if (text.length() == 8 && isDigits(text)) {
      int number = Integer.parseInt(text);
      return answer(NumericDate.day(number / 10000, number / 100 % 100, number % 100));
    }
    return spelled(text, order, pivotYear);
  }

  private static DateReading spelled(String text, DateOrder order, int pivotYear) {
    Matcher m = YEAR_MONTH.matcher(text);
    if (m.matches()) {
      return yearAndMonth(
          Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2)), text.charAt(4));
    }
    m = MONTH_YEAR.matcher(text);
    if (m.matches()) {
      return month(Integer.parseInt(m.group(2)), Integer.parseInt(m.group(1)));
    }
    m = DECADE.matcher(text);
    if (m.matches()) {
      int year = Integer.parseInt(m.group(1));
      return years(year, year % 100 == 0 ? 100 : 10);
    }
    m = PART_OF_YEAR.matcher(text);
    if (m.matches()) {
      int year = year(m.group(1), pivotYear);
      return year < 0 ? DateReading.not(Note.SHORT_YEAR) : years(year, 1);
    }
    m = WINTER.matcher(text);
    if (m.matches()) {
      int year = year(m.group(1), pivotYear);
      return year < 0 ? DateReading.not(Note.SHORT_YEAR) : winter(year);
    }
    return NamedMonthDate.read(text, order, pivotYear);
  }

  /** A year of four digits, or of two where it is known of which hundred they are; else -1. */
  private static int year(String digits, int pivotYear) {
    if (digits.length() == 4) {
      return Integer.parseInt(digits);
    }
    int year = Integer.parseInt(digits.substring(digits.length() - 2));
    return pivotYear == 0 ? -1 : NumericDate.year(year, pivotYear);
  }

  /** {@code 2009/10} may be October or the two years. */
  private static DateReading yearAndMonth(int year, int second, char sign) {
    boolean twoYears = sign == '/' && second == (year + 1) % 100 && second <= 12;
    return twoYears ? DateReading.not(Note.AMBIGUOUS_DATE) : month(year, second);
  }

  /** From this year, so many of them. {@code 1900s} may be ten years or a hundred. */
  private static DateReading years(int year, int count) {
    if (!CalendarDays.isYear(year)) {
      return DateReading.not(Note.IMPOSSIBLE);
    }
    return DateReading.of(
        (double) CalendarDays.day(year, 1, 1),
        (double) CalendarDays.day(year + count - 1, 12, 31),
        Note.NONE);
  }

  /** The winter at either end of the year: people mean both. */
  private static DateReading winter(int year) {
    if (!CalendarDays.isYear(year)) {
      return DateReading.not(Note.IMPOSSIBLE);
    }
    return DateReading.of(
        (double) CalendarDays.day(year - 1, 12, 1),
        (double) CalendarDays.day(year + 1, 3, 31),
        Note.NONE);
  }

  static DateReading month(int year, int month) {
    if (month < 1 || month > 12) {
      return DateReading.not(Note.NOT_A_DATE);
    }
    if (!CalendarDays.isYear(year)) {
      return DateReading.not(Note.IMPOSSIBLE);
    }
    return DateReading.of(
        (double) CalendarDays.day(year, month, 1),
        (double) CalendarDays.day(year, month, CalendarDays.length(year, month)),
        Note.NONE);
  }

  /** What {@link NumericDate} answered. */
  static DateReading answer(long day) {
    if (NumericDate.isDay(day)) {
      return DateReading.of((double) day, (double) day, Note.NONE);
    }
    if (day == NumericDate.SHORT_YEAR) {
      return DateReading.not(Note.SHORT_YEAR);
    }
    return DateReading.not(
        day == NumericDate.AMBIGUOUS
            ? Note.AMBIGUOUS_DATE
            : day == NumericDate.BEYOND ? Note.IMPOSSIBLE : Note.NOT_A_DATE);
  }

  /**
   * A count of days; what stands behind its point is the time of day. Of four digits it is a year
   * where it can be one of a well. Other small numbers are no days: they are what is left of {@code
   * 5/19}, of a day of the month or of {@code 43.500}, and wells of the first years of the count
   * are few. Nines stand for no date.
   */
  private static DateReading dayNumber(int number, boolean fourDigits, DayNumbers kind) {
    if (fourDigits && number >= CalendarDays.FIRST_YEAR && number <= LAST_YEAR) {
      return years(number, 1);
    }
    if (fourDigits && CalendarDays.isYear(number)) {
      return DateReading.not(Note.AMBIGUOUS_DATE);
    }
    if (number < DayNumbers.FIRST || number == 99_999) {
      return DateReading.not(Note.NOT_A_DATE);
    }
    if (number > DayNumbers.LAST) {
      return DateReading.not(Note.IMPOSSIBLE);
    }
    // In the count from 1900 a day 60 stands that never was, so later days are one ahead.
    return answer(
        kind == DayNumbers.FROM_1904
            ? CalendarDays.day(1904, 1, 1) + number
            : CalendarDays.day(1899, 12, 30) + number);
  }

  private static boolean isDigits(String text) {
    return text.chars().allMatch(c -> c >= '0' && c <= '9');
  }
}
