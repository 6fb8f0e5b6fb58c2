package org.wellcurb.formula;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;

/** Which rows of a table match a record: surely, perhaps, or not. */
public final class TableRows {
  private final Table table;
  private final int[] keys;

  public TableRows(Table table) {
    this.table = table;
    keys = table.by().stream().mapToInt(Entry::index).toArray();
  }

  int[] keys() {
    return keys;
  }

  /** {@link Truth#TRUE} if all cells match, {@link Truth#UNKNOWN} if they may. */
  public int match(Frame f, int row) {
    List<Table.Cell> cells = table.rows().get(row).cells();
    int match = Truth.TRUE;
    for (int k = 0; k < keys.length && match != Truth.FALSE; k++) {
      match = Math.min(match, cell(f, table.by().get(k), cells.get(k)));
    }
    return match;
  }

  private static int cell(Frame f, Entry key, Table.Cell cell) {
    if (cell instanceof Table.Any) {
      return Truth.TRUE;
    }
    if (f.state(key.index()) != WellRecord.GIVEN) {
      return Truth.UNKNOWN;
    }
    if (cell instanceof Table.Range range) {
      double shift = f.shift[key.datum().ordinal()];
      WellRecord record = f.record();
      return within(range, record.lo(key.index()) - shift, record.hi(key.index()) - shift);
    }
    return Truth.of(((Table.Words) cell).words().contains(word(f, key)));
  }

  private static @Nullable String word(Frame f, Entry key) {
    if (key.kind() == Kind.YES_NO) {
      return f.record().lo(key.index()) == 1 ? "yes" : "no";
    }
    if (key.kind() == Kind.CHOICE) {
      return key.choices().get((int) f.record().lo(key.index())).toLowerCase(java.util.Locale.ROOT);
    }
    return f.record().text(key.index());
  }

  private static int within(Table.Range range, double lo, double hi) {
    Interval ends = range.range();
    int above =
        (range.loIncluded() ? Relation.AT_LEAST : Relation.MORE)
            .holds(lo, hi, ends.lo(), ends.lo());
    int below =
        (range.hiIncluded() ? Relation.AT_MOST : Relation.LESS).holds(lo, hi, ends.hi(), ends.hi());
    return Math.min(above, below);
  }
}
