package org.wellcurb.rulepack.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.wellcurb.formula.Relation;
import org.wellcurb.formula.Table;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/**
 * Says tables of limits in SQL, in layers of columns: whether each row matches, the first row that
 * surely does, and the ends of what the table may give.
 */
final class SqlTables {
  private final SqlFormula formula;
  private final List<List<String>> layers =
      List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
  private final Map<String, String> names = new HashMap<>();

  SqlTables(SqlFormula formula) {
    this.formula = formula;
  }

  /** Columns, each {@code expression AS name}; those of a layer read only those before it. */
  List<List<String>> layers() {
    return layers;
  }

  /** The limit: the hull of the rows that may hold; unbounded where none does. */
  SqlAmount amount(Table table) {
    String name = columns(table);
    return new SqlAmount(name + "lo", name + "hi", isVoid(table));
  }

  private void ends(Table table, String name) {
    List<String> values = new ArrayList<>();
    for (int i = 0; i < table.rows().size(); i++) {
      Table.Amount value = (Table.Amount) table.rows().get(i).value();
      values.add(
          "CASE WHEN " + mayHold(name, i) + " THEN CAST(" + value.primary() + " AS DOUBLE) END");
    }
    String all = String.join(", ", values);
    layers.get(2).add("least(" + all + ") AS " + name + "lo");
    layers.get(2).add("greatest(" + all + ") AS " + name + "hi");
  }

  /** Whether the word that the table gives is one of these. */
  SqlTruth gives(Table table, List<String> words) {
    String in = rows(table, words, true);
    String out = rows(table, words, false);
    return new SqlTruth(
        "(CASE WHEN "
            + in
            + " AND NOT "
            + out
            + " THEN TRUE WHEN "
            + out
            + " AND NOT "
            + in
            + " THEN FALSE END)",
        isVoid(table));
  }

  private String rows(Table table, List<String> words, boolean isIn) {
    String name = columns(table);
    return IntStream.range(0, table.rows().size())
        .filter(i -> words.contains(((Table.Word) table.rows().get(i).value()).word()) == isIn)
        .mapToObj(i -> mayHold(name, i))
        .collect(Collectors.joining(" OR ", "(", ")"));
  }

  private static String isVoid(Table table) {
    return table.by().stream()
        .map(key -> SqlFormula.isNotApplicable(SqlFormula.column(key)))
        .collect(Collectors.joining(" OR ", "(", ")"));
  }

  /** No row before it surely matches, and it is not sure that it does not. */
  private static String mayHold(String name, int row) {
    return "(coalesce(" + name + row + ", TRUE) AND " + name + "first >= " + row + ")";
  }

  private String columns(Table table) {
    String known = names.get(table.name());
    if (known != null) {
      return known;
    }
    String name = "row_" + table.name().replace('-', '_') + "_";
    names.put(table.name(), name);
    StringBuilder first = new StringBuilder("CASE");
    for (int i = 0; i < table.rows().size(); i++) {
      List<Table.Cell> cells = table.rows().get(i).cells();
      List<String> all = new ArrayList<>();
      for (int k = 0; k < cells.size(); k++) {
        all.add(matches(table.by().get(k), cells.get(k)));
      }
      layers.get(0).add("(" + String.join(" AND ", all) + ") AS " + name + i);
      first.append(" WHEN ").append(name).append(i).append(" THEN ").append(i);
    }
    layers.get(1).add(first + " ELSE " + table.rows().size() + " END AS " + name + "first");
    if (table.gives() != null) {
      ends(table, name);
    }
    return name;
  }

  private String matches(Entry key, Table.Cell cell) {
    if (cell instanceof Table.Any) {
      return "TRUE";
    }
    String name = SqlFormula.column(key);
    if (cell instanceof Table.Words words) {
      String column =
          key.kind() == Kind.YES_NO
              ? "CASE " + name + "_lo WHEN 1 THEN 'yes' ELSE 'no' END"
              : name + "_w";
      return SqlFormula.whereGiven(name, column + " IN (" + SqlFormula.quoted(words.words()) + ")");
    }
    Table.Range range = (Table.Range) cell;
    SqlAmount value = formula.entry(key);
    List<String> ends = new ArrayList<>();
    if (Double.isFinite(range.range().lo())) {
      Relation least = range.loIncluded() ? Relation.AT_LEAST : Relation.MORE;
      ends.add(formula.compare(least, value, SqlAmount.of(range.range().lo())).truth());
    }
    if (Double.isFinite(range.range().hi())) {
      Relation most = range.hiIncluded() ? Relation.AT_MOST : Relation.LESS;
      ends.add(formula.compare(most, value, SqlAmount.of(range.range().hi())).truth());
    }
    return SqlFormula.whereGiven(name, "(" + String.join(" AND ", ends) + ")");
  }
}
