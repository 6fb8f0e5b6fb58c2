package org.wellcurb.record;

import org.wellcurb.quantity.DateReader;
import org.wellcurb.quantity.DateReading;
import org.wellcurb.quantity.Note;

/** Puts a date that was read into its place. */
final class DateText {
  private DateText() {}

  static void read(RecordFiller into, int entry, String text, CellStyle style) {
    DateReading reading =
        DateReader.read(text, style.dateOrder(), style.pivotYear(), style.dayNumbers());
    if (reading.isRead()) {
      into.date(entry, reading.from(), reading.to(), reading.note());
    } else if (reading.note() == Note.AMBIGUOUS_DATE) {
      into.absent(entry, WellRecord.UNKNOWN, reading.note());
    } else {
      into.absent(entry, WellRecord.UNREADABLE, reading.note());
    }
  }
}
