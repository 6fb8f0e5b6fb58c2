package org.wellcurb.bench;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** The comparisons by an embedded SQL engine; what fails goes to a CSV file of number and rule. */
final class SqlPeer {
  private SqlPeer() {}

  /** FILE OUT COMPARISONS. */
  public static void main(String[] arguments) throws SQLException {
    List<Comparison> comparisons = Comparison.some(Integer.parseInt(arguments[2]));
    try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
        Statement statement = connection.createStatement()) {
      statement.execute(sql(Path.of(arguments[0]), Path.of(arguments[1]), comparisons));
    }
  }

  private static String sql(Path file, Path out, List<Comparison> comparisons) {
    List<String> columns = new ArrayList<>();
    for (int i = 0; i < Columns.KEYS.size(); i++) {
      columns.add("c" + i);
    }
    StringBuilder named = new StringBuilder();
    StringBuilder numbers = new StringBuilder();
    for (int i = 0; i < columns.size(); i++) {
      named.append(i == 0 ? "" : ", ").append("'c").append(i).append("': 'VARCHAR'");
      if (Columns.isNumber(Columns.KEYS.get(i))) {
        // Cast alone, it would be read as a number at once, and a cell that is none end the read.
        numbers.append(", TRY_CAST(nullif(c").append(i).append(", '') AS DOUBLE) AS c").append(i);
      }
    }
    StringBuilder cases = new StringBuilder();
    for (Comparison comparison : comparisons) {
      cases.append(cases.isEmpty() ? "" : ", ").append("CASE WHEN ");
      cases.append(comparison.failing(columns)).append(" THEN '");
      cases.append(comparison.rule()).append("' END");
    }
    return "COPY (SELECT c0, rule FROM (SELECT c0, unnest(["
        + cases
        + "]) AS rule FROM (SELECT c0"
        + numbers
        + " FROM read_csv('"
        + file
        + "', auto_detect = false, header = true, delim = ',', quote = '\"', columns = {"
        + named
        + "}))) WHERE rule IS NOT NULL) TO '"
        + out
        + "' (HEADER)";
  }
}
