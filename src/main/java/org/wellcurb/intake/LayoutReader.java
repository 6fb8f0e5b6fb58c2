package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/** Makes of a header what each column holds. */
final class LayoutReader {
  private final Catalogue catalogue;

  LayoutReader(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** True for a header cell that names an entry. */
  boolean isName(String cell) {
    return find(HeaderKey.of(cell).key()) != null;
  }

  private @Nullable Entry find(String key) {
    return catalogue.find(key.toLowerCase(Locale.ROOT));
  }

  /** The columns; those that no entry takes say why. */
  List<Column> columns(List<String> header, CellStyle style) {
    List<Column> columns = new ArrayList<>();
    for (String cell : header) {
      columns.add(column(columns.size(), HeaderKey.of(cell), HeaderKey.strip(cell), style));
    }
    return columns;
  }

  /** Why a header with these columns cannot be used; empty if it can. */
  static String problem(List<Column> columns) {
    if (columns.size() > Bounds.COLUMNS) {
      return "the header has "
          + columns.size()
          + " columns; at most "
          + Bounds.COLUMNS
          + " are read";
    }
    Map<String, Column> names = new HashMap<>();
    for (Column column : columns) {
      String name = column.entry() == null ? column.name() : column.entry().key();
      Column first = names.putIfAbsent(name, column);
      if (first != null) {
        return "the header names "
            + name
            + " twice, in columns "
            + (first.index() + 1)
            + " and "
            + (column.index() + 1)
            + "; rename one of them";
      }
    }
    boolean hasId = columns.stream().anyMatch(c -> c.entry() != null && c.entry().index() == 0);
    if (hasId) {
      return "";
    }
    Optional<Column> near =
        columns.stream().filter(c -> "record.id".equals(c.nearest())).findFirst();
    return "no column of the header is record.id"
        + near.map(c -> " (column " + (c.index() + 1) + ", " + c.name() + ", is near it)")
            .orElse("")
        + "; name the columns by their keys, or give a header map";
  }

  private Column column(int index, HeaderKey header, String written, CellStyle style) {
    String name = written.isEmpty() ? "column " + (index + 1) : written;
    Entry entry = find(header.key());
    if (entry == null) {
      String nearest = written.isEmpty() ? null : near(header.key());
      return new Column(index, name, null, null, style, nearest, "");
    }
    if (entry.kind() == Kind.LIST && !entry.key().equals("record.variances")) {
      return unusable(index, name, style, entry.key() + " can be given in JSON only");
    }
    if (header.unit().isEmpty()) {
      return new Column(index, name, entry, null, style, null, "");
    }
    Optional<Unit> unit = Units.named(header.unit());
    if (unit.isEmpty()) {
      return unusable(index, name, style, "the unit " + header.unit() + " is not known");
    }
    String problem = "";
    Unit given = unit.get();
    if (!given.dimension().equals(entry.kind().dimension()) && !isHead(entry, given)) {
      // Its numbers are then unreadable, each quoted on the sheet, unless the cell has a unit.
      problem = given.symbol() + " is not a unit of " + entry.kind().label();
    }
    return new Column(index, name, entry, given, style, null, problem);
  }

  /** A pump's pressure is often given as a head. */
  private static boolean isHead(Entry entry, Unit unit) {
    return entry.kind() == Kind.PRESSURE
        && (unit.id() == Units.FOOT.id() || unit.id() == Units.METRE.id());
  }

  private static Column unusable(int index, String name, CellStyle style, String problem) {
    return new Column(index, name, null, null, style, null, problem);
  }

  /** The key that is one or two letters away. */
  private @Nullable String near(String key) {
    String folded = key.toLowerCase(Locale.ROOT);
    @Nullable String nearest = catalogue.nearest(folded);
    return nearest != null && org.wellcurb.record.Nearest.distance(folded, nearest) <= 2
        ? nearest
        : null;
  }
}
