package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.quantity.Note;
import org.wellcurb.record.Extra;

/** The cells of a row that fill no entry by themselves: counted, and kept with the record. */
final class Kept {
  private Kept() {}

  /** Counts them. */
  static void count(ColumnPlan plan, RowView row, ChunkTally tally) {
    count(plan.unknown, row, tally);
    count(plan.counted, row, tally);
  }

  private static void count(int[] columns, RowView row, ChunkTally tally) {
    for (int c : columns) {
      if (row.length(c) == 0) {
        tally.blank(c);
      } else if (row.isWithoutResult(c)) {
        tally.unreadable(c, Note.NO_RESULT);
      } else {
        tally.kept(c);
      }
    }
  }

  /**
   * Those of columns that nothing takes.
   *
   * @param where what stands behind the name of a column: which row it is, where there are several
   */
  static List<Extra> of(ColumnPlan plan, RowView row, String where) {
    List<Extra> kept = new ArrayList<>();
    for (int c : plan.unknown) {
      if (row.length(c) > 0) {
        kept.add(new Extra(plan.name(c) + where, row.text(c)));
      }
    }
    return kept;
  }
}
