package org.wellcurb.intake;

import org.jspecify.annotations.Nullable;

/** One line of a header map over the columns of a certain file. */
final class Step {
  final MappedColumns mapped;

  /** Its columns; -1 for one that the file lacks. */
  final int[] columns;

  /** Which unit its bare numbers are in. */
  final RowUnit unit;

  /**
   * @param unitColumn the column that states the unit; -1 for none
   */
  Step(MappedColumns mapped, int[] columns, int unitColumn) {
    this.mapped = mapped;
    this.columns = columns;
    this.unit = new RowUnit(target().unit(), mapped.unitFrom(), unitColumn);
  }

  /** The only target. */
  Target target() {
    return mapped.targets().get(0);
  }

  /** True if its cells can be read where they lie. */
  boolean isPlain() {
    return columns.length == 1 && unit.column() < 0 && !mapped.isSplit() && target().isPlain();
  }

  /** True if it fills this entry. */
  boolean fills(int entry) {
    return mapped.targets().stream().anyMatch(t -> t.entry().index() == entry);
  }

  /** The column that stands for it in counts: the first that is there. */
  int column() {
    for (int column : columns) {
      if (column >= 0) {
        return column;
      }
    }
    throw new IllegalStateException("a step without columns");
  }

  @Nullable UnitColumn unitFrom() {
    return mapped.unitFrom();
  }
}
