package org.wellcurb.quantity;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;

/** Whatever is written for a date: whole days in order, within the years that are read. */
class DateFuzz {
  private static final double FIRST = (double) CalendarDays.day(CalendarDays.FIRST_YEAR - 1, 1, 1);
  private static final double LAST =
      (double) CalendarDays.day(CalendarDays.LAST_YEAR + 100, 12, 31);

  @FuzzTest(maxDuration = "10m")
  void aDateIsSound(FuzzedDataProvider data) {
    DateOrder order = data.pickValue(DateOrder.values());
    DayNumbers numbers = data.pickValue(DayNumbers.values());
    int pivot = data.consumeBoolean() ? 0 : 1930;
    String text = data.consumeRemainingAsString();
    DateReading d = DateReader.read(text, order, pivot, numbers);
    if (d.isRead()) {
      check(d.from() <= d.to(), text, d);
      check(Double.isInfinite(d.from()) || d.from() >= FIRST, text, d);
      check(Double.isInfinite(d.to()) || d.to() <= LAST, text, d);
      check(d.from() == Math.rint(d.from()) && d.to() == Math.rint(d.to()), text, d);
    } else {
      check(d.note() != Note.NONE, text, d);
    }
  }

  private static void check(boolean sound, String text, DateReading date) {
    if (!sound) {
      throw new AssertionError("'" + text + "' gave " + date);
    }
  }
}
