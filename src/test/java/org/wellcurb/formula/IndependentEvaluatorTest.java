package org.wellcurb.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.TestScope;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;

/**
 * The rule language against an embedded SQL engine: random conditions over random records, with
 * blanks, ranges, bounds, n/a, metric values and their rounding. Replay with -Dseed=N.
 */
class IndependentEvaluatorTest {
  private static final int RECORDS = 2500;
  private static final int RULES = 240;
  private static final String[] USES = {"household", "public", "irrigation"};

  @Test
  void agreesOnGeneratedRecords() throws Exception {
    long seed = Long.getLong("seed", 20260101L);
    Random random = new Random(seed);
    try (Connection db = DriverManager.getConnection("jdbc:duckdb:")) {
      List<WellRecord> records = records(db, random);
      Frame frame = new Frame(new TestScope().catalogue());
      int[] seen = new int[4];
      for (int r = 0; r < RULES; r++) {
        // Slack has its place outside `not`; a rule that starts with one is tested without metric.
        GeneratedRule.Twice rule = GeneratedRule.draw(random);
        if (rule.rule().contains("not (") && hasBareLimit(rule.rule())) {
          continue;
        }
        compare(db, records, frame, rule, seed, seen);
      }
      for (int truth = 0; truth < 4; truth++) {
        assertEquals(true, seen[truth] > 1000, "truth " + truth + " was hardly met, seed " + seed);
      }
    }
  }

  private static boolean hasBareLimit(String rule) {
    return rule.matches("(?s).*(setback\\.\\w+) (>=|<=) \\d+ ft(?! \\().*");
  }

  private static void compare(
      Connection db,
      List<WellRecord> records,
      Frame frame,
      GeneratedRule.Twice rule,
      long seed,
      int[] seen)
      throws Exception {
    Formula formula = Formula.condition(rule.rule(), new TestScope());
    try (Statement query = db.createStatement();
        ResultSet rows = query.executeQuery("SELECT id, " + rule.sql() + " FROM rec ORDER BY id")) {
      while (rows.next()) {
        WellRecord record = records.get(rows.getInt(1));
        frame.take(record);
        int ours = formula.evaluate(frame);
        assertEquals(
            rows.getInt(2),
            ours,
            () -> rule.rule() + " on " + describe(record) + ", seed " + seed + "\n" + rule.sql());
        seen[ours]++;
      }
    }
  }

  private static String describe(WellRecord record) {
    List<String> said = new ArrayList<>();
    record.catalogue().entries().stream()
        .filter(e -> !record.written(e.index()).isEmpty())
        .forEach(e -> said.add(e.key() + "=" + record.written(e.index())));
    return said.toString();
  }

  private static List<WellRecord> records(Connection db, Random random) throws SQLException {
    StringBuilder columns =
        new StringBuilder(
            "id INTEGER, use VARCHAR, use_na BOOLEAN, fitted BOOLEAN, fitted_na BOOLEAN");
    for (int i = 0; i < GeneratedRule.LENGTHS.length; i++) {
      String e = ", e" + i;
      columns
          .append(e)
          .append("_lo DOUBLE")
          .append(e)
          .append("_hi DOUBLE")
          .append(e)
          .append("_half DOUBLE");
      columns
          .append(e)
          .append("_metric BOOLEAN")
          .append(e)
          .append("_known BOOLEAN")
          .append(e)
          .append("_na BOOLEAN");
    }
    try (Statement create = db.createStatement()) {
      create.execute("CREATE TABLE rec (" + columns + ")");
    }
    int width = 5 + 6 * GeneratedRule.LENGTHS.length;
    List<WellRecord> records = new ArrayList<>();
    try (PreparedStatement insert =
        db.prepareStatement("INSERT INTO rec VALUES (" + "?, ".repeat(width - 1) + "?)")) {
      for (int id = 0; id < RECORDS; id++) {
        Map<String, String> given = new LinkedHashMap<>();
        given.put("record.datum", "ground");
        insert.setInt(1, id);
        boolean useNa = random.nextInt(8) == 0;
        String use = random.nextInt(4) == 0 ? null : USES[random.nextInt(USES.length)];
        given.put("well.use", useNa ? "n/a" : use == null ? "" : use.toUpperCase(Locale.ROOT));
        insert.setString(2, use);
        insert.setBoolean(3, useNa);
        boolean fittedNa = random.nextInt(8) == 0;
        Boolean fitted = random.nextInt(4) == 0 ? null : Boolean.valueOf(random.nextBoolean());
        given.put("relief.fitted", fittedNa ? "n/a" : fitted == null ? "?" : fitted ? "yes" : "no");
        insert.setObject(4, fitted);
        insert.setBoolean(5, fittedNa);
        for (int i = 0; i < GeneratedRule.LENGTHS.length; i++) {
          length(insert, 6 + 6 * i, given, GeneratedRule.LENGTHS[i], random);
        }
        insert.addBatch();
        records.add(RecordReader.of(given));
      }
      insert.executeBatch();
    }
    return records;
  }

  /**
   * One length: exact, range, bound, blank or n/a; in feet or metres, with or without a decimal.
   */
  private static void length(
      PreparedStatement insert, int at, Map<String, String> given, String key, Random random)
      throws SQLException {
    boolean isMetric = random.nextInt(3) == 0;
    double unit = isMetric ? 1 : 0.3048;
    String symbol = isMetric ? " m" : " ft";
    boolean isTenths = random.nextBoolean();
    double scale = isTenths ? 10 : 1;
    double a =
        Math.rint((isMetric ? 6 + 20 * random.nextDouble() : 20 + 60 * random.nextDouble()) * scale)
            / scale;
    double b = a + 1 + random.nextInt(10);
    double lo = Double.NEGATIVE_INFINITY;
    double hi = Double.POSITIVE_INFINITY;
    double half = 0;
    boolean isKnown = true;
    boolean isNa = false;
    switch (random.nextInt(8)) {
      case 0 -> {
        given.put(key, random.nextBoolean() ? "" : "not known");
        isKnown = false;
      }
      case 1 -> {
        given.put(key, "n/a");
        isNa = true;
        isKnown = false;
      }
      case 2 -> {
        given.put(key, text(a) + "-" + text(b) + symbol);
        lo = a * unit;
        hi = b * unit;
      }
      case 3 -> {
        given.put(key, ">" + text(a) + symbol);
        lo = a * unit;
      }
      case 4 -> {
        given.put(key, "<" + text(a) + symbol);
        lo = 0;
        hi = a * unit;
      }
      default -> {
        given.put(key, text(a) + symbol);
        lo = a * unit;
        hi = lo;
        half = 0.5 / (text(a).contains(".") ? 10 : 1) * unit;
      }
    }
    insert.setDouble(at, lo);
    insert.setDouble(at + 1, hi);
    insert.setDouble(at + 2, half);
    insert.setBoolean(at + 3, isMetric && isKnown);
    insert.setBoolean(at + 4, isKnown);
    insert.setBoolean(at + 5, isNa);
  }

  private static String text(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
