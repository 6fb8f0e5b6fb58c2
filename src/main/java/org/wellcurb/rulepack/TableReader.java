package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.FormulaException;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/** Reads one table of a pack. */
final class TableReader {
  private final Problems problems;
  private final Shapes shapes;
  private final Catalogue catalogue;
  private final Set<String> sourceIds;

  /**
   * @param sourceIds names of the sources that a table may name
   */
  TableReader(Problems problems, Shapes shapes, Catalogue catalogue, Set<String> sourceIds) {
    this.sourceIds = sourceIds;
    this.problems = problems;
    this.shapes = shapes;
    this.catalogue = catalogue;
  }

  /**
   * The table, with the rows that can be read; null where its keys or its dimension cannot be.
   *
   * <p>A cell that lists amounts or ranges makes a row for each: the same value, one after another.
   */
  @Nullable Table read(String name, Json json) {
    Fields fields = shapes.fields(json);
    if (fields == null) {
      return null;
    }
    List<Entry> by = by(fields.must("by"));
    Json givesAt = fields.must("gives");
    String gives = shapes.text(givesAt);
    boolean words = "text".equals(gives);
    @Nullable Dimension dimension = gives == null ? null : Dimension.named(gives);
    if (gives != null
        && givesAt != null
        && !words
        && (dimension == null || dimension.equals(Dimension.DATE))) {
      problems.stumble(givesAt);
      dimension = null;
    }
    List<Json> rowsAt = shapes.items(fields.must("rows"), 1);
    String title = fields.line("title");
    String source = source(fields.may("source"));
    String standsFor = standsFor(fields.may("standsFor"));
    fields.done();
    List<RowReach.Row> rows = new ArrayList<>();
    for (Json rowAt : rowsAt) {
      RowReach.Row row = row(rowAt, by, words, dimension);
      if (row != null) {
        rows.add(row);
      }
    }
    if (by == null || (!words && dimension == null)) {
      return null;
    }
    if (rows.size() == rowsAt.size()) {
      RowReach.refuseUnreachable(problems, by, rows);
    }
    List<Table.Row> flat = new ArrayList<>();
    rows.forEach(row -> flat.addAll(row.flat()));
    return new Table(name, by, dimension, flat, title, source, standsFor);
  }

  /** The entry whose place it takes: so far that of frost alone, which drawings show. */
  private String standsFor(@Nullable Json json) {
    String key = json == null ? null : shapes.text(json);
    if (json != null && key != null && !key.equals("site.frost_depth")) {
      problems.stumble(json);
    }
    return key == null ? "" : key;
  }

  /** The name of its source; empty where there is none. */
  private String source(@Nullable Json json) {
    String source = json == null ? null : shapes.name(json);
    if (json != null && source != null && !sourceIds.contains(source)) {
      problems.at(
          json,
          "there is no source " + source,
          Mends.nearest(source, sourceIds.stream().sorted().toList(), "add it to sources"));
    }
    return source == null ? "" : source;
  }

  private @Nullable List<Entry> by(@Nullable Json json) {
    List<Entry> entries = new ArrayList<>();
    List<Json> items = shapes.distinct(json, 1);
    for (Json item : items) {
      String key = shapes.key(item);
      Entry entry = key == null ? null : catalogue.find(key);
      if (entry != null && entry.kind() != Kind.LIST) {
        entries.add(entry);
      } else if (key != null && entry != null) {
        problems.at(item, key + " is a list", "choose a row by another entry");
      } else if (key != null) {
        problems.at(item, "there is no entry " + key, Mends.nearestKey(catalogue, key));
      }
    }
    return entries.isEmpty() || entries.size() < items.size() ? null : entries;
  }

  private RowReach.@Nullable Row row(
      Json json, @Nullable List<Entry> by, boolean words, @Nullable Dimension dimension) {
    Fields fields = shapes.fields(json);
    if (fields == null) {
      return null;
    }
    Json whenAt = fields.must("when");
    List<Json> cellsAt = shapes.items(whenAt, 1);
    Json valueAt = fields.must("value");
    fields.done();
    Table.Value value = value(valueAt, words, dimension);
    List<List<Table.Cell>> cells = new ArrayList<>();
    boolean whole = true;
    for (int i = 0; i < cellsAt.size(); i++) {
      Entry key = by != null && i < by.size() ? by.get(i) : null;
      List<Table.Cell> cell = cell(cellsAt.get(i), key);
      whole &= !cell.isEmpty();
      cells.add(cell);
    }
    if (by != null && whenAt != null && cellsAt.size() != by.size() && !cellsAt.isEmpty()) {
      problems.at(
          whenAt,
          "the row has " + many(cellsAt.size(), "cell") + " for " + many(by.size(), "key"),
          "write a cell for each of by; * matches any");
      return null;
    }
    return by == null || value == null || !whole || cells.isEmpty()
        ? null
        : new RowReach.Row(json, cells, value);
  }

  /** What a cell allows; empty where it cannot be read. */
  private List<Table.Cell> cell(Json json, @Nullable Entry key) {
    if (!(json instanceof Json.Arr)) {
      Table.Cell cell = one(json, key);
      return cell == null ? List.of() : List.of(cell);
    }
    List<Table.Cell> cells = new ArrayList<>();
    List<String> words = new ArrayList<>();
    List<String> shown = new ArrayList<>();
    List<Json> items = shapes.distinct(json, 1);
    for (Json item : items) {
      Table.Cell cell = one(item, key);
      if (cell == null) {
        return List.of();
      }
      if (cell instanceof Table.Words some) {
        words.addAll(some.words());
        shown.addAll(some.shown());
      } else {
        cells.add(cell);
      }
    }
    if (!words.isEmpty()) {
      cells.add(new Table.Words(words, shown));
    }
    return cells;
  }

  private Table.@Nullable Cell one(Json json, @Nullable Entry key) {
    String text = shapes.amount(json);
    if (text == null || key == null) {
      return null;
    }
    try {
      return TableCell.read(text, key);
    } catch (FormulaException e) {
      problems.within(json, e);
      return null;
    }
  }

  private Table.@Nullable Value value(
      @Nullable Json json, boolean words, @Nullable Dimension dimension) {
    String text = shapes.amount(json);
    if (text == null || json == null) {
      return null;
    }
    if (words) {
      return new Table.Word(TableCell.fold(text), text.strip());
    }
    if (dimension == null) {
      return null;
    }
    try {
      return AmountText.read(text, dimension);
    } catch (FormulaException e) {
      problems.within(json, e);
      return null;
    }
  }

  private static String many(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }
}
