package org.wellcurb.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DateWriterTest {
  private static DateReading read(String text) {
    return DateReader.read(text, DateOrder.ISO_ONLY, 0, DayNumbers.NONE);
  }

  @ParameterizedTest
  @CsvSource({
    "2009-05-01, 2009-05-01",
    "May 2009, 2009-05",
    "2009, 2009",
    "1940s, 1940-01-01 to 1949-12-31",
    "before 1928, <=1927-12-31",
    "after 1990, >=1991-01-01"
  })
  void printsTheShortestFormThatReadsBack(String text, String printed) {
    DateReading reading = read(text);
    assertEquals(printed, DateWriter.interval(reading.from(), reading.to()));
  }

  @Test
  void readsBackWhatItPrints() {
    long seed = 1928;
    Random random = new Random(seed);
    double first = (double) CalendarDays.day(CalendarDays.FIRST_YEAR, 1, 1);
    for (int i = 0; i < 50_000; i++) {
      double from = first + random.nextInt(140_000);
      double to = from + (random.nextBoolean() ? random.nextInt(6000) : 0);
      if (random.nextInt(10) == 0) {
        from = Double.NEGATIVE_INFINITY;
      } else if (random.nextInt(10) == 0) {
        to = Double.POSITIVE_INFINITY;
      }
      String printed = DateWriter.interval(from, to);
      DateReading back = read(printed);
      String context = "seed " + seed + ", " + printed;
      assertTrue(back.isRead(), context);
      assertEquals(from, back.from(), context);
      assertEquals(to, back.to(), context);
    }
    assertEquals("", DateWriter.interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
  }
}
