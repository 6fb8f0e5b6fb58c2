package org.wellcurb.crosscheck;

import java.util.stream.IntStream;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/**
 * The days between the dates of a form, which stay when all dates are moved by as many days. Works
 * on marks of entries, in which that of a day is its number and 0 says nothing.
 */
final class DaysBetween {
  private static final int PRIME = 0x01000193;

  private final int[] dates;
  private final boolean[] isDate;

  DaysBetween(Catalogue catalogue) {
    dates =
        IntStream.range(0, catalogue.size()).filter(i -> isOfForm(catalogue.entry(i))).toArray();
    isDate = new boolean[catalogue.size()];
    for (int date : dates) {
      isDate[date] = true;
    }
  }

  /**
   * Whether an entry is a day of the work or of its paper, which moves when a form is dated later.
   * The last day of a licence says who did it, and stays.
   */
  static boolean isOfForm(Entry entry) {
    return entry.kind() == Kind.DATE && entry.key().startsWith("dates.");
  }

  boolean isDate(int entry) {
    return isDate[entry];
  }

  /** Places of the dates in the catalogue. */
  int[] dates() {
    return dates.clone();
  }

  /**
   * A mark of the days between the dates; 0 where fewer than {@link Alike#LEAST_DATES} are given.
   */
  int mark(int[] marks) {
    int first = 0;
    int mark = 1;
    int given = 0;
    for (int date : dates) {
      if (marks[date] != 0) {
        first = given == 0 ? marks[date] : first;
        given++;
        mark = (mark * PRIME + (marks[date] - first)) * PRIME + date;
      }
    }
    return given < Alike.LEAST_DATES ? 0 : mark | 1;
  }

  /** The same, or where it is 0 a mark of the dates: equal dates have equal keys. */
  int key(int[] marks) {
    int mark = mark(marks);
    if (mark == 0) {
      for (int date : dates) {
        mark = mark * PRIME + marks[date];
      }
    }
    return mark;
  }
}
