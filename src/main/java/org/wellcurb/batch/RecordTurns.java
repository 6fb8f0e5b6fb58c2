package org.wellcurb.batch;

import org.wellcurb.report.RehearsalView.Turns;

/** Counts of records by what a pack tried does to them. Counts of parts add up. */
final class RecordTurns {
  private long changed;
  private long newlyShort;
  private long firstShort;
  private long older;
  private long noLongerShort;
  private long noneShort;
  private long newlyUnknown;
  private long noLongerUnknown;
  private long newlyWaived;
  private long noLongerWaived;

  /** What one record does: each is asked of the record at hand. */
  static final class One {
    boolean changes;
    boolean becomesShort;
    boolean wasShort;
    boolean isShort;
    boolean endsShort;
    boolean becomesUnknown;
    boolean endsUnknown;
    boolean becomesWaived;
    boolean endsWaived;
    boolean isOlder;

    void clear() {
      changes = false;
      becomesShort = false;
      wasShort = false;
      isShort = false;
      endsShort = false;
      becomesUnknown = false;
      endsUnknown = false;
      becomesWaived = false;
      endsWaived = false;
      isOlder = false;
    }
  }

  void add(One record) {
    changed += record.changes ? 1 : 0;
    newlyShort += record.becomesShort ? 1 : 0;
    firstShort += record.becomesShort && !record.wasShort ? 1 : 0;
    older += record.becomesShort && record.isOlder ? 1 : 0;
    noLongerShort += record.endsShort ? 1 : 0;
    noneShort += record.endsShort && !record.isShort ? 1 : 0;
    newlyUnknown += record.becomesUnknown ? 1 : 0;
    noLongerUnknown += record.endsUnknown ? 1 : 0;
    newlyWaived += record.becomesWaived ? 1 : 0;
    noLongerWaived += record.endsWaived ? 1 : 0;
  }

  void add(RecordTurns next) {
    changed += next.changed;
    newlyShort += next.newlyShort;
    firstShort += next.firstShort;
    older += next.older;
    noLongerShort += next.noLongerShort;
    noneShort += next.noneShort;
    newlyUnknown += next.newlyUnknown;
    noLongerUnknown += next.noLongerUnknown;
    newlyWaived += next.newlyWaived;
    noLongerWaived += next.noLongerWaived;
  }

  void clear() {
    changed = 0;
    newlyShort = 0;
    firstShort = 0;
    older = 0;
    noLongerShort = 0;
    noneShort = 0;
    newlyUnknown = 0;
    noLongerUnknown = 0;
    newlyWaived = 0;
    noLongerWaived = 0;
  }

  Turns counts() {
    return new Turns(
        changed,
        newlyShort,
        firstShort,
        older,
        noLongerShort,
        noneShort,
        newlyUnknown,
        noLongerUnknown,
        newlyWaived,
        noLongerWaived);
  }
}
