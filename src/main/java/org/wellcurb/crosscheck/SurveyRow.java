package org.wellcurb.crosscheck;

import java.nio.ByteBuffer;
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
 * <p>The head of a row holds numbers at the places named here; after it comes one byte for each
 * entry of the catalogue, a mark of its value, 0 where nothing is given; then what the rules said.
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
  static final int YEAR = 76;
  static final int FLAGS = 78;
  static final int PACK = 80;
  static final int HEAD = 82;

  /** A rule of the kind deficiency falls short. */
  static final int DEFICIENT = 1;

  /** At least one rule of that kind could be told. */
  static final int TOLD = 2;

  /** The position is written finely enough to compare neighbours. */
  static final int PLACED = 4;

  /** Half of the last place of a latitude that is fine enough, in degrees: some 50 m. */
  private static final double FINE = 0.0005001;

  /** Metres of stated accuracy beyond which neighbours are not compared. */
  private static final double ACCURATE = 200;

  /** Fewest entries of a group that make it worth comparing. */
  private static final int FEW = 3;

  /** The group of each entry; less than 0 for those that belong to none. */
  private final byte[] groups;

  private final byte[] marks;
  private final byte[] said;
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
    said = new byte[Told.bytes(rules)];
    groups = new byte[catalogue.size()];
    marks = new byte[catalogue.size()];
    for (int i = 0; i < groups.length; i++) {
      groups[i] = (byte) (isIdentity(catalogue.entry(i)) ? -1 : i % GROUP_COUNT);
    }
    values = new int[Field.values().length];
    for (Field field : Field.values()) {
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
    return HEAD + groups.length + said.length;
  }

  /** Bytes of a row of records of this catalogue, judged by at most so many rules. */
  static int length(Catalogue catalogue, int rules) {
    return HEAD + catalogue.size() + Told.bytes(rules);
  }

  /**
   * Puts a record at the buffer's position, all but the codes of its groups.
   *
   * @param hashes of the values of its entries, as {@link RecordMark} has them
   */
  void put(ByteBuffer into, WellRecord record, int[] hashes, int flags) {
    int at = into.position();
    into.putLong(at + ID, RecordMark.of(record.id()));
    marks(into, at, record, hashes);
    boolean placed = isExact(record, latitude) && isExact(record, longitude);
    into.putFloat(at + LATITUDE, placed ? (float) record.lo(latitude) : Float.NaN);
    into.putFloat(at + LONGITUDE, placed ? (float) record.lo(longitude) : Float.NaN);
    into.putFloat(at + ELEVATION, exact(record, elevation));
    for (Field field : Field.values()) {
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
    into.put(at + FLAGS, (byte) (flags | (fine ? PLACED : 0)));
    into.position(at + length());
  }

  /** Puts what the rules of a pack said into the row that begins there. */
  void told(ByteBuffer into, int at, int pack, byte[] told) {
    Told.put(said, told);
    into.putShort(at + PACK, (short) pack);
    into.put(at + HEAD + groups.length, said);
  }

  /** A byte for each entry, and hashes of four groups of entries. */
  private void marks(ByteBuffer into, int at, WellRecord record, int[] values) {
    int[] hashes = new int[GROUP_COUNT];
    int[] given = new int[GROUP_COUNT];
    for (int i = 0; i < groups.length; i++) {
      int mark = 0;
      if (record.isGiven(i)) {
        int hash = values[i];
        mark = 1 + (int) ((hash & 0xFFFFFFFFL) % 255);
        int group = groups[i];
        if (group >= 0) {
          given[group]++;
          hashes[group] = hashes[group] * 0x01000193 + hash + i;
        }
      }
      marks[i] = (byte) mark;
    }
    into.put(at + HEAD, marks);
    for (int group = 0; group < GROUP_COUNT; group++) {
      int hash = given[group] < FEW ? 0 : hashes[group] | 1;
      into.putInt(at + GROUPS + 4 * group, hash);
    }
  }

  /** Entries that tell records apart, or that all records of a batch share. */
  static boolean isIdentity(Entry entry) {
    return entry.key().startsWith("record.") || entry.key().equals("well.tag");
  }

  private static boolean isExact(WellRecord record, int entry) {
    return record.isGiven(entry) && record.lo(entry) == record.hi(entry);
  }

  /** The value in SI; NaN where it is not a single one. */
  private static float exact(WellRecord record, int entry) {
    return isExact(record, entry) ? (float) record.lo(entry) : Float.NaN;
  }

  /**
   * The figure as it stands on the form, in the field's unit of the system that it was written in.
   */
  private static float written(WellRecord record, int entry, Field field) {
    if (!isExact(record, entry)) {
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
