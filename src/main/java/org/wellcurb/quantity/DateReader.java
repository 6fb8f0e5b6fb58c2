package org.wellcurb.quantity;

import java.time.DateTimeException;
import java.time.LocalDate;

/** Reads dates as intervals of days. */
public final class DateReader {
  private DateReader() {}

  /** Reads a text. */
  public static DateReading read(
      String text, DateOrder order, int pivotYear, DayNumbers dayNumbers) {
    try {
      double day = (double) LocalDate.parse(text).toEpochDay();
      return DateReading.of(day, day, Note.NONE);
    } catch (DateTimeException e) {
      return DateReading.not(Note.NOT_A_DATE);
    }
  }
}
