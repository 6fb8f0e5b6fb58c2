package org.wellcurb.batch;

import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.RecordMark;
import org.wellcurb.record.WellRecord;

/**
 * The findings of an earlier report, to be laid beside the records while they are screened: of each
 * it is noted whether the entries that its rule reads are still what they were, and whether the
 * rule can still be told. May be shared between threads: each only ever sets a note.
 */
final class EarlierFindings {
  private static final int CANNOT_TELL = Outcome.CANNOT_TELL.ordinal();
  private static final int NOT_APPLICABLE = Outcome.NOT_APPLICABLE.ordinal();

  private final SinceLog records;
  private final MarkedRecords byNumber;
  private final OwnEntries entries;
  private final int[] rules;
  private final int[] decided;
  private final long[] marks;

  /** Where the entries that the rule reads are what they were. */
  private final FindingNotes same;

  /**
   * Where the rule can no longer be told, or is no longer asked for want of the figure, or where
   * the figure became n/a.
   */
  private final FindingNotes untold;

  /**
   * @param records the records of the earlier report, in its order
   * @param ids of each finding, in its order, the mark of its record's number
   * @param places the mark of where its record stands
   * @param rules the place of its rule in {@code entries}; -1 where no rule has its name now
   * @param decided the place of the entry that decided it; -1 where none was written
   * @param marks the mark of the entries that its rule read; empty where the report has none
   */
  EarlierFindings(
      SinceLog records,
      long[] ids,
      long[] places,
      int[] rules,
      int[] decided,
      long[] marks,
      OwnEntries entries) {
    this.records = records;
    this.rules = rules.clone();
    this.decided = decided.clone();
    this.marks = marks.clone();
    this.entries = entries;
    this.byNumber = new MarkedRecords(ids, new long[ids.length]);
    this.same = new FindingNotes(places);
    this.untold = new FindingNotes(places);
  }

  /**
   * Lays a record beside the findings that its number had.
   *
   * @param pack the place of the pack that judged it
   * @param outcomes ordinals of {@link Outcome}, by rule of this pack
   */
  void lay(WellRecord record, int pack, byte[] outcomes) {
    byNumber.each(RecordMark.of(record.id()), finding -> lay(record, finding, pack, outcomes));
  }

  private void lay(WellRecord record, int finding, int pack, byte[] outcomes) {
    int rule = rules[finding];
    if (rule < 0) {
      return;
    }
    long place = SinceLog.place(record.id(), record.file(), String.valueOf(record.row()));
    if (marks.length > 0 && entries.mark(record, rule) == marks[finding]) {
      same.set(finding, place);
    }
    if (isUntold(record, rule, decided[finding], pack, outcomes)) {
      untold.set(finding, place);
    }
  }

  private static boolean isUntold(
      WellRecord record, int rule, int decided, int pack, byte[] outcomes) {
    if (OwnEntries.pack(rule) != pack) {
      // A record that is another pack's now is no longer asked what it fell short of.
      return true;
    }
    int outcome = outcomes[OwnEntries.rule(rule)];
    // Who writes n/a over the figure that fell short has not mended it, whatever the rule makes of
    // that.
    if (decided >= 0 && record.state(decided) == WellRecord.NOT_APPLICABLE) {
      return true;
    }
    // Many rules apply only where their figure is known: they fall silent when it is struck out.
    return outcome == CANNOT_TELL
        || (outcome == NOT_APPLICABLE
            && decided >= 0
            && (record.state(decided) == WellRecord.UNKNOWN
                || record.state(decided) == WellRecord.UNREADABLE));
  }

  /** True if the report keeps what each rule read. */
  boolean hasMarks() {
    return marks.length > 0 || rules.length == 0;
  }

  /** True if no rule has the name of this finding's rule now. */
  boolean isRuleGone(int finding) {
    return rules[finding] < 0;
  }

  /** Closes the notes, once every record was laid beside. */
  void close() {
    same.close();
    untold.close();
  }

  /** What is noted of findings whose rule reads what it read. */
  FindingNotes same() {
    return same;
  }

  /** What is noted of findings whose rule can no longer be told. */
  FindingNotes untold() {
    return untold;
  }

  SinceLog records() {
    return records;
  }
}
