package org.wellcurb.record;

import org.wellcurb.quantity.DateReader;
import org.wellcurb.quantity.DateReading;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.NumericDate;

/** Puts a date that was read into its place. */
final class DateText {
  private DateText() {}

  /** The quick way for dates of three numbers; false, with nothing filled, for all else. */
  static boolean readPlain(
      RecordFiller into, int entry, byte[] source, int from, int to, CellStyle style) {
    long day = NumericDate.day(source, from, to, style.dateOrder(), style.pivotYear());
    if (!NumericDate.isDay(day)) {
      return false;
    }
    if (style.sentinels().holdsDay(day)) {
      into.absent(entry, WellRecord.UNKNOWN, Note.SENTINEL);
    } else {
      into.date(entry, (double) day, (double) day, Note.NONE);
    }
    return true;
  }

  static void read(RecordFiller into, int entry, String text, CellStyle style) {
    DateReading reading =
        DateReader.read(text, style.dateOrder(), style.pivotYear(), style.dayNumbers());
    if (reading.isRead()) {
      into.date(entry, reading.from(), reading.to(), reading.note());
    } else if (reading.note() == Note.AMBIGUOUS_DATE || reading.note() == Note.SHORT_YEAR) {
      into.absent(entry, WellRecord.UNKNOWN, reading.note());
    } else {
      into.absent(entry, WellRecord.UNREADABLE, reading.note());
    }
  }
}
