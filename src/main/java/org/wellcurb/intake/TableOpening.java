package org.wellcurb.intake;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Comma;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellStyle;

/** Finds out how a table is laid out and what is to be done with its columns. */
final class TableOpening {
  /** A table that holds fewer than one in so many of the mapped columns is not the mapped one. */
  private static final int FEW_IN = 10;

  /** Of a shorter map nothing can be told. */
  private static final int LEAST_MAPPED = 5;

  private final Catalogue catalogue;
  private final TableMap map;
  private final List<HeaderMap.Constant> constants;
  private final Sampled text;
  private final boolean saysUnits;
  private final HeaderFinder.@Nullable Found found;
  private final @Nullable LayoutReader layout;
  private final boolean endsBeyond;
  private final int surplus;
  private final List<Integer> ragged;

  /** Opens a table of which nothing is known beforehand. */
  TableOpening(Catalogue catalogue, Sampled text) {
    this(catalogue, TableMap.NONE, List.of(), false, List.of(), text);
  }

  /**
   * Opens a table that is joined to others.
   *
   * @param saysUnits true if those say their units
   * @param keys its columns that say which records its rows belong to
   */
  TableOpening(
      Catalogue catalogue, TableMap map, Sampled text, boolean saysUnits, List<ColumnName> keys) {
    this(catalogue, map, List.of(), saysUnits, keys, text);
  }

  /** Opens the main table of a map. */
  TableOpening(Catalogue catalogue, HeaderMap map, Sampled text) {
    this(
        catalogue,
        map.main(),
        map.constants(),
        false,
        map.joins().stream().map(Join::matches).filter(Objects::nonNull).toList(),
        text);
  }

  private TableOpening(
      Catalogue catalogue,
      TableMap map,
      List<HeaderMap.Constant> constants,
      boolean saysUnits,
      List<ColumnName> keys,
      Sampled text) {
    this.catalogue = catalogue;
    this.map = map;
    this.constants = constants;
    this.saysUnits = saysUnits;
    this.text = text;
    found = HeaderFinder.find(text.sample(), text.whole(), map.form(), this::isName);
    layout =
        found == null
            ? null
            : new LayoutReader(
                catalogue,
                map,
                keys,
                new Commas(
                    found.delimiter() == ',' && !text.isSheet(), text.isSheet(), found.sample()),
                found.cells());
    endsBeyond =
        found != null
            && layout != null
            && new TrailingCells(catalogue)
                .endRows(found.sample(), found.cells().size(), layout.steps());
    surplus =
        found == null || endsBeyond
            ? 0
            : TrailingCells.surplus(found.sample(), found.cells().size());
    ragged =
        found == null || endsBeyond || surplus > 0
            ? List.of()
            : TrailingCells.ragged(found.sample(), found.cells().size());
  }

  /** How many cells more than the header nearly all rows have. */
  int surplus() {
    return surplus;
  }

  private boolean isName(String cell) {
    return HeaderEntry.find(catalogue, HeaderKey.of(cell).key()) != null || map.namesColumn(cell);
  }

  /** True if a header line was found, whatever it says. */
  boolean isFound() {
    return found != null;
  }

  /** Why the table cannot be read; empty if nothing speaks against it. */
  String problem() {
    if (found == null || layout == null) {
      return "no header line could be read";
    }
    return text.looksLikeUnmarkedUtf16()
        ? "looks like UTF-16 without a byte order mark; save it as UTF-8"
        : layout.problem();
  }

  /** True if some column fills {@code record.id}. */
  boolean hasId() {
    return layout().steps().stream().anyMatch(step -> step.fills(catalogue.index("record.id")));
  }

  /** Reads one column; null if the file lacks it. */
  @Nullable Step step(ColumnName name) {
    int column = name.find(found().cells());
    if (column < 0) {
      return null;
    }
    Target id = new Target(catalogue.entry(0), null, TableMap.STYLE, Map.of(), 1, OfSeveral.FIRST);
    MappedColumns mapped =
        new MappedColumns(List.of(name), Combine.ONE, "", List.of(), null, List.of(id));
    return new Step(mapped, new int[] {column}, -1);
  }

  /** Why the table is none that the header map is of; empty if it is, or may be. */
  String otherTable() {
    List<String> header = found().cells();
    long named = map.columns().size();
    long met =
        map.columns().stream()
            .filter(mapped -> mapped.columns().stream().anyMatch(name -> name.find(header) >= 0))
            .count();
    boolean lists =
        map.layers().stream().anyMatch(layer -> layer.to().find(header) >= 0)
            || setbacks(header) != null;
    boolean few = met <= Math.max(1, named / FEW_IN) && layout().steps().size() <= met;
    return named >= LEAST_MAPPED && few && !lists
        ? "holds "
            + met
            + " of the "
            + named
            + " columns that the header map fills entries from, so it is another table; if its rows"
            + " belong to records of the others, let the header map join it"
        : "";
  }

  /** Why no column does. */
  String noId() {
    return layout().noId();
  }

  /** What is to be done with its columns. */
  ColumnPlan plan() {
    HeaderFinder.Found header = found();
    List<Integer> filterColumns = new ArrayList<>();
    List<RowFilter> filters = new ArrayList<>();
    for (RowFilter filter : map.only()) {
      int column = filter.column().find(header.cells());
      if (column >= 0) {
        filterColumns.add(column);
        filters.add(filter);
      }
    }
    return new ColumnPlan(
        tableLayout(),
        endsBeyond,
        surplus,
        layout().steps(),
        catalogue.index("record.id"),
        catalogue.index("record.units"),
        filterColumns,
        filters,
        constants,
        layers(header.cells()),
        setbacks(header.cells()));
  }

  private TableLayout tableLayout() {
    HeaderFinder.Found header = found();
    return new TableLayout(
        text.sheet(),
        text.encoding(),
        (char) header.delimiter(),
        header.line(),
        header.preamble(),
        header.text(),
        frame(header),
        map.form().moreColumns(),
        layout().columns(areUnitsSaid()),
        notes());
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (!text.why().isEmpty()) {
      notes.add(text.why());
    }
    notes.addAll(layout().notes());
    notes.addAll(rowsBeyond());
    return notes;
  }

  /** What is to be said of rows that go on beyond the header; nothing where they do not. */
  List<String> rowsBeyond() {
    int columns = found().cells().size();
    if (surplus > 0) {
      return List.of(RowFault.surplus(columns, surplus));
    }
    return ragged.isEmpty()
        ? List.of()
        : List.of(RowFault.ragged(columns, ragged.get(0), ragged.get(1)));
  }

  private boolean areUnitsSaid() {
    int units = catalogue.index("record.units");
    return saysUnits
        || layout().steps().stream().anyMatch(step -> step.fills(units))
        || constants.stream().anyMatch(constant -> constant.entry() == units);
  }

  /**
   * The header; with a byte order mark where the input or the map has another encoding than that of
   * the rows that are kept, with the lines above it, and with the delimiter that ends its rows: so
   * any map that reads the input reads this too.
   */
  private String frame(HeaderFinder.Found header) {
    StringBuilder out = new StringBuilder();
    TextEncoding named = map.form().encoding();
    boolean other = (named != null && !named.isUtf8()) || !text.encoding().isUtf8();
    out.append(other ? "\uFEFF" : "");
    header.preamble().forEach(line -> out.append(line).append('\n'));
    return header.text().isEmpty()
        ? out.toString()
        : out.append(header.text())
            .append(endsBeyond ? String.valueOf((char) header.delimiter()) : "")
            .append('\n')
            .toString();
  }

  private List<ColumnPlan.LayerPlan> layers(List<String> header) {
    return map.layers().stream().map(layer -> layer(layer, header)).toList();
  }

  private ColumnPlan.LayerPlan layer(LayerColumns layer, List<String> header) {
    int from = layer.from() == null ? -1 : layer.from().find(header);
    int to = layer.to().find(header);
    int material = layer.material().find(header);
    RowUnit unit = RowUnit.of(layer.unit(), layer.unitFrom(), header);
    CellStyle style = layer.style();
    return new ColumnPlan.LayerPlan(
        from, to, material, unit, layout().settled(style, from), layout().settled(style, to));
  }

  private ColumnPlan.@Nullable SetbackPlan setbacks(List<String> header) {
    SetbackColumns setbacks = map.setbacks();
    if (setbacks == null) {
      return null;
    }
    int distance = setbacks.distance().find(header);
    RowUnit unit = RowUnit.of(setbacks.unit(), setbacks.unitFrom(), header);
    CellStyle style = layout().settled(setbacks.style(), distance);
    return new ColumnPlan.SetbackPlan(
        setbacks.from().find(header), distance, setbacks, unit, style);
  }

  /** What a comma means in the numbers of a column. */
  Comma comma(int column) {
    return layout().settled(map.style(), column).comma();
  }

  /** A number of a column whose point may part thousands; empty if there is none. */
  String thousandPoint(int column) {
    return layout().thousandPoint(column);
  }

  /** The rows after the header. */
  InputStream rows() {
    return text.from(found().next());
  }

  /** The physical line of the first of them. */
  long firstLine() {
    return found().nextLine();
  }

  private HeaderFinder.Found found() {
    return Objects.requireNonNull(found);
  }

  private LayoutReader layout() {
    return Objects.requireNonNull(layout);
  }
}
