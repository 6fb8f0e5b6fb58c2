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

/** Says tables of limits in SQL: a column for each row, whether it may be the one that holds. */
final class SqlTables {
  private final SqlFormula formula;
  private final List<String> derived = new ArrayList<>();
  private final Map<String, String> names = new HashMap<>();

  SqlTables(SqlFormula formula) {
    this.formula = formula;
  }

  List<String> derived() {
    return derived;
  }

  /** The limit: the hull of the rows that may hold; unbounded where none does. */
  SqlAmount amount(Table table) {
    List<String> values = new ArrayList<>();
    for (int i = 0; i < table.rows().size(); i++) {
      Table.Amount value = (Table.Amount) table.rows().get(i).value();
      values.add(
          "CASE WHEN " + mayHold(table, i) + " THEN CAST(" + value.primary() + " AS DOUBLE) END");
    }
    String all = String.join(", ", values);
    return new SqlAmount("least(" + all + ")", "greatest(" + all + ")", isVoid(table));
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
    return IntStream.range(0, table.rows().size())
        .filter(i -> words.contains(((Table.Word) table.rows().get(i).value()).word()) == isIn)
        .mapToObj(i -> mayHold(table, i))
        .collect(Collectors.joining(" OR ", "(", ")"));
  }

  private static String isVoid(Table table) {
    return table.by().stream()
        .map(key -> SqlFormula.isNotApplicable(SqlFormula.column(key)))
        .collect(Collectors.joining(" OR ", "(", ")"));
  }

  /** No row before it surely matches, and it is not sure that it does not. */
  private String mayHold(Table table, int row) {
    String name = columns(table);
    String before =
        IntStream.range(0, row)
            .mapToObj(i -> "coalesce(" + name + i + ", FALSE)")
            .collect(Collectors.joining(" OR "));
    return "(coalesce("
        + name
        + row
        + ", TRUE)"
        + (before.isEmpty() ? "" : " AND NOT (" + before + ")")
        + ")";
  }

  private String columns(Table table) {
    String known = names.get(table.name());
    if (known != null) {
      return known;
    }
    String name = "row_" + table.name().replace('-', '_') + "_";
    names.put(table.name(), name);
    for (int i = 0; i < table.rows().size(); i++) {
      List<Table.Cell> cells = table.rows().get(i).cells();
      List<String> all = new ArrayList<>();
      for (int k = 0; k < cells.size(); k++) {
        all.add(matches(table.by().get(k), cells.get(k)));
      }
      derived.add("(" + String.join(" AND ", all) + ") AS " + name + i);
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
