package org.wellcurb.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Dates with the month by name: {@code 1 May 2009}, {@code May 1st, 2009}, {@code 01-may-09},
 * {@code 1er mai 2009}, {@code May 2009}. {@code May 09} may be a day or a year and is ambiguous.
 */
final class NamedMonthDate {
  private static final Set<String> WEEKDAYS =
      Set.of(
          "monday",
          "tuesday",
          "wednesday",
          "thursday",
          "friday",
          "saturday",
          "sunday",
          "mon",
          "tue",
          "tues",
          "wed",
          "thu",
          "thur",
          "thurs",
          "fri",
          "sat",
          "sun",
          "lundi",
          "mardi",
          "mercredi",
          "jeudi",
          "vendredi",
          "samedi",
          "dimanche");
  private static final Set<String> ORDINALS = Set.of("st", "nd", "rd", "th", "er");

  private NamedMonthDate() {}

  static DateReading read(String text, DateOrder order, int pivotYear) {
    List<String> parts = parts(text);
    int month = 0;
    int place = -1;
    for (int i = 0; i < parts.size(); i++) {
      int number = MonthNames.number(parts.get(i));
      if (number > 0) {
        if (month > 0) {
          return DateReading.not(Note.NOT_A_DATE);
        }
        month = number;
        place = i;
      } else if (!Character.isDigit(parts.get(i).charAt(parts.get(i).length() - 1))) {
        return DateReading.not(Note.NOT_A_DATE);
      }
    }
    if (month == 0) {
      return DateReading.not(Note.NOT_A_DATE);
    }
    parts.remove(place);
    return switch (parts.size()) {
      case 1 -> monthAndYear(parts.get(0), month, pivotYear);
      case 2 -> dayAndYear(parts, place, month, order, pivotYear);
      default -> DateReading.not(Note.NOT_A_DATE);
    };
  }

  private static DateReading monthAndYear(String year, int month, int pivotYear) {
    if (year.length() == 4 && year.charAt(0) != '\'') {
      return SingleDate.month(Integer.parseInt(year), month);
    }
    if (year.length() == 3 && year.charAt(0) == '\'' && pivotYear != 0) {
      return SingleDate.month(
          NumericDate.year(Integer.parseInt(year.substring(1)), pivotYear), month);
    }
    boolean unclear = year.length() <= 2 || year.charAt(0) == '\'';
    return DateReading.not(unclear ? Note.AMBIGUOUS_DATE : Note.NOT_A_DATE);
  }

  /** Two numbers and a month: the year is the one of four digits, or the last. */
  private static DateReading dayAndYear(
      List<String> parts, int place, int month, DateOrder order, int pivotYear) {
    String one = parts.get(0);
    String two = parts.get(1);
    boolean yearFirst =
        one.length() >= 3 || (order == DateOrder.YEAR_FIRST && place == 1 && two.length() <= 2);
    String year = yearFirst ? one : two;
    String day = yearFirst ? two : one;
    if (day.length() > 2 || day.charAt(0) == '\'') {
      return DateReading.not(Note.NOT_A_DATE);
    }
    String digits = year.charAt(0) == '\'' ? year.substring(1) : year;
    if (digits.length() == 4 && digits.equals(year)) {
      return SingleDate.answer(
          NumericDate.day(Integer.parseInt(year), month, Integer.parseInt(day)));
    }
    if (digits.length() != 2) {
      return DateReading.not(Note.NOT_A_DATE);
    }
    return SingleDate.answer(
        pivotYear == 0
            ? NumericDate.SHORT_YEAR
            : NumericDate.day(
                NumericDate.year(Integer.parseInt(digits), pivotYear),
                month,
                Integer.parseInt(day)));
  }

  /**
   * Numbers (with an apostrophe before them, if any) and words; days of the week, endings of
   * ordinals, {@code of} and a time of day left out. A stray sign makes it none.
   */
  private static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    String date = withoutTime(text);
    if (!Character.isLetterOrDigit(date.charAt(0))) {
      return parts;
    }
    int at = 0;
    while (at < date.length()) {
      char c = date.charAt(at);
      int end = at + 1;
      boolean digit = isDigit(c) || (c == '\'' && end < date.length() && isDigit(date.charAt(end)));
      if (digit) {
        while (end < date.length() && isDigit(date.charAt(end))) {
          end++;
        }
        if (end - at > 4) {
          return new ArrayList<>();
        }
        parts.add(date.substring(at, end));
        at = ordinalEnd(date, end);
      } else if (Character.isLetter(c)) {
        while (end < date.length() && Character.isLetter(date.charAt(end))) {
          end++;
        }
        String word = date.substring(at, end);
        if (!WEEKDAYS.contains(word) && !word.equals("of") && !word.equals("de")) {
          parts.add(word);
        }
        at = end;
      } else if (" -/.,".indexOf(c) >= 0) {
        at = end;
      } else {
        return new ArrayList<>();
      }
    }
    return parts;
  }

  private static String withoutTime(String text) {
    for (int at = text.indexOf(' '); at > 0; at = text.indexOf(' ', at + 1)) {
      byte[] rest = text.substring(at).getBytes(java.nio.charset.StandardCharsets.UTF_8);
      if (NumericDate.isTime(rest, 0, rest.length)) {
        return text.substring(0, at);
      }
    }
    return text;
  }

  private static int ordinalEnd(String text, int at) {
    int end = at;
    while (end < text.length() && Character.isLetter(text.charAt(end))) {
      end++;
    }
    return ORDINALS.contains(text.substring(at, end)) ? end : at;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
