package org.wellcurb.formula;

import java.util.List;
import org.wellcurb.record.WellRecord;

/** A table as an amount: the hull of the rows that may match, up to the first that surely does. */
final class TableNode extends AmountNode {
  private final TableRows rows;
  private final AmountNode[] values;

  TableNode(Table table) {
    rows = new TableRows(table);
    List<Table.Row> all = table.rows();
    values = new AmountNode[all.size()];
    for (int i = 0; i < values.length; i++) {
      Table.Amount value = (Table.Amount) all.get(i).value();
      values[i] =
          value.bracketUnit() == null
              ? new AmountNodes.Fixed(value.primary())
              : new AmountNodes.DualLimit(
                  new Expr.Dual(
                      value.primary(), value.unit(), value.bracket(), value.bracketUnit()));
    }
  }

  @Override
  void eval(Frame f, int at) {
    double lo = Double.POSITIVE_INFINITY;
    double hi = Double.NEGATIVE_INFINITY;
    for (int entry : rows.keys()) {
      if (f.state(entry) == WellRecord.NOT_APPLICABLE) {
        Intervals.set(f, at, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        f.isVoid[at] = true;
        return;
      }
    }
    for (int i = 0; i < values.length; i++) {
      int match = rows.match(f, i);
      if (match != Truth.FALSE) {
        values[i].eval(f, at);
        lo = Math.min(lo, f.lo[at]);
        hi = Math.max(hi, f.hi[at]);
      }
      if (match == Truth.TRUE) {
        break;
      }
    }
    boolean isFound = lo <= hi;
    f.lo[at] = isFound ? lo : Double.NEGATIVE_INFINITY;
    f.hi[at] = isFound ? hi : Double.POSITIVE_INFINITY;
    f.isVoid[at] = false;
  }
}
