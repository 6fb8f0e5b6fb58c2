package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.CellStyle;

/**
 * What is done with each cell of a row: as arrays, for the reader that goes through millions of
 * them. It does not change, so all workers share it.
 */
final class ColumnPlan {
  final TableLayout layout;
  final byte delimiter;
  final int columns;

  /** True if rows with one empty cell more are whole. */
  private final boolean endsBeyond;

  /** How many cells more than the header nearly all rows have, which no map tells of. */
  final int surplus;

  private final @Nullable Step id;

  /** What fills {@code record.units}, which decides how others are read; null for none. */
  final @Nullable Step units;

  /** Columns that are read where they lie, and what with. */
  final int[] plain;

  final int[] entry;
  final @Nullable Unit[] unit;
  final CellStyle[] style;

  /** All other steps. */
  final Step[] steps;

  /** The columns that nothing takes. */
  final int[] unknown;

  /** The columns that say something about others, or hold lists: their cells are counted only. */
  final int[] counted;

  /** All entries that it fills, and how. */
  final List<Target> targets;

  private final int[] filterColumns;
  private final RowFilter[] filters;
  final List<HeaderMap.Constant> constants;
  final LayerPlan[] layers;
  final @Nullable SetbackPlan setbacks;

  ColumnPlan(
      TableLayout layout,
      boolean endsBeyond,
      int surplus,
      List<Step> all,
      int idEntry,
      int unitsEntry,
      List<Integer> filterColumns,
      List<RowFilter> filters,
      List<HeaderMap.Constant> constants,
      List<LayerPlan> layers,
      @Nullable SetbackPlan setbacks) {
    this.layout = layout;
    delimiter = (byte) layout.delimiter();
    columns = layout.columns().size();
    this.endsBeyond = endsBeyond;
    this.surplus = surplus;
    id = find(all, idEntry);
    units = find(all, unitsEntry);
    List<Step> simple = new ArrayList<>();
    List<Step> others = new ArrayList<>();
    for (Step step : all) {
      if (step != id && step != units) {
        (step.isPlain() ? simple : others).add(step);
      }
    }
    plain = simple.stream().mapToInt(Step::column).toArray();
    entry = simple.stream().mapToInt(s -> s.target().entry().index()).toArray();
    unit = simple.stream().map(s -> s.target().unit()).toArray(Unit[]::new);
    style = simple.stream().map(s -> s.target().style()).toArray(CellStyle[]::new);
    steps = others.toArray(Step[]::new);
    unknown = layout.columns().stream().filter(Column::isUnknown).mapToInt(Column::index).toArray();
    Set<Integer> read = new HashSet<>();
    all.forEach(step -> Arrays.stream(step.columns).forEach(read::add));
    layers.forEach(layer -> read.addAll(List.of(layer.from(), layer.to())));
    if (setbacks != null) {
      read.addAll(List.of(setbacks.from(), setbacks.distance()));
    }
    counted =
        layout.columns().stream()
            .filter(c -> !c.isUnknown() && !read.contains(c.index()))
            .mapToInt(Column::index)
            .toArray();
    targets = all.stream().flatMap(s -> s.mapped.targets().stream()).toList();
    this.filterColumns = filterColumns.stream().mapToInt(Integer::intValue).toArray();
    this.filters = filters.toArray(RowFilter[]::new);
    this.constants = List.copyOf(constants);
    this.layers = layers.toArray(LayerPlan[]::new);
    this.setbacks = setbacks;
  }

  /** The column that stands for what fills an entry; -1 for none. */
  int column(int filled) {
    for (int i = 0; i < entry.length; i++) {
      if (entry[i] == filled) {
        return plain[i];
      }
    }
    for (Step step : steps) {
      if (step.fills(filled)) {
        return step.column();
      }
    }
    return -1;
  }

  private static @Nullable Step find(List<Step> steps, int entry) {
    return steps.stream().filter(s -> s.fills(entry)).findFirst().orElse(null);
  }

  /** What fills {@code record.id}, in a table whose rows are records. */
  Step id() {
    return Objects.requireNonNull(id, "record.id");
  }

  /** How many cells most rows have. */
  int usualCells() {
    return endsBeyond ? columns + 1 : columns + surplus;
  }

  /**
   * True if a row of so many cells ends where the header does, and the map says that others go on.
   */
  boolean endsWithHeader(int cells) {
    return layout.moreColumns() > 0 && cells == columns - layout.moreColumns();
  }

  /** True if so many cells are whole where the last is empty, though the header has fewer. */
  boolean isBeyond(int cells) {
    return endsBeyond && cells == columns + 1;
  }

  /** True if the header map wants the row. */
  boolean takes(RowView row) {
    for (int i = 0; i < filters.length; i++) {
      if (!filters[i].takes(row.text(filterColumns[i]))) {
        return false;
      }
    }
    return true;
  }

  /** The name of a column. */
  String name(int column) {
    return layout.columns().get(column).name();
  }

  /** Where the cells of a layer stand; {@code from} is -1 where there is none. */
  record LayerPlan(
      int from, int to, int material, RowUnit unit, CellStyle fromStyle, CellStyle toStyle) {
    /** True if one cell holds both ends. */
    boolean isInterval() {
      return from >= 0 && from == to;
    }
  }

  /** Where the cells of a distance stand. */
  record SetbackPlan(
      int from, int distance, SetbackColumns columns, RowUnit unit, CellStyle style) {}
}
