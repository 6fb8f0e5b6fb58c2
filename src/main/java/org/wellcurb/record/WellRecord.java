package org.wellcurb.record;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;

/**
 * What one form says of one installation: arrays over the catalogue, all amounts in SI units.
 *
 * <p>A record is filled by a {@link RecordFiller}. The bulk reader fills one record again and
 * again; whoever keeps it beyond the row takes a {@link #copy()}. Nothing here changes after it is
 * filled, so a copy may be shared between threads.
 *
 * <p>For entries of kind choice, {@link #lo} is the place of the choice; for yes-no it is 1 or 0;
 * for dates the ends are days since 1970-01-01; for text see {@link #text}.
 */
public final class WellRecord {
  /** Blank, or said to be unknown. */
  public static final byte UNKNOWN = 0;

  /** A value was read, exact or as a range. */
  public static final byte GIVEN = 1;

  /** Said not to apply. */
  public static final byte NOT_APPLICABLE = 2;

  /** Something is written that could not be read: quoted, and treated as unknown. */
  public static final byte UNREADABLE = 3;

  final Catalogue catalogue;
  final byte[] state;
  final double[] lo;
  final double[] hi;
  final double[] halfPlace;
  final byte[] unit;
  final byte[] note;
  final @Nullable String[] text;
  final @Nullable String[] written;
  final int[] from;
  final int[] to;
  byte[] source = new byte[0];
  List<Layer> layers = List.of();
  List<Variance> variances = List.of();
  Supplier<List<Extra>> extras = List::of;
  String file = "";
  long row;

  WellRecord(Catalogue catalogue) {
    this.catalogue = catalogue;
    int n = catalogue.size();
    state = new byte[n];
    lo = new double[n];
    hi = new double[n];
    halfPlace = new double[n];
    unit = new byte[n];
    note = new byte[n];
    text = new @Nullable String[n];
    written = new @Nullable String[n];
    from = new int[n];
    to = new int[n];
    Arrays.fill(lo, Double.NEGATIVE_INFINITY);
    Arrays.fill(hi, Double.POSITIVE_INFINITY);
    Arrays.fill(unit, (byte) -1);
  }

  public Catalogue catalogue() {
    return catalogue;
  }

  /** One of {@link #UNKNOWN}, {@link #GIVEN}, {@link #NOT_APPLICABLE}, {@link #UNREADABLE}. */
  public byte state(int entry) {
    return state[entry];
  }

  /** Copies the states of all entries. */
  public void statesInto(byte[] into) {
    System.arraycopy(state, 0, into, 0, state.length);
  }

  public boolean isGiven(int entry) {
    return state[entry] == GIVEN;
  }

  /** True for an amount or a date that is one figure, and no range. */
  public boolean isPoint(int entry) {
    return isGiven(entry) && lo(entry) == hi(entry);
  }

  /** True if no part of what is given for an entry is within the range that real wells stay in. */
  public boolean isFarOff(Entry entry) {
    int i = entry.index();
    return isGiven(i) && (hi(i) < entry.plausible().lo() || lo(i) > entry.plausible().hi());
  }

  /** The entries that are so, in the order of the catalogue. */
  public List<Entry> farOff() {
    return catalogue.entries().stream().filter(this::isFarOff).toList();
  }

  /** Least value in SI; minus infinity where nothing is known. */
  public double lo(int entry) {
    return lo[entry];
  }

  /** Greatest value in SI; infinity where nothing is known. */
  public double hi(int entry) {
    return hi[entry];
  }

  /** The value as an interval in SI, as written (not reduced to ground). */
  public Interval interval(int entry) {
    return new Interval(lo[entry], hi[entry]);
  }

  /**
   * Half a unit of the last written decimal place, in SI; 0 where there is none (fractions,
   * ranges).
   */
  public double halfPlace(int entry) {
    return halfPlace[entry];
  }

  /**
   * The unit that the value was written in, or its column's, or the record's; null for words and
   * dates.
   */
  public @Nullable Unit unit(int entry) {
    return unit[entry] < 0 ? null : Units.at(unit[entry]);
  }

  /** The id of that unit; negative for none. */
  public int unitId(int entry) {
    return unit[entry];
  }

  /** The unit system that the value was written in. */
  public UnitSystem system(int entry) {
    return unit[entry] < 0 ? UnitSystem.NEUTRAL : Units.systemAt(unit[entry]);
  }

  /** What is to be said about how the cell was read. */
  public Note note(int entry) {
    return Note.at(note[entry]);
  }

  /** The ordinal of that note. */
  public int noteId(int entry) {
    return note[entry];
  }

  /** The text of a text entry, trimmed and in lower case (for comparison), or null. */
  public @Nullable String text(int entry) {
    return text[entry];
  }

  /** A text as written, or what it stands for where a header map has something else for it. */
  public String meant(int entry) {
    String written = written(entry);
    String folded = text[entry];
    return folded == null || folded.equals(CellText.fold(written)) ? written : folded;
  }

  /** The choice of a choice entry, as the catalogue writes it, or null. */
  public @Nullable String choice(int entry) {
    return state[entry] == GIVEN && catalogue.entry(entry).kind() == Kind.CHOICE
        ? catalogue.entry(entry).choices().get((int) lo[entry])
        : null;
  }

  /** What stands in the source, outer blanks removed; empty where nothing does. */
  public String written(int entry) {
    String kept = written[entry];
    if (kept != null) {
      return kept;
    }
    return to[entry] > from[entry]
        ? new String(
            source, from[entry], to[entry] - from[entry], java.nio.charset.StandardCharsets.UTF_8)
        : "";
  }

  /** A hash of what stands in the source, the same wherever it lies: see {@link #hash}. */
  public int writtenHash(int entry) {
    String kept = written[entry];
    if (kept != null) {
      byte[] bytes = kept.getBytes(java.nio.charset.StandardCharsets.UTF_8);
      return hash(bytes, 0, bytes.length);
    }
    return hash(source, from[entry], to[entry]);
  }

  /** A hash of UTF-8 bytes. */
  public static int hash(byte[] bytes, int from, int to) {
    int hash = 1;
    for (int i = from; i < to; i++) {
      hash = 31 * hash + bytes[i];
    }
    return hash ^ (hash >>> 15);
  }

  /** True if what stands in the source is this text, as UTF-8. */
  public boolean isWrittenAs(int entry, byte[] text) {
    String kept = written[entry];
    if (!isWritten(entry)) {
      return text.length == 0;
    }
    return kept == null
        ? Arrays.equals(source, from[entry], to[entry], text, 0, text.length)
        : Arrays.equals(kept.getBytes(java.nio.charset.StandardCharsets.UTF_8), text);
  }

  /**
   * One of the first two numbers of a date of figures that begins with the day or the month, such
   * as {@code 03/25/2001}; -1 where something else is written.
   *
   * @param place 0 or 1
   */
  public int writtenFigures(int entry, int place) {
    int at = from[entry];
    int end = to[entry];
    String kept = written[entry];
    if (kept != null) {
      at = 0;
      end = kept.length();
    }
    for (int number = 0; ; number++) {
      int start = at;
      int value = 0;
      while (at < end && at - start < 3 && isDigit(letter(kept, at))) {
        value = 10 * value + letter(kept, at++) - '0';
      }
      boolean part = at > start && at - start <= 2 && at < end && isBetween(letter(kept, at));
      if (!part || number == place) {
        return part ? value : -1;
      }
      at++;
    }
  }

  private int letter(@Nullable String kept, int at) {
    return kept == null ? source[at] : kept.charAt(at);
  }

  private static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isBetween(int c) {
    return c == '/' || c == '-' || c == '.';
  }

  /** True if something stands in the source. */
  public boolean isWritten(int entry) {
    String kept = written[entry];
    return kept == null ? to[entry] > from[entry] : !kept.isEmpty();
  }

  /**
   * True if what stands in the source lies in {@link #source} from {@link #writtenFrom} to {@link
   * #writtenTo}, as UTF-8 that may be unsound.
   */
  public boolean liesInSource(int entry) {
    return written[entry] == null && to[entry] > from[entry];
  }

  /** True if nothing but nines stands in the source, at least three: {@code 999}. */
  public boolean isNines(int entry) {
    if (!liesInSource(entry)) {
      return written(entry).length() >= 3 && written(entry).chars().allMatch(c -> c == '9');
    }
    if (source[from[entry]] != '9' || to[entry] - from[entry] < 3) {
      return false;
    }
    for (int i = from[entry]; i < to[entry]; i++) {
      if (source[i] != '9') {
        return false;
      }
    }
    return true;
  }

  /** The bytes in which cells lie; not to be changed. */
  public byte[] source() {
    return source;
  }

  public int writtenFrom(int entry) {
    return from[entry];
  }

  public int writtenTo(int entry) {
    return to[entry];
  }

  /** The authority's number for this record, as written. */
  public String id() {
    return written(0);
  }

  public List<Layer> layers() {
    return layers;
  }

  public List<Variance> variances() {
    return variances;
  }

  /** Columns and keys that no entry names. */
  public List<Extra> extras() {
    return extras.get();
  }

  /**
   * The input that it came from: path relative to the argument given, {@code a.zip!b.csv} for a
   * member.
   */
  public String file() {
    return file;
  }

  /**
   * The row in that file: for CSV the physical line on which it starts (the header is 1), for JSON
   * lines the line, for a JSON array the place of the object, from 1.
   */
  public long row() {
    return row;
  }

  /** A record of its own, which does not change when this one is filled again. */
  public WellRecord copy() {
    WellRecord copy = new WellRecord(catalogue);
    copy.takeValues(this);
    copy.takeExtras(this);
    int n = state.length;
    for (int i = 0; i < n; i++) {
      if (written[i] != null || to[i] > from[i]) {
        copy.written[i] = written(i);
      }
    }
    return copy;
  }

  /** Takes over all that another record holds, but for its extras and what stands in its source. */
  void takeValues(WellRecord other) {
    int n = state.length;
    System.arraycopy(other.state, 0, state, 0, n);
    System.arraycopy(other.lo, 0, lo, 0, n);
    System.arraycopy(other.hi, 0, hi, 0, n);
    System.arraycopy(other.halfPlace, 0, halfPlace, 0, n);
    System.arraycopy(other.unit, 0, unit, 0, n);
    System.arraycopy(other.note, 0, note, 0, n);
    System.arraycopy(other.text, 0, text, 0, n);
    layers = other.layers;
    variances = other.variances;
    file = other.file;
    row = other.row;
  }

  /** Takes over the extras of another record, which are made for it now. */
  void takeExtras(WellRecord other) {
    List<Extra> kept = List.copyOf(other.extras.get());
    extras = () -> kept;
  }
}
