package org.wellcurb.batch;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.Refused.Why;

/**
 * Which record a line of a side table means: that of its number; and where the number stands on
 * several rows of the batch, the one of its file and row. One rule for answers and settled
 * findings.
 *
 * @param id number of the record
 * @param file input that it stands in; empty if not said
 * @param row its row there; empty if not said
 */
record Spot(String id, String file, String row) {
  /** What a line means by a record. */
  enum Fit {
    /** The record, by file and row. */
    EXACT,
    /** The record, by a number that only it has. */
    NUMBER,
    /** Perhaps another of the same number. */
    NONE
  }

  /** The spot that a row of a table names. */
  static Spot of(SideTable.Row row) {
    return new Spot(
        EarlierReport.plain(row.get("record_id")),
        EarlierReport.plain(row.get("file")),
        row.get("row"));
  }

  /** True if it says file and row. */
  boolean isPlaced() {
    return !file.isEmpty() && !row.isEmpty();
  }

  /**
   * Whether a record of this number is meant.
   *
   * @param repeated numbers on several rows; null where that is not known, and then file and row
   *     must be right if they are said
   */
  Fit fit(String itsFile, long itsRow, @Nullable Set<String> repeated) {
    if (isPlaced() && file.equals(itsFile) && row.equals(String.valueOf(itsRow))) {
      return Fit.EXACT;
    }
    boolean alone = repeated == null ? !isPlaced() : !repeated.contains(id);
    return alone ? Fit.NUMBER : Fit.NONE;
  }

  /** Why {@link Fit#NONE} fits. */
  Why unfit() {
    return isPlaced() ? Why.OTHER_PLACE : Why.REPEATED;
  }
}
