package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Comma;
import org.wellcurb.record.CellStyle;

/**
 * How one kind of table is to be understood.
 *
 * @param form what the map says of delimiter, encoding, header
 * @param style how cells are written unless a column says otherwise
 * @param columns the columns that fill entries
 * @param ignored columns that are known and not wanted
 * @param only conditions that all must hold for a row to be taken
 * @param layers the columns of each layer that a row holds
 * @param setbacks the columns of a distance; null if rows hold none
 */
public record TableMap(
    TableForm form,
    CellStyle style,
    List<MappedColumns> columns,
    List<ColumnName> ignored,
    List<RowFilter> only,
    List<LayerColumns> layers,
    @Nullable SetbackColumns setbacks) {

  /**
   * How cells are written where nothing says it. That a comma may be either is settled once the
   * delimiter and the first rows are known.
   */
  static final CellStyle STYLE = CellStyle.PLAIN.withComma(Comma.EITHER);

  /** A map that says nothing: headers are keys. */
  static final TableMap NONE =
      new TableMap(TableForm.FOUND, STYLE, List.of(), List.of(), List.of(), List.of(), null);

  /** Nothing but that rows have so many columns more than the header. */
  static TableMap withMore(int columns) {
    TableForm form = TableForm.withMore(columns);
    return new TableMap(form, STYLE, List.of(), List.of(), List.of(), List.of(), null);
  }

  public TableMap {
    columns = List.copyOf(columns);
    ignored = List.copyOf(ignored);
    only = List.copyOf(only);
    layers = List.copyOf(layers);
  }

  /** True if it names a column by this header. */
  boolean namesColumn(String header) {
    return columnNames().stream().anyMatch(c -> c.place() == 0 && c.find(List.of(header)) == 0);
  }

  /** Every column that it names. */
  List<ColumnName> columnNames() {
    List<ColumnName> names = new ArrayList<>(ignored);
    for (MappedColumns mapped : columns) {
      names.addAll(mapped.columns());
      if (mapped.unitFrom() != null) {
        names.add(mapped.unitFrom().column());
      }
    }
    only.forEach(filter -> names.add(filter.column()));
    for (LayerColumns layer : layers) {
      names.add(layer.to());
      names.add(layer.material());
      if (layer.from() != null) {
        names.add(layer.from());
      }
      if (layer.unitFrom() != null) {
        names.add(layer.unitFrom().column());
      }
    }
    if (setbacks != null) {
      names.add(setbacks.from());
      names.add(setbacks.distance());
      if (setbacks.unitFrom() != null) {
        names.add(setbacks.unitFrom().column());
      }
    }
    return names;
  }
}
