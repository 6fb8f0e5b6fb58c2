package org.wellcurb.intake;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellStyle;

/** A layout as arrays, for the reader that goes through millions of rows. */
final class ColumnPlan {
  final TableLayout layout;
  final byte delimiter;
  final int columns;

  /** The entry that each column holds; -1 for none. */
  final int[] entry;

  final @Nullable Unit[] unit;
  final CellStyle[] style;

  /** The column of {@code record.id}. */
  final int id;

  /** The column of {@code record.units}, which decides how others are read; -1 for none. */
  final int units;

  /** The columns read after those two, in order. */
  final int[] others;

  /** The columns that no entry takes. */
  final int[] unknown;

  ColumnPlan(TableLayout layout, Catalogue catalogue) {
    this.layout = layout;
    List<Column> list = layout.columns();
    delimiter = (byte) layout.delimiter();
    columns = list.size();
    entry = list.stream().mapToInt(c -> c.entry() == null ? -1 : c.entry().index()).toArray();
    unit = list.stream().map(Column::unit).toArray(Unit[]::new);
    style = list.stream().map(Column::style).toArray(CellStyle[]::new);
    int unitsEntry = catalogue.index("record.units");
    id = find(entry, catalogue.index("record.id"));
    units = find(entry, unitsEntry);
    others =
        list.stream()
            .filter(c -> !c.isUnknown() && c.index() != id && c.index() != units)
            .mapToInt(Column::index)
            .toArray();
    unknown = list.stream().filter(Column::isUnknown).mapToInt(Column::index).toArray();
  }

  private static int find(int[] entries, int entry) {
    for (int i = 0; i < entries.length; i++) {
      if (entries[i] == entry) {
        return i;
      }
    }
    return -1;
  }
}
