package org.wellcurb.intake;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;

/**
 * What reading one chunk of a table met, cell by cell. Tallies of one input add up to the same
 * figures however it was cut; doubts want the order of the file.
 */
public final class ChunkTally {
  /** Nothing stands in the cell. */
  public static final int BLANK = 0;

  /** A word that says it is not known, or a value that means so. */
  public static final int UNKNOWN = 1;

  public static final int GIVEN = 2;
  public static final int NOT_APPLICABLE = 3;

  /** What could not be read, or could in two ways, so that it was not. */
  public static final int UNREADABLE = 4;

  /** Most names that are counted one by one. */
  private static final int MOST_NAMES = 500;

  private static final int STATES = 5;
  private static final int NOTES = Note.values().length;
  private static final int UNITS = Units.all().size();
  private static final boolean[] WORDS = words();

  private final int columns;
  private final long[] states;
  private final long[] notes;
  private final long[] units;
  private final long[] unsaid;
  private final long[] ofMap;
  private final long[] contradicting;
  private final long[] differing;
  private final @Nullable ColumnDoubts[] doubts;
  private final @Nullable CodeCounts[] codes;
  private final Map<String, Long> unknown = new TreeMap<>(Inputs.CODE_POINTS);
  private long moreUnknown;
  private long records;
  private long setAside;
  private long leftOut;
  private long joined;
  private long beyond;
  private long lost;
  private long firstLost;
  private boolean broken;

  ChunkTally(int columns) {
    this.columns = columns;
    this.states = new long[columns * STATES];
    this.notes = new long[columns * NOTES];
    this.units = new long[columns * UNITS];
    this.unsaid = new long[columns];
    this.ofMap = new long[columns];
    this.contradicting = new long[columns];
    this.differing = new long[columns];
    this.doubts = new @Nullable ColumnDoubts[columns];
    this.codes = new @Nullable CodeCounts[columns];
  }

  private static boolean[] words() {
    Catalogue catalogue = Catalogue.standard();
    boolean[] words = new boolean[catalogue.size()];
    catalogue.entries().forEach(entry -> words[entry.index()] = CodeCounts.isWord(entry));
    return words;
  }

  /** Rows that became records. */
  public long records() {
    return records;
  }

  /** Rows set aside. */
  public long setAside() {
    return setAside;
  }

  /** Rows that the header map does not want. */
  public long rowsLeftOut() {
    return leftOut;
  }

  /** Rows that went into the record of another row. */
  public long rowsJoined() {
    return joined;
  }

  /** Rows read: every row that is wanted is a record, part of one, or set aside. */
  public long rows() {
    return records + joined + setAside;
  }

  /** Rows that end with an empty cell more than the header has. */
  public long rowsEndedBeyond() {
    return beyond;
  }

  /** Rows with bytes that are no character in the encoding of the file. */
  public long rowsWithLostCharacters() {
    return lost;
  }

  /** The line of the first of them; 0 if there is none. */
  public long firstLostCharacter() {
    return firstLost;
  }

  /** True if the input breaks off, so that rows behind the last are missing. */
  public boolean isBrokenOff() {
    return broken;
  }

  /** Cells of a column in one of the states above. */
  public long cells(int column, int state) {
    return states[column * STATES + state];
  }

  /** Cells of a column of which this is to be said. */
  public long notes(int column, Note note) {
    return notes[column * NOTES + note.ordinal()];
  }

  /** Cells of a column whose value was written in this unit, in the cell or by default. */
  public long units(int column, Unit unit) {
    return units[column * UNITS + unit.id()];
  }

  /**
   * Bare numbers of a column whose unit another column states row by row, in rows where that one is
   * blank: nothing states their unit. They are not among the {@link #units}.
   */
  public long unitsUnsaid(int column) {
    return unsaid[column];
  }

  /** The same where the header map or the record states the unit for such rows. */
  public long unitsOfMap(int column) {
    return ofMap[column];
  }

  /** Cells of a column that state another unit than the column of units does in their row. */
  public long unitsContradicting(int column) {
    return contradicting[column];
  }

  /** Records of several rows that say different things in a column of which the first counts. */
  public long rowsDiffering(int column) {
    return differing[column];
  }

  /** What makes one doubt how a column is read; null if no entry was ever filled from it. */
  public @Nullable ColumnDoubts doubts(int column) {
    return doubts[column];
  }

  /** The codes of a column; null if none was counted. */
  public @Nullable CodeCounts codes(int column) {
    return codes[column];
  }

  /** How often each name of a JSON record was met that no entry has. */
  public Map<String, Long> unknownNames() {
    return Collections.unmodifiableMap(unknown);
  }

  /** How often other such names were met, beyond those counted one by one. */
  public long moreUnknownNames() {
    return moreUnknown;
  }

  /** Adds the counts of a tally of later rows of the same input. */
  public void add(ChunkTally other) {
    records += other.records;
    setAside += other.setAside;
    leftOut += other.leftOut;
    joined += other.joined;
    beyond += other.beyond;
    firstLost = firstLost == 0 ? other.firstLost : firstLost;
    lost += other.lost;
    broken |= other.broken;
    moreUnknown += other.moreUnknown;
    other.unknown.forEach((name, n) -> unknown(name, n));
    for (int i = 0; i < states.length; i++) {
      states[i] += other.states[i];
    }
    for (int i = 0; i < notes.length; i++) {
      notes[i] += other.notes[i];
    }
    for (int i = 0; i < units.length; i++) {
      units[i] += other.units[i];
    }
    for (int i = 0; i < columns; i++) {
      unsaid[i] += other.unsaid[i];
      ofMap[i] += other.ofMap[i];
      contradicting[i] += other.contradicting[i];
      differing[i] += other.differing[i];
      ColumnDoubts later = other.doubts[i];
      if (later != null) {
        doubtsOf(i).add(later);
      }
      CodeCounts more = other.codes[i];
      if (more != null) {
        codesOf(i).add(more);
      }
    }
  }

  void record() {
    records++;
  }

  void asideRow() {
    setAside++;
  }

  void brokenOff() {
    broken = true;
  }

  void leftOut() {
    leftOut++;
  }

  void joined() {
    joined++;
  }

  void endedBeyond() {
    beyond++;
  }

  void lostCharacters(long line) {
    firstLost = firstLost == 0 ? line : firstLost;
    lost++;
  }

  void blank(int column) {
    states[column * STATES]++;
  }

  /** Counts what became of a cell. */
  void cell(int column, WellRecord record, int entry) {
    counted(column, record, entry);
    doubtsOf(column).see(record, entry);
    if (CodeCounts.counts(record, entry, WORDS[entry])) {
      codesOf(column).see(record, entry);
    }
  }

  /** The same of a cell that fills no entry of its own, whose plausible range nobody knows. */
  void counted(int column, WellRecord record, int entry) {
    int state = record.state(entry);
    int note = record.noteId(entry);
    boolean isUnsure = state == WellRecord.UNKNOWN && note != 0 && Note.at(note).isUnsure();
    states[column * STATES + (isUnsure ? UNREADABLE : state + 1)]++;
    if (note != 0) {
      notes[column * NOTES + note]++;
    }
    int unit = record.unitId(entry);
    if (unit >= 0 && state == WellRecord.GIVEN) {
      units[column * UNITS + unit]++;
    }
  }

  /** Counts a cell of which nothing could be made. */
  void unreadable(int column, Note note) {
    states[column * STATES + UNREADABLE]++;
    notes[column * NOTES + note.ordinal()]++;
  }

  void rowsDiffer(int column) {
    differing[column]++;
  }

  /** So many records have rows that differ in a column. */
  void rowsDiffer(int column, long records) {
    differing[column] += records;
  }

  /** Says of the cell that was counted last that the map states its unit for want of another. */
  void unitOfMap(int column) {
    ofMap[column]++;
  }

  /** Says of the cell that was counted last that it states another unit than its row does. */
  void unitContradicts(int column) {
    contradicting[column]++;
  }

  /** Says of the cell that was counted last that nothing states its unit. */
  void unitUnsaid(int column, WellRecord record, int entry) {
    units[column * UNITS + record.unitId(entry)]--;
    unsaid[column]++;
  }

  private ColumnDoubts doubtsOf(int column) {
    ColumnDoubts of = doubts[column];
    if (of == null) {
      of = new ColumnDoubts();
      doubts[column] = of;
    }
    return of;
  }

  private CodeCounts codesOf(int column) {
    CodeCounts of = codes[column];
    if (of == null) {
      of = new CodeCounts();
      codes[column] = of;
    }
    return of;
  }

  /** Counts a name of a JSON record that no entry has. */
  void unknown(String name) {
    unknown(name, 1);
  }

  private void unknown(String name, long times) {
    if (unknown.size() < MOST_NAMES || unknown.containsKey(name)) {
      unknown.merge(name, times, Long::sum);
    } else {
      moreUnknown += times;
    }
  }

  /** Counts a cell of a column that no entry takes. */
  void kept(int column) {
    states[column * STATES + GIVEN]++;
  }

  int columns() {
    return columns;
  }
}
