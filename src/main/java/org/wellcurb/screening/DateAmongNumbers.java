package org.wellcurb.screening;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;

/** Which date of a record a number is like that stands where an amount should. */
final class DateAmongNumbers {
  private static final int EIGHT = 8;

  /** Days apart at most: the same day of another month, a day of the same week. */
  private static final double NEAR = 31;

  private DateAmongNumbers() {}

  /** The date entry of the record that is nearest to a number of eight digits; null if none is. */
  static @Nullable Entry like(WellRecord record, String written) {
    if (written.length() != EIGHT || !written.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return null;
    }
    int a = Integer.parseInt(written.substring(0, 2));
    int b = Integer.parseInt(written.substring(2, 4));
    int year = Integer.parseInt(written.substring(4));
    int first = Integer.parseInt(written.substring(0, 4));
    int c = Integer.parseInt(written.substring(4, 6));
    int d = Integer.parseInt(written.substring(6));
    double[] days = {day(year, a, b), day(year, b, a), day(first, c, d)};
    @Nullable Entry nearest = null;
    double least = NEAR;
    for (Entry entry : record.catalogue().entries()) {
      int i = entry.index();
      if (entry.kind() == Kind.DATE && record.isPoint(i)) {
        for (double day : days) {
          double apart = Math.abs(record.lo(i) - day);
          if (apart <= least && (nearest == null || apart < least)) {
            least = apart;
            nearest = entry;
          }
        }
      }
    }
    return nearest;
  }

  private static double day(int year, int month, int day) {
    try {
      return LocalDate.of(year, month, day).toEpochDay();
    } catch (DateTimeException e) {
      return Double.NaN;
    }
  }
}
