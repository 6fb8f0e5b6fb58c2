package org.wellcurb.record;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Comma;
import org.wellcurb.quantity.Expected;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.PlainNumber;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;

/** The quick way for a plain number and a number with a usual unit behind it. */
final class PlainAmount {
  private PlainAmount() {}

  /**
   * Reads the bytes and fills the entry; false, with nothing filled, if they have another shape.
   */
  static boolean read(
      RecordFiller into,
      EntryReading reading,
      PlainNumber number,
      byte[] source,
      int from,
      int to,
      Unit bare,
      CellStyle style,
      DoubtedZeros zeros) {
    int end = numberEnd(source, from, to);
    if (end == from || !number.read(source, from, end)) {
      return false;
    }
    boolean decimal =
        style.comma() == Comma.DECIMAL
            || style.comma() == Comma.NEITHER
            || (style.comma() == Comma.STORED && end < to);
    if (decimal && number.places() == 3) {
      return false;
    }
    Unit unit = bare;
    if (end < to) {
      @Nullable Unit taken = taken(reading, source, end, to);
      if (taken == null) {
        return false;
      }
      unit = taken;
    }
    boolean sizeOfZeros = reading.kind() == Kind.AWG && source[from] == '0' && end - from > 1;
    @Nullable DoubtedZeros doubted = end == to && reading.doubtsZero() ? zeros : null;
    return !sizeOfZeros && fill(into, reading, number, unit, style, doubted);
  }

  private static boolean fill(
      RecordFiller into,
      EntryReading reading,
      PlainNumber number,
      Unit unit,
      CellStyle style,
      @Nullable DoubtedZeros doubted) {
    double value = number.value();
    int entry = reading.index();
    if (!style.sentinels().isEmpty() && style.sentinels().holds(value)) {
      into.absent(entry, WellRecord.UNKNOWN, Note.SENTINEL);
      return true;
    }
    Expected expected = reading.expected();
    if (expected == null || unit.isReversed()) {
      return false;
    }
    double si = unit.toSi(value) + 0.0;
    Note problem = expected.problem(si, unit);
    if (problem != Note.NONE) {
      into.absent(entry, WellRecord.UNREADABLE, problem);
      return true;
    }
    double half = PlainNumber.halfPlace(number.places()) * unit.factor();
    if (value == 0 && doubted != null) {
      doubted.fill(into, reading, half, unit);
      return true;
    }
    into.amount(entry, si, si, half, unit, Note.NONE);
    return true;
  }

  private static @Nullable Unit taken(EntryReading reading, byte[] source, int from, int to) {
    int at = from;
    while (at < to && source[at] == ' ') {
      at++;
    }
    @Nullable Unit written = Units.named(source, at, to);
    return written == null ? null : reading.taken(written);
  }

  private static int numberEnd(byte[] source, int from, int to) {
    int at = from;
    if (at < to && source[at] == '-') {
      at++;
    }
    while (at < to && ((source[at] >= '0' && source[at] <= '9') || source[at] == '.')) {
      at++;
    }
    return at;
  }
}
