package org.wellcurb.crosscheck;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.RecordMark;
import org.wellcurb.record.WellRecord;

/**
 * How a record is kept until the whole batch is known: a row of fixed length, written to a file, so
 * that the memory needed while records are screened does not grow with the batch.
 *
 * <p>The head of a row holds numbers at the places named here; after it comes what the rules said.
 * Marks of the values of its entries, of 32 bits each, stand apart, for the entries that say
 * something only: their number, then the place of each in the catalogue and its mark.
 */
final class SurveyRow {
  static final int ID = 0;
  static final int GROUPS = 8;
  static final int GROUP_COUNT = 4;
  static final int LATITUDE = 24;
  static final int LONGITUDE = 28;
  static final int ELEVATION = 32;
  static final int VALUES = 36;
  static final int WRITTEN = 48;
  static final int CONTRACTOR = 60;
  static final int ZONE = 64;
  static final int FILE = 68;
  static final int LINE = 72;
  static final int MARKS = 76;
  static final int WHOLE = 80;
  static final int DAYS = 84;
  static final int YEAR = 88;
  static final int FLAGS = 90;
  static final int PACK = 92;
  static final int HEAD = 94;

  /** Bytes of the number of marks, and of one mark. */
  static final int MARK_COUNT = 2;

  static final int MARK = 6;

  /** What has a mark behind all entries: the layers, and the variances. */
  static final List<String> BESIDE = List.of("layers", "variances");

  /** Added to the number of a day: no day has the mark 0. */
  private static final int DAY = 1 << 29;

  /** A rule of the kind deficiency falls short. */
  static final int DEFICIENT = 1;

  /** At least one rule of that kind could be told. */
  static final int TOLD = 2;

  /** The position is written finely enough to compare neighbours. */
  static final int PLACED = 4;

  /** So much is measured that near copies may differ in one thing more. */
  static final int MUCH = 8;

  /** Half of the last place of a latitude that is fine enough, in degrees: some 50 m. */
  private static final double FINE = 0.0005001;

  /** Metres of stated accuracy beyond which neighbours are not compared. */
  private static final double ACCURATE = 200;

  private static final Field[] FIELDS = Field.values();

  /** Fewest measured entries that make a group worth comparing. */
  private static final int FEW = 3;

  /** Fewest measured entries of a record that may be said to be the same as another. */
  static final int FEW_OF_SAME = 2;

  /** Into which of four parts each measured entry falls; less than 0 for all others. */
  private final byte[] parts;

  private final int[] ofPart = new int[GROUP_COUNT];
  private final int[] given = new int[GROUP_COUNT];
  private final byte[] told;

  /** The entries of the record at hand that say something, in order. */
  private final int[] said;

  private int saidCount;
  private final boolean[] isIdentity;
  private final DaysBetween days;
  private final int[] dates;
  private final int[] dayMarks;
  private final int[] values;
  private final int latitude;
  private final int longitude;
  private final int elevation;
  private final int accuracy;
  private final int completed;

  /**
   * @param rules rules of the longest pack
   */
  SurveyRow(Catalogue catalogue, int rules) {
    told = new byte[Told.bytes(rules)];
    parts = new byte[catalogue.size()];
    said = new int[parts.length];
    isIdentity = new boolean[parts.length];
    days = new DaysBetween(catalogue);
    dates = days.dates();
    dayMarks = new int[parts.length];
    int measured = 0;
    for (int i = 0; i < parts.length; i++) {
      isIdentity[i] = isIdentity(catalogue.entry(i));
      parts[i] = (byte) (isMeasured(catalogue.entry(i)) ? measured++ % GROUP_COUNT : -1);
    }
    values = new int[FIELDS.length];
    for (Field field : FIELDS) {
      values[field.ordinal()] = catalogue.index(field.key());
    }
    latitude = catalogue.index("site.latitude");
    longitude = catalogue.index("site.longitude");
    elevation = catalogue.index("site.elevation");
    accuracy = catalogue.index("site.position_accuracy");
    completed = catalogue.index("dates.completed");
  }

  /** Bytes of a row. */
  int length() {
    return HEAD + told.length;
  }

  /** Bytes of a row of records that are judged by at most so many rules. */
  static int length(int rules) {
    return HEAD + Told.bytes(rules);
  }

  /** Bytes that the marks of a record of this catalogue take, at most. */
  static int marksLength(Catalogue catalogue) {
    return MARK_COUNT + MARK * (catalogue.size() + BESIDE.size());
  }

  /**
   * Puts a record at the buffer's position, all but the codes of its groups.
   *
   * @param hashes of the values of its entries, as {@link RecordMark} has them
   */
  void put(ByteBuffer into, WellRecord record, int[] hashes, int flags) {
    int at = into.position();
    into.putLong(at + ID, RecordMark.of(record.id()));
    look(record);
    int measured = groups(into, at, hashes);
    boolean placed = record.isPoint(latitude) && record.isPoint(longitude);
    boolean isTold = placed && record.isGiven(completed) && measured >= FEW_OF_SAME;
    into.putInt(at + WHOLE, isTold ? whole(hashes) : 0);
    into.putInt(at + DAYS, days(record, hashes));
    into.putFloat(at + LATITUDE, placed ? (float) record.lo(latitude) : Float.NaN);
    into.putFloat(at + LONGITUDE, placed ? (float) record.lo(longitude) : Float.NaN);
    into.putFloat(at + ELEVATION, exact(record, elevation));
    for (Field field : FIELDS) {
      int entry = values[field.ordinal()];
      into.putFloat(at + VALUES + 4 * field.ordinal(), exact(record, entry));
      into.putFloat(at + WRITTEN + 4 * field.ordinal(), written(record, entry, field));
    }
    into.putInt(at + LINE, (int) Math.min(Integer.MAX_VALUE, record.row()));
    into.putShort(at + YEAR, year(record));
    boolean fine =
        placed
            && record.halfPlace(latitude) <= FINE
            && !(record.isGiven(accuracy) && record.hi(accuracy) > ACCURATE);
    int much = measured >= Alike.LEAST_MEASURED_OF_MUCH ? MUCH : 0;
    into.put(at + FLAGS, (byte) (flags | (fine ? PLACED : 0) | much));
    into.position(at + length());
  }

  /** Puts what the rules of a pack said into the row that begins there. */
  void told(ByteBuffer into, int at, int pack, byte[] byRule) {
    Told.put(told, byRule);
    into.putShort(at + PACK, (short) pack);
    into.put(at + HEAD, told);
  }

  /** Finds out which entries say something: the rest of the catalogue is passed over once. */
  private void look(WellRecord record) {
    int count = 0;
    for (int i = 0; i < said.length; i++) {
      if (record.state(i) != WellRecord.UNKNOWN) {
        said[count++] = i;
      }
    }
    saidCount = count;
  }

  /**
   * Four hashes, each of the measured entries of all parts but one: two records that differ in one
   * of these agree in the hash that leaves out its part.
   *
   * @return how many measured entries are given
   */
  private int groups(ByteBuffer into, int at, int[] hashes) {
    Arrays.fill(ofPart, 0);
    Arrays.fill(given, 0);
    int all = 0;
    for (int k = 0; k < saidCount; k++) {
      int i = said[k];
      int part = parts[i];
      if (part >= 0) {
        ofPart[part] = ofPart[part] * 0x01000193 + hashes[i] + i;
        given[part]++;
        all++;
      }
    }
    for (int group = 0; group < GROUP_COUNT; group++) {
      int hash = 1;
      for (int part = 0; part < GROUP_COUNT; part++) {
        hash = hash * 0x01000193 + (part == group ? 0 : ofPart[part]);
      }
      into.putInt(at + GROUPS + 4 * group, all - given[group] < FEW ? 0 : hash | 1);
    }
    return all;
  }

  /** A hash of all entries but those that tell records apart. */
  private int whole(int[] hashes) {
    int hash = 1;
    for (int k = 0; k < saidCount; k++) {
      int i = said[k];
      if (!isIdentity[i]) {
        hash = (hash * 0x01000193 + hashes[i]) * 0x01000193 + i;
      }
    }
    return hash | 1;
  }

  /**
   * Puts the marks of what the record that was {@link #put} says at the buffer's position. The mark
   * of a day is its number, so that the days between two dates can be told.
   */
  void marks(ByteBuffer into, WellRecord record, int[] hashes) {
    int start = into.position();
    into.position(start + MARK_COUNT);
    for (int k = 0; k < saidCount; k++) {
      int i = said[k];
      into.putShort((short) i).putInt(mark(record, hashes, i));
    }
    beside(into, hashes.length, record.layers());
    beside(into, hashes.length + 1, record.variances());
    into.putShort(start, (short) ((into.position() - start - MARK_COUNT) / MARK));
  }

  private int mark(WellRecord record, int[] hashes, int entry) {
    boolean isDay = days.isDate(entry) && record.isPoint(entry);
    int mark = isDay ? DAY + (int) record.lo(entry) : hashes[entry];
    return mark == 0 ? 1 : mark;
  }

  /** What {@link DaysBetween#key} says of its dates. */
  private int days(WellRecord record, int[] hashes) {
    for (int date : dates) {
      boolean isSaid = record.state(date) != WellRecord.UNKNOWN;
      dayMarks[date] = isSaid ? mark(record, hashes, date) : 0;
    }
    return days.key(dayMarks);
  }

  private static void beside(ByteBuffer into, int place, List<?> all) {
    if (!all.isEmpty()) {
      long mark = RecordMark.of(all.stream().map(Object::toString).toArray(String[]::new));
      into.putShort((short) place).putInt((int) (mark >>> 32) | 1);
    }
  }

  /** Depths, levels and flows: what differs from well to well, however alike their fittings. */
  static boolean isMeasured(Entry entry) {
    return entry.datum().isMovable() || Dimension.FLOW.equals(entry.kind().dimension());
  }

  /** Entries that tell records apart, or that all records of a batch share. */
  static boolean isIdentity(Entry entry) {
    return entry.key().startsWith("record.") || entry.key().equals("well.tag");
  }

  /** The value in SI; NaN where it is not a single one. */
  private static float exact(WellRecord record, int entry) {
    return record.isPoint(entry) ? (float) record.lo(entry) : Float.NaN;
  }

  /**
   * The figure as it stands on the form, in the field's unit of the system that it was written in.
   */
  private static float written(WellRecord record, int entry, Field field) {
    if (!record.isPoint(entry)) {
      return Float.NaN;
    }
    Unit unit = record.unit(entry);
    UnitSystem system = unit == null ? UnitSystem.US : unit.system();
    double figure = record.lo(entry) / field.unit(system).factor();
    return (float) (Math.rint(figure * 1000) / 1000);
  }

  private short year(WellRecord record) {
    if (!record.isGiven(completed) || Double.isInfinite(record.lo(completed))) {
      return 0;
    }
    return (short) java.time.LocalDate.ofEpochDay((long) record.lo(completed)).getYear();
  }
}
