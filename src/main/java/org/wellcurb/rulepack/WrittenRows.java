package org.wellcurb.rulepack;

import java.util.List;
import org.wellcurb.formula.Table;

/**
 * The rows of a table as its author wrote them: a row with a list of amounts became several, which
 * share their value.
 */
final class WrittenRows {
  private WrittenRows() {}

  /** How many rows were written. */
  static int count(Table table) {
    return number(table, table.rows().size() - 1) + 1;
  }

  /** The written row, from 0, that the row at this place came from. */
  @SuppressWarnings("ReferenceEquality") // Two rows may well give equal values.
  static int number(Table table, int row) {
    List<Table.Row> rows = table.rows();
    int number = 0;
    for (int i = 1; i <= row; i++) {
      if (rows.get(i).value() != rows.get(i - 1).value()) {
        number++;
      }
    }
    return number;
  }
}
