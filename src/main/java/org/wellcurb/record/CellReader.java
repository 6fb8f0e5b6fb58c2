package org.wellcurb.record;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.AmountReader;
import org.wellcurb.quantity.Expected;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.PlainNumber;
import org.wellcurb.quantity.Reading;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;

/**
 * Reads the text of one cell into one entry of a record: amounts, dates, choices, yes-no, text, and
 * the words for no value. What is written is always kept beside what was read.
 *
 * <p>Blank cells leave the entry as it is. One reader per worker: it is not for several threads.
 * Bytes of plain numbers, numbers with a usual unit, ISO dates, choices and yes-no are read without
 * allocation; the rest is read as text.
 */
public final class CellReader {
  private final Catalogue catalogue;
  private final EntryReading[] entries;
  private final WordReader words;
  private final FlowingWords flowing;
  private final DoubtedZeros zeros;
  private final PlainNumber number = new PlainNumber();
  private final ByteCache<Reading> amounts = new ByteCache<>();

  public CellReader(Catalogue catalogue) {
    this.catalogue = catalogue;
    entries = new EntryReading[catalogue.size()];
    for (Entry entry : catalogue.entries()) {
      entries[entry.index()] = new EntryReading(entry);
    }
    words = new WordReader();
    flowing = new FlowingWords(catalogue);
    zeros = new DoubtedZeros(catalogue);
  }

  /**
   * Reads a cell of text.
   *
   * @param columnUnit unit that the column's header states, or null
   * @param recordSystem units of numbers for which nothing else states one
   */
  public void read(
      RecordFiller into,
      int entry,
      String text,
      @Nullable Unit columnUnit,
      UnitSystem recordSystem,
      CellStyle style) {
    String trimmed = CellText.trim(text);
    if (trimmed.isEmpty()) {
      return;
    }
    into.written(entry, trimmed);
    EntryReading reading = entries[entry];
    @Nullable Unit bare = unit(reading, columnUnit, recordSystem);
    byte[] source = trimmed.getBytes(StandardCharsets.UTF_8);
    if (!readPlain(into, reading, source, 0, source.length, bare, style)) {
      readText(into, reading, trimmed, bare, style);
    }
  }

  /**
   * Reads a cell of UTF-8 bytes, {@code source[from, to)}. The record keeps the place of what is
   * written, not a copy: {@code source} must not change while the record is in use.
   *
   * @return true if the same bytes would be read so again, under the same conditions
   */
  public boolean read(
      RecordFiller into,
      int entry,
      byte[] source,
      int from,
      int to,
      @Nullable Unit columnUnit,
      UnitSystem recordSystem,
      CellStyle style) {
    int start = from;
    int end = to;
    while (start < end && source[start] >= 0 && source[start] <= ' ') {
      start++;
    }
    while (end > start && source[end - 1] >= 0 && source[end - 1] <= ' ') {
      end--;
    }
    if (start == end) {
      return false;
    }
    EntryReading reading = entries[entry];
    @Nullable Unit bare = unit(reading, columnUnit, recordSystem);
    if (readPlain(into, reading, source, start, end, bare, style)
        || readAgain(into, reading, source, start, end, bare, style)) {
      into.written(entry, source, start, end);
      return true;
    }
    if (reading.kind() == Kind.TEXT && readName(into, reading, source, start, end, style)) {
      into.written(entry, source, start, end);
      return true;
    }
    String whole = new String(source, start, end - start, StandardCharsets.UTF_8);
    String text = CellText.trim(whole);
    if (text.isEmpty()) {
      return false;
    }
    if (text.length() < whole.length()) {
      into.written(entry, text);
      readText(into, reading, text, bare, style);
      return false;
    }
    into.written(entry, source, start, end);
    @Nullable Reading made = readText(into, reading, text, bare, style);
    if (made != null) {
      amounts.put(source, start, end, salt(reading, bare, style), made);
    }
    return made != null || reading.kind() == Kind.TEXT;
  }

  /** True if a text says in words, or by what the column has for it, that there is no value. */
  public boolean saysNoValue(int entry, String text, CellStyle style) {
    return words.noValue(entries[entry], text, style) != WordTable.NONE;
  }

  /** True if it is a level of water, whose words and zeros are read with regard to others. */
  boolean isLevel(int entry) {
    return entries[entry].isWaterLevel();
  }

  /** True if a cell of this entry is read without regard to others of its record. */
  boolean isOfItself(int entry) {
    EntryReading reading = entries[entry];
    return !reading.isIdentity() && !reading.isWaterLevel() && !flowing.isSaid(entry);
  }

  /** The shapes that nearly all cells have; false if it is none of them. */
  private boolean readPlain(
      RecordFiller into,
      EntryReading reading,
      byte[] source,
      int from,
      int to,
      @Nullable Unit bare,
      CellStyle style) {
    boolean isUsual = style.sentinels().isEmpty();
    boolean digit = source[from] >= '0' && source[from] <= '9';
    if (!digit && isUsual && !reading.isIdentity()) {
      int said = words.noValue(reading, source, from, to);
      if (said != WordTable.NONE) {
        absent(into, reading, said);
        return true;
      }
    }
    return switch (reading.kind()) {
      case TEXT, LIST -> false;
      case CHOICE, YES_NO -> {
        int place = isUsual ? words.place(reading, source, from, to) : WordTable.NONE;
        if (place != WordTable.NONE) {
          choose(into, reading.index(), place);
        }
        yield place != WordTable.NONE;
      }
      case DATE -> DateText.readPlain(into, reading.index(), source, from, to, style);
      default ->
          bare != null
              && PlainAmount.read(into, reading, number, source, from, to, bare, style, zeros);
    };
  }

  /** Text of plain letters and figures, which most names and numbers are; false if it is not. */
  private boolean readName(
      RecordFiller into, EntryReading reading, byte[] source, int from, int to, CellStyle style) {
    if (!style.sentinels().isEmpty()) {
      return false;
    }
    @Nullable String folded = CellText.foldPlain(source, from, to);
    // What begins with a letter was looked up already.
    boolean isFigure = source[from] <= '9' && !reading.isIdentity();
    if (folded == null
        || (isFigure && words.noValue(reading, source, from, to) != WordTable.NONE)) {
      return false;
    }
    into.text(reading.index(), folded);
    return true;
  }

  /** True if a bare 0 in this entry is taken for a blank, see {@link DoubtedZeros}. */
  public boolean doubtsZero(int entry) {
    return entries[entry].doubtsZero();
  }

  private void choose(RecordFiller into, int entry, int place) {
    into.choice(entry, place);
    if (zeros.isFlowing(entry)) {
      zeros.flows(into);
      flowing.disputed(into);
    }
  }

  /** What was read before under the same conditions; false if it was not, or was forgotten. */
  private boolean readAgain(
      RecordFiller into,
      EntryReading reading,
      byte[] source,
      int from,
      int to,
      @Nullable Unit bare,
      CellStyle style) {
    if (!style.sentinels().isEmpty() || reading.expected() == null) {
      return false;
    }
    @Nullable Reading amount = amounts.get(source, from, to, salt(reading, bare, style));
    if (amount != null) {
      fill(into, reading, amount, isFigureEnd(source[to - 1]));
    }
    return amount != null;
  }

  private static int salt(EntryReading reading, @Nullable Unit bare, CellStyle style) {
    int unit = bare == null ? 127 : bare.id();
    return (reading.index() << 10) | (unit << 3) | style.comma().ordinal();
  }

  /** Reads the text in full; what was made of it, if that is an amount by itself. */
  private @Nullable Reading readText(
      RecordFiller into, EntryReading reading, String text, @Nullable Unit bare, CellStyle style) {
    int entry = reading.index();
    if (NoResult.is(text)) {
      into.absent(entry, WellRecord.UNREADABLE, Note.NO_RESULT);
      return null;
    }
    int said = words.noValue(reading, text, style);
    if (said != WordTable.NONE) {
      absent(into, reading, said);
      return null;
    }
    switch (reading.kind()) {
      case TEXT -> {
        String folded = CellText.fold(text);
        into.text(entry, folded);
      }
      case LIST -> ListText.read(into, entry, catalogue.entry(entry).key(), text);
      case CHOICE, YES_NO -> {
        if (!flowing.readSaid(into, entry, text, style.comma())) {
          words.choice(into, reading, text);
        }
        if (into.record().isGiven(entry)) {
          choose(into, entry, (int) into.record().lo(entry));
        }
      }
      case DATE -> DateText.read(into, entry, text, style);
      default -> {
        return readAmount(into, reading, text, bare, style);
      }
    }
    return null;
  }

  private void absent(RecordFiller into, EntryReading reading, int said) {
    if (!flowing.keeps(into, reading.index())) {
      words.absent(into, reading.index(), said);
    }
  }

  private @Nullable Reading readAmount(
      RecordFiller into, EntryReading reading, String text, @Nullable Unit bare, CellStyle style) {
    if (flowing.read(into, reading, text, bare, style)) {
      if (reading.isWaterLevel()) {
        zeros.flows(into);
      }
      return null;
    }
    Expected expected = reading.expected();
    Reading result =
        expected == null || bare == null
            ? new Reading.Unreadable(Note.WRONG_DIMENSION)
            : AmountReader.read(text, expected, bare, style.comma());
    fill(into, reading, result, isFigureEnd(text.charAt(text.length() - 1)));
    return result;
  }

  /** True if no unit follows: the text ends with a figure or what may close one. */
  private static boolean isFigureEnd(int last) {
    return (last >= '0' && last <= '9') || last == '.' || last == ',';
  }

  private void fill(RecordFiller into, EntryReading reading, Reading result, boolean isBare) {
    int entry = reading.index();
    if (result instanceof Reading.Amount a) {
      boolean zero = a.lo() == 0 && a.hi() == 0 && a.note() == Note.NONE;
      // A size of wire that is no plain figure, such as 1/0, was written by somebody.
      if (zero && isBare && reading.doubtsZero() && reading.kind() != Kind.AWG) {
        zeros.fill(into, reading, a.halfPlace(), a.unit());
        return;
      }
      into.amount(entry, a.lo(), a.hi(), a.halfPlace(), a.unit(), a.note());
    } else if (result instanceof Reading.Unsure unsure) {
      into.absent(entry, WellRecord.UNKNOWN, unsure.note());
    } else {
      into.absent(entry, WellRecord.UNREADABLE, result.note());
    }
  }

  /** The unit of a bare number here; null if the column's unit is of the wrong dimension. */
  private static @Nullable Unit unit(
      EntryReading reading, @Nullable Unit columnUnit, UnitSystem recordSystem) {
    return columnUnit == null ? reading.unit(recordSystem) : reading.taken(columnUnit);
  }
}
