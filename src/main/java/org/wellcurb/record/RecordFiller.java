package org.wellcurb.record;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;

/**
 * Fills a record, once or again and again. The reader of cells turns text into values; this only
 * puts them in their place.
 */
public final class RecordFiller {
  private final WellRecord record;

  public RecordFiller(Catalogue catalogue) {
    record = new WellRecord(catalogue);
  }

  /** Empties the record for the next row. */
  public void clear(String file, long row) {
    Arrays.fill(record.state, WellRecord.UNKNOWN);
    Arrays.fill(record.lo, Double.NEGATIVE_INFINITY);
    Arrays.fill(record.hi, Double.POSITIVE_INFINITY);
    Arrays.fill(record.halfPlace, 0);
    Arrays.fill(record.unit, (byte) -1);
    Arrays.fill(record.note, (byte) 0);
    Arrays.fill(record.text, null);
    Arrays.fill(record.written, null);
    Arrays.fill(record.to, 0);
    record.layers = List.of();
    record.variances = List.of();
    record.extras = List::of;
    record.file = file;
    record.row = row;
  }

  /**
   * Takes over all that another record holds. Its texts still lie in its source, which must not
   * change while this one is in use.
   */
  public void copyOf(WellRecord other) {
    record.takeValues(other);
    record.takeExtras(other);
    int n = record.state.length;
    System.arraycopy(other.written, 0, record.written, 0, n);
    System.arraycopy(other.from, 0, record.from, 0, n);
    System.arraycopy(other.to, 0, record.to, 0, n);
    record.source = other.source;
  }

  /** The record as filled so far; the same object each time. */
  public WellRecord record() {
    return record;
  }

  /** An amount, in SI; {@code unit} is what it was written in. */
  public void amount(int entry, double lo, double hi, double halfPlace, Unit unit, Note note) {
    record.state[entry] = WellRecord.GIVEN;
    record.lo[entry] = lo;
    record.hi[entry] = hi;
    record.halfPlace[entry] = halfPlace;
    record.unit[entry] = (byte) unit.id();
    record.note[entry] = (byte) note.ordinal();
  }

  /**
   * Multiplies an amount that was read, where a form states it in tenths, say, or with the other
   * sign.
   */
  public void scale(int entry, double factor) {
    if (record.state[entry] == WellRecord.GIVEN) {
      double a = record.lo[entry] * factor + 0.0;
      double b = record.hi[entry] * factor + 0.0;
      record.lo[entry] = Math.min(a, b);
      record.hi[entry] = Math.max(a, b);
      record.halfPlace[entry] *= Math.abs(factor);
    }
  }

  /** Takes over what another record says of an entry. */
  public void take(int entry, WellRecord from) {
    record.state[entry] = from.state[entry];
    record.lo[entry] = from.lo[entry];
    record.hi[entry] = from.hi[entry];
    record.halfPlace[entry] = from.halfPlace[entry];
    record.unit[entry] = from.unit[entry];
    record.note[entry] = from.note[entry];
    record.text[entry] = from.text[entry];
    record.written[entry] = from.written(entry);
  }

  /** A date: days since 1970-01-01, both ends included. */
  public void date(int entry, double lo, double hi, Note note) {
    record.state[entry] = WellRecord.GIVEN;
    record.lo[entry] = lo;
    record.hi[entry] = hi;
    record.note[entry] = (byte) note.ordinal();
  }

  /** A choice, by its place in the catalogue; for yes-no 1 or 0. */
  public void choice(int entry, int place) {
    record.state[entry] = WellRecord.GIVEN;
    record.lo[entry] = place;
    record.hi[entry] = place;
    record.note[entry] = 0;
  }

  /** A choice or yes-no that another entry says; the note tells so. */
  public void implied(int entry, int place, Note note) {
    choice(entry, place);
    record.note[entry] = (byte) note.ordinal();
  }

  /** A text, trimmed and in lower case. */
  public void text(int entry, String folded) {
    record.state[entry] = WellRecord.GIVEN;
    record.text[entry] = folded;
    record.note[entry] = 0;
  }

  /** Unknown, not applicable or unreadable, with what is to be said of it. */
  public void absent(int entry, byte state, Note note) {
    record.state[entry] = state;
    record.lo[entry] = Double.NEGATIVE_INFINITY;
    record.hi[entry] = Double.POSITIVE_INFINITY;
    record.text[entry] = null;
    record.note[entry] = (byte) note.ordinal();
  }

  /** What stands in the source. */
  public void written(int entry, @Nullable String text) {
    record.written[entry] = text;
  }

  /** Where in {@code source} (UTF-8) it stands: nothing is copied until someone asks. */
  public void written(int entry, byte[] source, int from, int to) {
    record.source = source;
    record.from[entry] = from;
    record.to[entry] = to;
  }

  /** True if something was put into this entry, or stands where it is read from. */
  boolean has(int entry) {
    return record.state[entry] != WellRecord.UNKNOWN
        || record.to[entry] != 0
        || record.written[entry] != null;
  }

  /** What an entry that was empty before now holds, to be put there {@link #again}. */
  KeptCell keep(int entry, long head, long tail, int from) {
    return new KeptCell(
        head,
        tail,
        record.from[entry] - from,
        record.to[entry] - from,
        record.state[entry],
        record.lo[entry],
        record.hi[entry],
        record.halfPlace[entry],
        record.unit[entry],
        record.note[entry],
        record.text[entry]);
  }

  /** Fills an empty entry from a cell that was read before; this one stands at {@code from}. */
  void again(int entry, KeptCell cell, byte[] source, int from) {
    record.state[entry] = cell.state();
    record.lo[entry] = cell.lo();
    record.hi[entry] = cell.hi();
    record.halfPlace[entry] = cell.halfPlace();
    record.unit[entry] = cell.unit();
    record.note[entry] = cell.note();
    String text = cell.text();
    if (text != null) {
      record.text[entry] = text;
    }
    record.source = source;
    record.from[entry] = from + cell.before();
    record.to[entry] = from + cell.after();
  }

  public void layers(List<Layer> layers) {
    record.layers = List.copyOf(layers);
  }

  public void variances(List<Variance> variances) {
    record.variances = List.copyOf(variances);
  }

  public void extras(List<Extra> extras) {
    List<Extra> copy = List.copyOf(extras);
    record.extras = () -> copy;
  }

  /** What no entry names, made only when someone asks, and only before the next row. */
  public void extras(Supplier<List<Extra>> extras) {
    record.extras = extras;
  }
}
