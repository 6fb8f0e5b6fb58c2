package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.wellcurb.formula.Table;
import org.wellcurb.record.Entry;

/**
 * Tells which rows of a table can ever be the first to match. Exact: each key's values are cut into
 * the pieces that its cells cannot tell apart (words, points, the stretches between points), and a
 * row is reachable if some combination of pieces is in it and in no row before it.
 */
final class RowReach {
  /** A row as written: the alternatives of each cell. */
  record Row(Json at, List<List<Table.Cell>> cells, Table.Value value) {
    Row {
      cells = List.copyOf(cells);
    }

    /** Rows with one alternative each. */
    List<Table.Row> flat() {
      List<List<Table.Cell>> rows = List.of(List.of());
      for (List<Table.Cell> cell : cells) {
        List<List<Table.Cell>> longer = new ArrayList<>();
        for (List<Table.Cell> row : rows) {
          for (Table.Cell alternative : cell) {
            List<Table.Cell> next = new ArrayList<>(row);
            next.add(alternative);
            longer.add(next);
          }
        }
        rows = longer;
      }
      return rows.stream().map(row -> new Table.Row(row, value)).toList();
    }
  }

  /** For each key, the rows that match each of its pieces. */
  private final List<List<BitSet>> pieces = new ArrayList<>();

  private final int rows;

  RowReach(List<Entry> by, List<List<List<Table.Cell>>> rows) {
    this.rows = rows.size();
    for (int k = 0; k < by.size(); k++) {
      int key = k;
      List<List<Table.Cell>> column = rows.stream().map(row -> row.get(key)).toList();
      pieces.add(Pieces.of(by.get(k), column));
    }
  }

  static void refuseUnreachable(Problems problems, List<Entry> by, List<Row> rows) {
    RowReach table = new RowReach(by, rows.stream().map(Row::cells).toList());
    for (int r = 0; r < rows.size(); r++) {
      if (!table.isReachable(r)) {
        problems.at(
            rows.get(r).at(),
            "no record can come to this row: the rows before it take all that it would match",
            "move it up, or take it away");
      }
    }
  }

  /** True if some record comes to this row. */
  boolean isReachable(int row) {
    BitSet before = new BitSet();
    before.set(0, row);
    return leavesOut(0, row, before, new HashSet<>());
  }

  /** True if every record whose keys are known comes to some row. */
  boolean isComplete() {
    BitSet all = new BitSet();
    all.set(0, rows);
    return !leavesOut(0, -1, all, new HashSet<>());
  }

  /**
   * True if, from this key on, some combination of pieces within {@code row} (any, if negative) is
   * in none of the other rows.
   */
  private boolean leavesOut(int key, int row, BitSet others, Set<Object> tried) {
    if (others.isEmpty()) {
      return true;
    }
    if (key == pieces.size() || !tried.add(List.of(key, others))) {
      return false;
    }
    for (BitSet piece : pieces.get(key)) {
      if (row >= 0 && !piece.get(row)) {
        continue;
      }
      BitSet left = (BitSet) others.clone();
      left.and(piece);
      if (leavesOut(key + 1, row, left, tried)) {
        return true;
      }
    }
    return false;
  }
}
