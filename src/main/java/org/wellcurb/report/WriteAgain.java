package org.wellcurb.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.DateOrder;
import org.wellcurb.quantity.DateReader;
import org.wellcurb.quantity.DateReading;
import org.wellcurb.quantity.DateWriter;
import org.wellcurb.quantity.DayNumbers;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.words.Words;

/**
 * What stands on a form and could not be taken for sure: it is not missing, it has to be written
 * again, and here is how.
 */
final class WriteAgain {
  /** More than these help nobody to choose. */
  private static final int MOST_WAYS = 4;

  /** First years of the hundreds that a year of two digits is tried in. */
  private static final int[] HUNDREDS = {2000, 1900};

  private static final List<DateOrder> ORDERS =
      List.of(DateOrder.DAY_FIRST, DateOrder.MONTH_FIRST, DateOrder.YEAR_FIRST);

  /** One to three digits, then exactly three: these may be thousands. */
  private static final Pattern GROUPED =
      Pattern.compile("(?<![0-9.,])[1-9][0-9]{0,2}[,.][0-9]{3}(?![0-9])");

  private WriteAgain() {}

  /** Whether the entry is written, and what is written may mean several things or nothing. */
  static boolean isAsked(WellRecord record, int entry) {
    return record.state(entry) == WellRecord.UNREADABLE
        || (record.state(entry) == WellRecord.UNKNOWN && isUnsure(record.note(entry)));
  }

  /** Two dates that disagree were each read, yet neither can be taken. */
  private static boolean isUnsure(Note note) {
    return note == Note.DATES_DISAGREE || note.isUnsure();
  }

  /** How to write it, a whole sentence; empty where there is nothing to say. */
  static String how(Words words, Entry entry, Note note, String written) {
    if (entry.kind() == Kind.DATE) {
      List<String> days = days(written);
      return days.isEmpty()
          ? words.say("again.date")
          : words.say("again.write", String.join(words.say("wanted.or"), days));
    }
    if (note == Note.AMBIGUOUS_COMMA) {
      return words.say("again.write", String.join(words.say("wanted.or"), numbers(written)));
    }
    @Nullable Unit us = entry.usUnit();
    @Nullable Unit metric = entry.metricUnit();
    boolean isOfUnits =
        note == Note.WRONG_DIMENSION || note == Note.UNKNOWN_UNIT || note == Note.NOT_A_NUMBER;
    if (!isOfUnits) {
      return "";
    }
    if (us == null || metric == null || us.symbol().isEmpty()) {
      return entry.kind() == Kind.COUNT ? words.say("again.count") : "";
    }
    return metric.equals(us)
        ? words.say("again.unit", words.unit(us))
        : words.say("again.units", words.unit(us), words.unit(metric));
  }

  /** The days that a date of figures may be, as they are written for sure; few, or none. */
  static List<String> days(String written) {
    Set<String> days = new TreeSet<>();
    for (DateOrder order : ORDERS) {
      for (int hundred : HUNDREDS) {
        DateReading reading = DateReader.read(written, order, hundred, DayNumbers.NONE);
        if (reading.isRead() && reading.from() == reading.to()) {
          days.add(DateWriter.interval(reading.from(), reading.to()));
        }
      }
    }
    return days.size() > MOST_WAYS ? List.of() : List.copyOf(days);
  }

  /** The numbers that one with a comma or a point may be: decimals, thousands. */
  private static List<String> numbers(String written) {
    Set<String> numbers = new LinkedHashSet<>();
    numbers.add(written.strip().replace(',', '.'));
    if (GROUPED.matcher(written).find()) {
      numbers.add(written.strip().replaceFirst("[,.]", ""));
    }
    return new ArrayList<>(numbers);
  }
}
