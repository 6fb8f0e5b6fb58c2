package org.wellcurb.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DateReaderTest {
  /** As {@code from..to}, a single day, or the reason why nothing was read. */
  private static String read(String text, DateOrder order, int pivot, DayNumbers numbers) {
    DateReading reading = DateReader.read(text, order, pivot, numbers);
    String note = reading.note() == Note.NONE ? "" : " " + reading.note();
    if (!reading.isRead()) {
      return note.trim();
    }
    String from = day(reading.from());
    String to = day(reading.to());
    return (from.equals(to) ? from : from + ".." + to) + note;
  }

  private static String day(double day) {
    return Double.isInfinite(day) ? "" : LocalDate.ofEpochDay((long) day).toString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "2009-05-01 | 2009-05-01",
        "2009-5-1 | 2009-05-01",
        "2009/05/01 | 2009-05-01",
        "2009.05.01 | 2009-05-01",
        "20090501 | 2009-05-01",
        "2009-05 | 2009-05-01..2009-05-31",
        "2008-02 | 2008-02-01..2008-02-29",
        "2009 | 2009-01-01..2009-12-31",
        "05/2009 | 2009-05-01..2009-05-31",
        "2009-05-01T00:00:00Z | 2009-05-01",
        "2009-05-01T23:59:59.999+02:00 | 2009-05-01",
        "2009-05-01 00:00 | 2009-05-01",
        "2009-05-01 7:30 PM | 2009-05-01",
        "2009-05-01 25:00 | NOT_A_DATE",
        "13/05/2009 | 2009-05-13",
        "05/13/2009 | 2009-05-13",
        "05/05/2009 | 2009-05-05",
        "05/06/2009 | AMBIGUOUS_DATE",
        "05/06/09 | SHORT_YEAR",
        "13/13/2009 | NOT_A_DATE",
        "2009-02-30 | NOT_A_DATE",
        "2009-02-29 | NOT_A_DATE",
        "1900-02-29 | NOT_A_DATE",
        "2000-02-29 | 2000-02-29",
        "2009-00-00 | NOT_A_DATE",
        "5199-01-01 | IMPOSSIBLE",
        "5199 | IMPOSSIBLE",
        "1799-12-31 | IMPOSSIBLE",
        "1800-01-01 | 1800-01-01",
        "2200-12-31 | 2200-12-31",
        "2201-01-01 | IMPOSSIBLE",
        "1 May 2009 | 2009-05-01",
        "1st of May, 2009 | 2009-05-01",
        "May 1, 2009 | 2009-05-01",
        "MAY 1 2009 | 2009-05-01",
        "Fri, May 1, 2009 | 2009-05-01",
        "1-May-2009 | 2009-05-01",
        "2009 May 1 | 2009-05-01",
        "1er mai 2009 | 2009-05-01",
        "3 ao\u00FBt 1987 | 1987-08-03",
        "Sept. 5, 2009 | 2009-09-05",
        "f\u00E9vr. 2009 | 2009-02-01..2009-02-28",
        "May 2009 | 2009-05-01..2009-05-31",
        "May-09 | AMBIGUOUS_DATE",
        "1-May-09 | SHORT_YEAR",
        "31 June 2009 | NOT_A_DATE",
        "9 May | AMBIGUOUS_DATE",
        "May | NOT_A_DATE",
        "1940's | 1940-01-01..1949-12-31",
        "1940s | 1940-01-01..1949-12-31",
        "1940\u2019s | 1940-01-01..1949-12-31",
        "early 1940s | 1940-01-01..1949-12-31",
        "1900s | 1900-01-01..1999-12-31",
        "Pre 1928 | ..1927-12-31",
        "pre-1928 | ..1927-12-31",
        "before 1928 | ..1927-12-31",
        "prior to 1928 | ..1927-12-31",
        "<1928 | ..1927-12-31",
        "by 1928 | ..1928-12-31",
        "after 1990 | 1991-01-01..",
        "since 1990 | 1990-01-01..",
        "after 2009-05-01 | 2009-05-02..",
        "between 1975-1980 | 1975-01-01..1980-12-31",
        "between 1975 and 1980 | 1975-01-01..1980-12-31",
        "1975-1980 | 1975-01-01..1980-12-31",
        "1975-80 | 1975-01-01..1980-12-31",
        "1975/1980 | 1975-01-01..1980-12-31",
        "2009/10 | AMBIGUOUS_DATE",
        "May 2009 to June 2009 | 2009-05-01..2009-06-30",
        "1980-1975 | REVERSED",
        "1974, deepened in 1975 | NOT_A_DATE",
        "1974 (owner) | 1974-01-01..1974-12-31 COMMENT",
        "1974 (May 1974) | 1974-05-01..1974-05-31",
        "1974 (1975) | DATES_DISAGREE",
        "circa 1950 | 1950-01-01..1950-12-31 APPROXIMATE",
        "c. 1950 | 1950-01-01..1950-12-31 APPROXIMATE",
        "1950 (est.) | 1950-01-01..1950-12-31 COMMENT",
        "~1950 | 1950-01-01..1950-12-31 APPROXIMATE",
        "spring 1974 | 1974-01-01..1974-12-31",
        "winter 1974 | 1973-12-01..1975-03-31",
        "'2009-05-01 | 2009-05-01",
        "39934 | NOT_A_DATE",
        "1950? | NOT_A_DATE",
        "yesterday | NOT_A_DATE",
        "- 5 May 2009 | NOT_A_DATE",
        "2009-05-01-02 | NOT_A_DATE",
      })
  void readsWhatHasOneReading(String text, String expected) {
    assertEquals(expected, read(text, DateOrder.ISO_ONLY, 0, DayNumbers.NONE));
  }

  @ParameterizedTest
  @CsvSource({
    "DAY_FIRST, 05/06/2009, 2009-06-05",
    "MONTH_FIRST, 05/06/2009, 2009-05-06",
    "YEAR_FIRST, 09/05/06, 2009-05-06",
    "DAY_FIRST, 05.06.09, 2009-06-05",
    "MONTH_FIRST, 5-6-29, 2029-05-06",
    "MONTH_FIRST, 5-6-30, 1930-05-06",
    "DAY_FIRST, 05/13/2009, NOT_A_DATE",
    "MONTH_FIRST, 13/05/2009, NOT_A_DATE",
    "DAY_FIRST, 2009-05-06, 2009-05-06",
    "ISO_ONLY, 01-May-09, 2009-05-01",
    "ISO_ONLY, May '09, 2009-05-01..2009-05-31",
    "ISO_ONLY, 05/05/05, 2005-05-05",
    "ISO_ONLY, 13/05/09, AMBIGUOUS_DATE",
    "ISO_ONLY, 31/12/99, 1999-12-31",
  })
  void readsInTheDeclaredOrder(DateOrder order, String text, String expected) {
    assertEquals(expected, read(text, order, 1930, DayNumbers.NONE));
  }

  @ParameterizedTest
  @CsvSource({
    "FROM_1900, 1, NOT_A_DATE",
    "FROM_1900, 60, NOT_A_DATE",
    "FROM_1900, 190, NOT_A_DATE",
    "FROM_1900, 366, NOT_A_DATE",
    "FROM_1900, 1297, NOT_A_DATE",
    "FROM_1900, 9998, NOT_A_DATE",
    "FROM_1900, 10000, 1927-05-18",
    "FROM_1900, 80000, 2119-01-11",
    "FROM_1900, 80001, IMPOSSIBLE",
    "FROM_1900, 5/19, NOT_A_DATE",
    "FROM_1900, 3/97, NOT_A_DATE",
    "FROM_1900, 2/3, NOT_A_DATE",
    "FROM_1900, 5-19, NOT_A_DATE",
    "FROM_1900, 10 to 15, NOT_A_DATE",
    "FROM_1900, between 5 and 19, NOT_A_DATE",
    "FROM_1900, before 190, NOT_A_DATE",
    "FROM_1900, 43.500, NOT_A_DATE",
    "FROM_1900, 5.19, NOT_A_DATE",
    "FROM_1900, 1977.5, NOT_A_DATE",
    "FROM_1900, 010597, NOT_A_DATE",
    "FROM_1900, 5/1997, 1997-05-01..1997-05-31",
    "FROM_1900, 1975-80, 1975-01-01..1980-12-31",
    "FROM_1900, 39934, 2009-05-01",
    "FROM_1900, 39934.75, 2009-05-01",
    "FROM_1904, 0, NOT_A_DATE",
    "FROM_1904, 10000, 1931-05-19",
    "FROM_1904, 38472, 2009-05-01",
    "FROM_1900, 1977, 1977-01-01..1977-12-31",
    "FROM_1900, circa 1984, 1984-01-01..1984-12-31 APPROXIMATE",
    "FROM_1900, 2150, AMBIGUOUS_DATE",
    "FROM_1900, 9999, NOT_A_DATE",
    "FROM_1904, 99999, NOT_A_DATE",
    "FROM_1900, 999999, IMPOSSIBLE",
    "FROM_1900, 2009-05-01, 2009-05-01",
  })
  void readsDayNumbersWhereDeclared(DayNumbers numbers, String text, String expected) {
    assertEquals(expected, read(text, DateOrder.ISO_ONLY, 0, numbers));
  }

  /** Day numbers against java.time's calendar, every day of all years that are read. */
  @Test
  void countsDaysAsTheCalendarDoes() {
    LocalDate day = LocalDate.of(CalendarDays.FIRST_YEAR, 1, 1);
    LocalDate last = LocalDate.of(CalendarDays.LAST_YEAR, 12, 31);
    while (!day.isAfter(last)) {
      byte[] text = day.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8);
      assertEquals(day.toEpochDay(), NumericDate.day(text, 0, text.length, DateOrder.ISO_ONLY, 0));
      day = day.plusDays(1);
    }
  }

  @Test
  void ordersAgreeWithTheCalendarOnRandomDays() {
    long seed = 20_260_101L;
    Random random = new Random(seed);
    for (int i = 0; i < 100_000; i++) {
      LocalDate day = LocalDate.ofEpochDay(random.nextInt(80_000) - 40_000);
      String sign = String.valueOf("/.-".charAt(random.nextInt(3)));
      String dayFirst = day.getDayOfMonth() + sign + day.getMonthValue() + sign + day.getYear();
      String monthFirst = day.getMonthValue() + sign + day.getDayOfMonth() + sign + day.getYear();
      String context = "seed " + seed + ", " + day;
      assertEquals(
          day.toString(), read(dayFirst, DateOrder.DAY_FIRST, 0, DayNumbers.NONE), context);
      assertEquals(
          day.toString(), read(monthFirst, DateOrder.MONTH_FIRST, 0, DayNumbers.NONE), context);
      boolean clear = day.getDayOfMonth() > 12 || day.getDayOfMonth() == day.getMonthValue();
      assertEquals(
          clear ? day.toString() : "AMBIGUOUS_DATE",
          read(dayFirst, DateOrder.ISO_ONLY, 0, DayNumbers.NONE),
          context);
    }
  }
}
