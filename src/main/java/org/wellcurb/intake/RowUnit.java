package org.wellcurb.intake;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;

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

  /** The unit; null for that of the record. */
  @Nullable Unit in(RowView row) {
    return from == null ? unit : from.unit(said(row)).orElse(unit);
  }
}
