package org.wellcurb.record;

import java.util.regex.Pattern;
import org.wellcurb.quantity.Comma;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.PlainNumber;

/** Reads words: those for no value, choices, yes and no. */
final class WordReader {
  /** A word that the column's own list names. */
  private static final int SENTINEL = 16;

  private static final Pattern GROUPED =
      Pattern.compile("-?[0-9]+([ \u00A0\u202F][0-9]{3})*(,[0-9]+)?");
  private static final Pattern BLANKS = Pattern.compile("[ \u00A0\u202F]");
  private static final Pattern THREE = Pattern.compile("-?[1-9][0-9]{0,2},[0-9]{3}");

  private final WordTable yesNo = YesNoWords.TABLE;
  private final PlainNumber number = new PlainNumber();

  /**
   * What a text says instead of a value; {@link WordTable#NONE} if it is a value, or a choice of
   * the entry, or stands where the number of the record does (whatever is written there names it).
   */
  int noValue(EntryReading reading, String text, CellStyle style) {
    if (!style.sentinels().isEmpty()) {
      int said = style.sentinels().words().find(text);
      if (said != WordTable.NONE) {
        return said | SENTINEL;
      }
      String figure = figure(text, style.comma());
      if (number.read(figure, 0, figure.length()) && style.sentinels().holds(number.value())) {
        return CellWords.UNKNOWN | SENTINEL;
      }
    }
    boolean own = reading.isIdentity() || reading.choices().find(text) != WordTable.NONE;
    return own ? WordTable.NONE : CellWords.USUAL.find(text);
  }

  /** A figure without what parts its thousands: what a program writes for none has one sense. */
  private static String figure(String text, Comma comma) {
    if (!GROUPED.matcher(text).matches()) {
      return text;
    }
    String bare = BLANKS.matcher(text).replaceAll("");
    boolean thousands = !comma.isDecimal() && THREE.matcher(bare).matches();
    return thousands ? bare.replace(",", "") : bare.replace(',', '.');
  }

  /** The same for bytes, the usual words only. */
  int noValue(EntryReading reading, byte[] source, int from, int to) {
    int said = CellWords.USUAL.find(source, from, to);
    return said != WordTable.NONE && reading.choices().find(source, from, to) == WordTable.NONE
        ? said
        : WordTable.NONE;
  }

  /** Writes what {@link #noValue} found. */
  void absent(RecordFiller into, int entry, int said) {
    byte state =
        (said & CellWords.NOT_APPLICABLE) != 0 ? WellRecord.NOT_APPLICABLE : WellRecord.UNKNOWN;
    into.absent(entry, state, (said & SENTINEL) != 0 ? Note.SENTINEL : Note.NONE);
  }

  /** Place of a choice or yes-no of bytes; {@link WordTable#NONE} if it is none. */
  int place(EntryReading reading, byte[] source, int from, int to) {
    WordTable table = reading.kind() == Kind.CHOICE ? reading.choices() : yesNo;
    return table.find(source, from, to);
  }

  /** A choice or yes-no of text; unreadable if it is none. */
  void choice(RecordFiller into, EntryReading reading, String text) {
    WordTable table = reading.kind() == Kind.CHOICE ? reading.choices() : yesNo;
    int place = table.find(text);
    if (place == WordTable.NONE) {
      place = table.find(CellText.fold(text));
    }
    if (place == WordTable.NONE) {
      into.absent(reading.index(), WellRecord.UNREADABLE, Note.NOT_A_CHOICE);
    } else {
      into.choice(reading.index(), place);
    }
  }
}
