package org.wellcurb.intake;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;

/**
 * The unit of the bare numbers of a row: what a cell of the row states, else what the map does.
 *
 * @param unit what the map states; null for that of the record
 * @param from the column that states it row by row; null if none does
 * @param column where that column stands; -1 if nowhere
 */
record RowUnit(@Nullable Unit unit, @Nullable UnitColumn from, int column) {

  static RowUnit of(@Nullable Unit unit, @Nullable UnitColumn from, List<String> header) {
    return new RowUnit(unit, from, from == null ? -1 : from.column().find(header));
  }

  /** What the row's own cell says, as written; empty if it says nothing. */
  String said(RowView row) {
    return row.trimmed(column);
  }

  /** True if the row's own cell says something that is no unit. */
  boolean isUnknown(RowView row) {
    return from != null && !said(row).isEmpty() && from.unit(said(row)).isEmpty();
  }

  /**
   * Counts a bare number in a row whose own cell, which should state its unit, is blank, and a
   * number that states another unit than that cell.
   *
   * @param column where the number stands
   * @param saysUnits true if the record says in which units it is written
   * @param ofList true for rows of another table, which may be in other units than the record says
   */
  void count(
      RowView row,
      int column,
      WellRecord read,
      int entry,
      boolean saysUnits,
      boolean ofList,
      ChunkTally tally) {
    Unit stated = stated(row);
    if (stated != null && read.isGiven(entry) && read.unitId(entry) >= 0) {
      // A bare number has that unit, so that another is the cell's own.
      if (read.unitId(entry) != stated.id()) {
        tally.unitContradicts(column);
      }
      return;
    }
    if (from == null || !said(row).isEmpty() || !isBare(read, entry)) {
      return;
    }
    if (unit != null || (saysUnits && ofList)) {
      tally.unitOfMap(column);
    } else if (!saysUnits) {
      tally.unitUnsaid(column, read, entry);
    }
  }

  /** True for an amount behind whose last figure no unit stands, though it could be two. */
  private static boolean isBare(WellRecord read, int index) {
    if (!read.isGiven(index) || read.unitId(index) < 0) {
      return false;
    }
    Entry entry = read.catalogue().entry(index);
    String written = read.written(index);
    char last = written.isEmpty() ? ' ' : written.charAt(written.length() - 1);
    return ((last >= '0' && last <= '9') || last == '.' || last == ',')
        && !Objects.equals(entry.unit(UnitSystem.US), entry.unit(UnitSystem.METRIC));
  }

  /** The unit; null for that of the record. */
  @Nullable Unit in(RowView row) {
    @Nullable Unit stated = stated(row);
    return stated == null ? unit : stated;
  }

  /** What the row's own cell states; null where it states none. */
  @Nullable Unit stated(RowView row) {
    return from == null ? null : from.unit(said(row)).orElse(null);
  }
}
