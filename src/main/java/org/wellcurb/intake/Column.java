package org.wellcurb.intake;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;

/**
 * What was understood of one column of a table.
 *
 * @param index its place, from 0
 * @param name its header as written; {@code column 12} where that is blank
 * @param entry the entry that it fills, alone or with other columns; null if it fills none
 * @param unit the unit of its bare numbers; null if neither header nor map names one
 * @param use what else it is for, such as {@code unit of DEPTH} or {@code not wanted}; empty where
 *     it simply fills its entry, or nothing
 * @param nearest for a column that nothing is known of, the key that was perhaps meant
 * @param isUnitUnsaid true if nothing states the unit of its bare numbers: not the header, not the
 *     map, not another column, not the record
 * @param problem why its numbers cannot be read although its key is known; empty if nothing is
 *     wrong
 */
public record Column(
    int index,
    String name,
    @Nullable Entry entry,
    @Nullable Unit unit,
    String use,
    @Nullable String nearest,
    boolean isUnitUnsaid,
    String problem) {

  Column(
      int index,
      String name,
      @Nullable Entry entry,
      @Nullable Unit unit,
      String use,
      @Nullable String nearest,
      String problem) {
    this(index, name, entry, unit, use, nearest, false, problem);
  }

  Column withUnitUnsaid() {
    return new Column(index, name, entry, unit, use, nearest, true, problem);
  }

  /** True for a column that nothing takes: its cells are kept with the record, and reported. */
  public boolean isUnknown() {
    return entry == null && use.isEmpty();
  }
}
