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
  private final PlainNumber number = new PlainNumber();

  public CellReader(Catalogue catalogue) {
    this.catalogue = catalogue;
    entries = new EntryReading[catalogue.size()];
    for (Entry entry : catalogue.entries()) {
      entries[entry.index()] = new EntryReading(entry);
    }
    words = new WordReader();
    flowing = new FlowingWords(catalogue);
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
    byte[] source = trimmed.getBytes(StandardCharsets.UTF_8);
    if (!readPlain(into, reading, source, 0, source.length, columnUnit, recordSystem, style)) {
      readText(into, reading, trimmed, columnUnit, recordSystem, style);
    }
  }

  /**
   * Reads a cell of UTF-8 bytes, {@code source[from, to)}. The record keeps the place of what is
   * written, not a copy: {@code source} must not change while the record is in use.
   */
  public void read(
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
      return;
    }
    EntryReading reading = entries[entry];
    if (readPlain(into, reading, source, start, end, columnUnit, recordSystem, style)) {
      into.written(entry, source, start, end);
      return;
    }
    String text = CellText.trim(new String(source, start, end - start, StandardCharsets.UTF_8));
    if (text.isEmpty()) {
      return;
    }
    into.written(entry, source, start, end);
    readText(into, reading, text, columnUnit, recordSystem, style);
  }

  /** The shapes that nearly all cells have; false if it is none of them. */
  private boolean readPlain(
      RecordFiller into,
      EntryReading reading,
      byte[] source,
      int from,
      int to,
      @Nullable Unit columnUnit,
      UnitSystem recordSystem,
      CellStyle style) {
    return switch (reading.kind()) {
      case TEXT, LIST -> false;
      case CHOICE, YES_NO ->
          style.sentinels().isEmpty() && words.choice(into, reading, source, from, to);
      case DATE -> DateText.readPlain(into, reading.index(), source, from, to, style);
      default -> {
        Expected expected = reading.expected();
        Unit unit = unit(reading, columnUnit, recordSystem);
        yield expected != null
            && unit != null
            && PlainAmount.read(into, reading, number, source, from, to, unit, style);
      }
    };
  }

  private void readText(
      RecordFiller into,
      EntryReading reading,
      String text,
      @Nullable Unit columnUnit,
      UnitSystem recordSystem,
      CellStyle style) {
    int entry = reading.index();
    int said = words.noValue(reading, text, style);
    if (said != WordTable.NONE) {
      if (!flowing.keeps(into, entry)) {
        words.absent(into, entry, said);
      }
      return;
    }
    switch (reading.kind()) {
      case TEXT -> into.text(entry, CellText.fold(text));
      case LIST -> ListText.read(into, entry, catalogue.entry(entry).key(), text);
      case CHOICE, YES_NO -> words.choice(into, reading, text);
      case DATE -> DateText.read(into, entry, text, style);
      default -> readAmount(into, reading, text, columnUnit, recordSystem, style);
    }
  }

  private void readAmount(
      RecordFiller into,
      EntryReading reading,
      String text,
      @Nullable Unit columnUnit,
      UnitSystem recordSystem,
      CellStyle style) {
    int entry = reading.index();
    Expected expected = reading.expected();
    Unit bare = unit(reading, columnUnit, recordSystem);
    if (flowing.read(into, reading, text, bare, style)) {
      return;
    }
    if (expected == null || bare == null) {
      into.absent(entry, WellRecord.UNREADABLE, Note.WRONG_DIMENSION);
      return;
    }
    Reading result = AmountReader.read(text, expected, bare, style.comma());
    if (result instanceof Reading.Amount a) {
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
