package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.quantity.Comma;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Nearest;

/**
 * Makes of a header, and of what a header map says, what each column is for. One for each header.
 *
 * <p>A column that the map does not name is taken for its entry if its header is a key.
 */
final class LayoutReader {
  private final Catalogue catalogue;
  private final TableMap map;
  private final Commas commas;
  private final List<String> header;
  private final @Nullable Column[] columns;
  private final List<Step> steps = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  /**
   * @param keys columns that say which rows of two tables belong together
   * @param commas what commas in numbers mean in each column
   */
  LayoutReader(
      Catalogue catalogue,
      TableMap map,
      List<ColumnName> keys,
      Commas commas,
      List<String> header) {
    this.catalogue = catalogue;
    this.map = map;
    this.commas = commas;
    this.header = header;
    this.columns = new @Nullable Column[header.size()];
    map.columns().forEach(this::mapped);
    map.ignored().forEach(name -> use(name, null, null, "not wanted"));
    map.only().forEach(f -> use(f.column(), null, null, "says which rows are taken"));
    rows();
    keys.forEach(name -> use(name, null, null, "says which record the row belongs to"));
    for (int i = 0; i < columns.length; i++) {
      if (columns[i] == null) {
        columns[i] = unmapped(i);
      }
    }
    doubtPoints();
  }

  /**
   * What each column is for.
   *
   * @param areUnitsSaid true if something fills {@code record.units}
   */
  List<Column> columns(boolean areUnitsSaid) {
    List<Column> list = new ArrayList<>();
    for (Column column : columns) {
      if (column != null) {
        boolean unsaid = isUnitUnsaid(column) || isListUnitUnsaid(column);
        list.add(!areUnitsSaid && unsaid ? column.withUnitUnsaid() : column);
      }
    }
    return list;
  }

  private boolean isUnitUnsaid(Column column) {
    Entry entry = column.entry();
    return entry != null
        && column.unit() == null
        && column.use().isEmpty()
        && entry.kind().isAmount()
        && !Objects.equals(entry.unit(UnitSystem.US), entry.unit(UnitSystem.METRIC))
        && steps.stream()
            .anyMatch(
                step ->
                    step.columns.length == 1
                        && step.columns[0] == column.index()
                        && step.unitFrom() == null);
  }

  /** True for depths of layers and distances for which neither map nor row states a unit. */
  private boolean isListUnitUnsaid(Column column) {
    SetbackColumns setbacks = map.setbacks();
    boolean isDepth =
        map.layers().stream()
            .filter(layer -> layer.unit() == null && layer.unitFrom() == null)
            .anyMatch(layer -> isAt(layer.to(), column) || isAt(layer.from(), column));
    return isDepth
        || (setbacks != null
            && setbacks.unit() == null
            && setbacks.unitFrom() == null
            && isAt(setbacks.distance(), column));
  }

  private boolean isAt(@Nullable ColumnName name, Column column) {
    return name != null && name.find(header) == column.index();
  }

  List<Step> steps() {
    return steps;
  }

  /** A number of a column whose point may part thousands; empty if there is none. */
  String thousandPoint(int column) {
    return commas.thousandPoint(column);
  }

  private void doubtPoints() {
    for (Step step : steps) {
      Target target = step.target();
      String figure = step.columns.length > 1 ? "" : commas.thousandPoint(step.column());
      if (target.entry().kind().isAmount()
          && target.style().comma() == Comma.NEITHER
          && !figure.isEmpty()) {
        notes.add(
            "figures such as "
                + figure
                + " in column "
                + header(step.column())
                + " were not read: other columns have decimal commas, so that the point may part"
                + " thousands; where it is a decimal point, let the header map set comma to"
                + " thousands for the column, else export it without the point");
      }
    }
  }

  /** What the map names and the file lacks. */
  List<String> notes() {
    return notes;
  }

  /** Why a table with this header cannot be read; empty if it can. */
  String problem() {
    if (header.size() > Bounds.COLUMNS) {
      return "the header has "
          + header.size()
          + " columns; at most "
          + Bounds.COLUMNS
          + " are read";
    }
    String twice = entryTwice();
    if (!twice.isEmpty()) {
      return twice;
    }
    for (RowFilter filter : map.only()) {
      if (filter.column().find(header) < 0) {
        return "the header map takes rows by the column "
            + filter.column().label()
            + ", which the file lacks";
      }
    }
    return map.columnNames().isEmpty() ? nameTwice() : mappedNameTwice();
  }

  private String entryTwice() {
    Map<String, String> filled = new HashMap<>();
    for (Step step : steps) {
      String column = header(step.column());
      for (Target target : step.mapped.targets()) {
        String first = filled.putIfAbsent(target.entry().key(), column);
        if (first != null) {
          return "columns "
              + first
              + " and "
              + column
              + " both fill "
              + target.entry().key()
              + "; rename or remove one of them";
        }
      }
    }
    return "";
  }

  private String nameTwice() {
    Map<String, Integer> names = new HashMap<>();
    for (int i = 0; i < header.size(); i++) {
      String name = HeaderKey.strip(header.get(i));
      Integer first = name.isEmpty() ? null : names.putIfAbsent(name, i);
      if (first != null) {
        return "columns "
            + (first + 1)
            + " and "
            + (i + 1)
            + " are both named "
            + name
            + "; rename one of them";
      }
    }
    return "";
  }

  private String mappedNameTwice() {
    for (ColumnName name : map.columnNames()) {
      long found =
          header.stream().filter(h -> name.place() == 0 && name.find(List.of(h)) == 0).count();
      if (found > 1) {
        return "more than one column is named "
            + name.name()
            + "; let the header map name it by"
            + " its place";
      }
    }
    return "";
  }

  /** Why no column fills {@code record.id}. */
  String noId() {
    String near = "";
    for (Column column : columns(true)) {
      if ("record.id".equals(column.nearest())) {
        near = " (column " + (column.index() + 1) + ", " + column.name() + ", is near it)";
      }
    }
    return "no column of the header is record.id"
        + near
        + "; name the columns by their keys, or give a header map";
  }

  private String header(int i) {
    String name = HeaderKey.strip(header.get(i));
    return name.isEmpty() ? "column " + (i + 1) : name;
  }

  private void mapped(MappedColumns mapped) {
    int[] at = mapped.columns().stream().mapToInt(c -> c.find(header)).toArray();
    UnitColumn unitFrom = mapped.unitFrom();
    String entries =
        String.join(", ", mapped.targets().stream().map(t -> t.entry().key()).toList());
    Target first = mapped.targets().get(0);
    boolean simple = mapped.targets().size() == 1 && at.length == 1;
    for (ColumnName name : mapped.columns()) {
      use(name, first.entry(), first.unit(), simple ? "" : "part of " + entries);
    }
    use(unitFrom, mapped.columns().get(0));
    if (Arrays.stream(at).anyMatch(i -> i >= 0)) {
      int unitColumn = unitFrom == null ? -1 : unitFrom.column().find(header);
      steps.add(new Step(settled(mapped, at), at, unitColumn));
    }
  }

  /** How the cells of a column are written that fills no entry by itself; -1 for none. */
  CellStyle settled(CellStyle style, int column) {
    return column < 0 ? style : commas.settle(style, column);
  }

  /** The same with the commas of its first column settled. */
  private MappedColumns settled(MappedColumns mapped, int[] at) {
    int first = Arrays.stream(at).filter(i -> i >= 0).findFirst().orElse(0);
    List<Target> targets =
        mapped.targets().stream().map(t -> t.withStyle(commas.settle(t.style(), first))).toList();
    return new MappedColumns(
        mapped.columns(),
        mapped.combine(),
        mapped.separator(),
        mapped.splits(),
        mapped.unitFrom(),
        targets);
  }

  private void rows() {
    for (LayerColumns layer : map.layers()) {
      if (layer.from() != null) {
        use(layer.from(), null, layer.unit(), "top of a layer");
      }
      use(layer.to(), null, layer.unit(), "bottom of a layer");
      use(layer.material(), null, null, "material of a layer");
      use(layer.unitFrom(), layer.to());
    }
    SetbackColumns setbacks = map.setbacks();
    if (setbacks != null) {
      use(setbacks.from(), null, null, "what a distance is measured from");
      use(setbacks.distance(), null, setbacks.unit(), "a distance");
      use(setbacks.unitFrom(), setbacks.distance());
    }
  }

  private void use(@Nullable UnitColumn unitFrom, ColumnName of) {
    if (unitFrom != null) {
      use(unitFrom.column(), null, null, "unit of " + of.label());
    }
  }

  private void use(ColumnName name, @Nullable Entry entry, @Nullable Unit unit, String use) {
    int i = name.find(header);
    if (i < 0) {
      notes.add("the header map names " + name.label() + ", which the file lacks");
      return;
    }
    Column before = columns[i];
    if (before == null) {
      columns[i] = new Column(i, header(i), entry, unit, use, null, "");
    } else if (before.entry() == null && entry != null) {
      columns[i] = new Column(i, header(i), entry, unit, before.use(), null, "");
    }
  }

  private Column unmapped(int i) {
    HeaderKey key = HeaderKey.of(header.get(i));
    Entry entry = HeaderEntry.find(catalogue, key.key());
    if (entry == null) {
      String nearest = key.key().isEmpty() ? null : near(key.key());
      return new Column(i, header(i), null, null, "", nearest, "");
    }
    if (map.columns().stream().anyMatch(m -> fills(m, entry))) {
      return new Column(i, header(i), null, null, "", null, "the header map fills " + entry.key());
    }
    HeaderEntry.Taken taken = HeaderEntry.take(entry, key.unit());
    if (!taken.usable()) {
      return new Column(i, header(i), null, null, "", null, taken.problem());
    }
    Target target =
        new Target(
            entry, taken.unit(), commas.settle(map.style(), i), Map.of(), 1, OfSeveral.FIRST);
    MappedColumns mapped =
        new MappedColumns(
            List.of(ColumnName.at(i + 1)), Combine.ONE, "", List.of(), null, List.of(target));
    steps.add(new Step(mapped, new int[] {i}, -1));
    return new Column(i, header(i), entry, taken.unit(), "", null, taken.problem());
  }

  private static boolean fills(MappedColumns mapped, Entry entry) {
    return mapped.targets().stream().anyMatch(t -> t.entry().index() == entry.index());
  }

  /** The key that is one or two letters away. */
  private @Nullable String near(String key) {
    String folded = key.toLowerCase(Locale.ROOT);
    String nearest = catalogue.nearest(folded);
    return nearest != null && Nearest.distance(folded, nearest) <= 2 ? nearest : null;
  }
}
