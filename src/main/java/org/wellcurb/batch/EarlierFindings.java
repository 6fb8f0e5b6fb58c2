package org.wellcurb.batch;

import java.util.Arrays;
import org.wellcurb.record.RecordMark;
import org.wellcurb.record.WellRecord;

/**
 * The findings of an earlier report, to be laid beside the records while they are screened: of each
 * it is noted whether the entries that its rule reads are still what they were. May be shared
 * between threads: each only ever sets a note.
 */
final class EarlierFindings {
  private final SinceLog records;
  private final MarkedRecords byNumber;
  private final OwnEntries entries;
  private final int[] rules;
  private final long[] places;
  private final long[] marks;
  private final boolean[] sameByNumber;
  private final boolean[] sameByPlace;

  /** Marks of findings together with other places at which a record of this number reads so. */
  private final LongRow sameElsewhere = new LongRow();

  private long[] elsewhere = new long[0];

  /**
   * @param records the records of the earlier report, in its order
   * @param ids of each finding, in its order, the mark of its record's number
   * @param places the mark of where its record stands
   * @param rules the place of its rule in {@code entries}; -1 where no rule has its name now
   * @param marks the mark of the entries that its rule read; empty where the report has none
   */
  EarlierFindings(
      SinceLog records, long[] ids, long[] places, int[] rules, long[] marks, OwnEntries entries) {
    this.records = records;
    this.places = places.clone();
    this.rules = rules.clone();
    this.marks = marks.clone();
    this.entries = entries;
    this.byNumber = new MarkedRecords(ids, new long[ids.length]);
    this.sameByNumber = new boolean[ids.length];
    this.sameByPlace = new boolean[ids.length];
  }

  /** Lays a record beside the findings that its number had. */
  void lay(WellRecord record) {
    if (marks.length == 0) {
      return;
    }
    byNumber.each(RecordMark.of(record.id()), finding -> lay(record, finding));
  }

  private void lay(WellRecord record, int finding) {
    int rule = rules[finding];
    if (rule >= 0 && entries.mark(record, rule) == marks[finding]) {
      sameByNumber[finding] = true;
      long place = SinceLog.place(record.id(), record.file(), String.valueOf(record.row()));
      if (place == places[finding]) {
        sameByPlace[finding] = true;
      } else {
        synchronized (sameElsewhere) {
          sameElsewhere.add(elsewhere(finding, place));
        }
      }
    }
  }

  /** True if the report keeps what each rule read. */
  boolean hasMarks() {
    return marks.length > 0 || rules.length == 0;
  }

  /** True if no rule has the name of this finding's rule now. */
  boolean isRuleGone(int finding) {
    return rules[finding] < 0;
  }

  private static long elsewhere(int finding, long place) {
    return (place + finding) * 0x9E3779B97F4A7C15L;
  }

  /** Closes the notes, once every record was laid beside. */
  void close() {
    elsewhere = sameElsewhere.all();
    Arrays.sort(elsewhere);
  }

  /** True if what this finding's rule reads is what it was, its number being one record's. */
  boolean readsTheSame(int finding) {
    return sameByNumber[finding];
  }

  /**
   * The same where the number stands for several.
   *
   * @param place mark of where the record stands now
   */
  boolean readsTheSame(int finding, long place) {
    return place == places[finding]
        ? sameByPlace[finding]
        : Arrays.binarySearch(elsewhere, elsewhere(finding, place)) >= 0;
  }

  SinceLog records() {
    return records;
  }
}
