package org.wellcurb.intake;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Entry;

/**
 * What was understood of one column of a table.
 *
 * @param index its place, from 0
 * @param name its header as written; {@code column 12} where that is blank
 * @param entry the entry that it holds; null if none is known by that name
 * @param unit the unit of its bare numbers; null if the header names none
 * @param style how its cells are written
 * @param nearest for a column without an entry, the key that was perhaps meant
 * @param problem why it could not be taken although its key is known; empty if nothing is wrong
 */
public record Column(
    int index,
    String name,
    @Nullable Entry entry,
    @Nullable Unit unit,
    CellStyle style,
    @Nullable String nearest,
    String problem) {

  /** True for a column that no entry takes: its cells are kept with the record, and reported. */
  public boolean isUnknown() {
    return entry == null;
  }
}
