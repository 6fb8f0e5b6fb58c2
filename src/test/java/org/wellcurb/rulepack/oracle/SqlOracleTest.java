package org.wellcurb.rulepack.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.Part;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.Source;
import org.wellcurb.screening.Screener;

/**
 * Every published rule says the same in SQL: its formula is translated to a query over a database
 * engine that knows nothing of ours, and both judge the same made-up records, blanks, ranges and
 * entries that do not apply among them.
 */
class SqlOracleTest {
  private static final long SEED = 20_240_607L;
  private static final int RECORDS = 240;
  private static final int MOST_ROUNDS = 20;
  private static final int ENOUGH = 3;
  private static final Outcome[] BY_MILDNESS = {
    Outcome.MEETS, Outcome.NOT_APPLICABLE, Outcome.CANNOT_TELL, Outcome.FALLS_SHORT
  };

  static Stream<String> published() {
    return PackLoader.shipped().stream().filter(SqlOracleTest::isPublished);
  }

  /** A published code, or common practice where it leans on a text. */
  private static boolean isPublished(String name) {
    return !own(load(name)).isEmpty();
  }

  /** The rules of the pack itself that rest on a published text: none is left out. */
  private static List<Rule> own(Pack pack) {
    return pack.rules().stream()
        .filter(rule -> rule.pack().equals(pack.id()))
        .filter(rule -> rule.source().basis() == Source.Basis.PUBLISHED)
        .toList();
  }

  private static Pack load(String name) {
    try {
      return PackLoader.load(name);
    } catch (PackException e) {
      throw new AssertionError(name + " does not load: " + e.getMessage(), e);
    }
  }

  @ParameterizedTest
  @MethodSource("published")
  void agreesOnEveryRule(String name) throws SQLException {
    Pack pack = load(name);
    Screener screener = new Screener(pack, pack.edition());
    try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
        Statement statement = connection.createStatement()) {
      statement.execute(
          "CREATE MACRO less(a, b) AS a < b AND abs(a - b) >= 1e-9 * greatest(abs(a), abs(b))");
      statement.execute(
          "CREATE MACRO same_or_more(a, b) AS a >= b OR abs(a - b) < 1e-9 * greatest(abs(a), abs(b))");
      for (Rule rule : own(pack)) {
        agree(pack, rule, screener, statement);
      }
    }
  }

  /** Rounds of records until enough of them meet the rule and enough fall short of it. */
  private static void agree(Pack pack, Rule rule, Screener screener, Statement statement)
      throws SQLException {
    long seed = SEED + rule.id().hashCode();
    RecordsNear records = new RecordsNear(rule.program(), new Random(seed));
    boolean isAsk = !rule.ask().isEmpty();
    int[] counts = new int[BY_MILDNESS.length];
    boolean isEnough = false;
    for (int round = 0; round < MOST_ROUNDS && !isEnough; round++) {
      round(pack, rule, screener, statement, records, "seed " + seed + " round " + round, counts);
      isEnough = isAsk ? counts[2] >= ENOUGH : counts[0] >= ENOUGH && counts[3] >= ENOUGH;
    }
    assertTrue(
        isEnough,
        () ->
            pack.id()
                + " "
                + rule.id()
                + ", seed "
                + seed
                + ": too few outcomes of each kind: "
                + java.util.Arrays.toString(counts));
  }

  private static void round(
      Pack pack,
      Rule rule,
      Screener screener,
      Statement statement,
      RecordsNear records,
      String where,
      int[] counts)
      throws SQLException {
    int place = pack.rules().indexOf(rule);
    List<Map<String, String>> made = new ArrayList<>();
    List<Outcome> ours = new ArrayList<>();
    StringJoiner rows = new StringJoiner(", ");
    for (int n = 0; n < RECORDS; n++) {
      Map<String, String> texts = records.next();
      WellRecord record = RecordReader.of(texts);
      made.add(texts);
      rows.add(row(n, record, records, pack.mustApply()));
      // As the rule is judged: of one subject only the worst is kept.
      screener.outcomes(record);
      ours.add(Outcome.at(screener.asJudged()[place]));
    }
    String columns =
        records.entries().stream()
            .flatMap(entry -> SqlFormula.columns(entry).stream())
            .collect(Collectors.joining(", "));
    statement.execute(
        "CREATE OR REPLACE TABLE records(n INTEGER, covers VARCHAR, "
            + SqlFormula.SHIFT
            + " DOUBLE, "
            + columns
            + ")");
    statement.execute("INSERT INTO records VALUES " + rows);
    String query = new SqlRule(rule.program(), pack.edition()).query("records");
    try (ResultSet theirs = statement.executeQuery(query)) {
      while (theirs.next()) {
        int n = theirs.getInt(1);
        counts[theirs.getInt(2)]++;
        assertEquals(
            BY_MILDNESS[theirs.getInt(2)],
            ours.get(n),
            () -> pack.id() + " " + rule.id() + ", " + where + ", " + made.get(n) + "\n" + query);
      }
    }
  }

  private static String row(int n, WellRecord record, RecordsNear records, List<String> mustApply) {
    StringJoiner row = new StringJoiner(", ", "(", ")");
    String covers = choice(record, "record.covers");
    row.add(Integer.toString(n)).add(covers.isEmpty() ? "NULL" : "'" + covers + "'");
    boolean isFromTop = choice(record, "record.datum").equals("casing top");
    int stickup = record.catalogue().index("well.stickup");
    row.add(isFromTop ? Double.toString(record.lo(stickup)) : "0");
    for (Entry entry : records.entries()) {
      byte state = record.state(entry.index());
      if (state == WellRecord.NOT_APPLICABLE && mustApply.contains(entry.key())) {
        state = WellRecord.UNKNOWN;
      }
      if (isLeftOut(entry, covers)) {
        state = WellRecord.NOT_APPLICABLE;
      }
      row.add(Byte.toString(state));
      boolean isGiven = state == WellRecord.GIVEN;
      if (entry.kind() == Kind.CHOICE || entry.kind() == Kind.TEXT) {
        row.add(isGiven ? "'" + word(record, entry) + "'" : "NULL");
      } else {
        row.add(isGiven ? end(record.lo(entry.index())) : "NULL");
        row.add(isGiven ? end(record.hi(entry.index())) : "NULL");
        row.add("'" + record.system(entry.index()) + "'");
      }
    }
    return row.toString();
  }

  private static boolean isLeftOut(Entry entry, String covers) {
    return (covers.equals("well") && entry.part() == Part.PUMP)
        || (covers.equals("pump") && entry.part() == Part.WELL);
  }

  private static String choice(WellRecord record, String key) {
    String choice = record.choice(record.catalogue().index(key));
    return choice == null ? "" : choice;
  }

  private static String word(WellRecord record, Entry entry) {
    String word =
        entry.kind() == Kind.CHOICE ? record.choice(entry.index()) : record.text(entry.index());
    return word == null ? "" : word.toLowerCase(java.util.Locale.ROOT);
  }

  private static String end(double end) {
    return Double.isInfinite(end) ? "NULL" : Double.toString(end);
  }
}
