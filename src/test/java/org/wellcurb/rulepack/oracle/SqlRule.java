package org.wellcurb.rulepack.oracle;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.wellcurb.formula.Formula;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.judgement.RuleProgram;

/**
 * Says a whole rule in SQL: the outcome of each record, as 0 meets, 1 not applicable, 2 cannot
 * tell, 3 falls short: in the order of mildness, so that the milder of two is the lesser.
 */
final class SqlRule {
  private static final int FIRST_DAY = -100_000;
  private static final int LAST_DAY = 100_000;

  private final SqlFormula formula = new SqlFormula();
  private final RuleProgram program;
  private final LocalDate asOf;

  SqlRule(RuleProgram program, LocalDate asOf) {
    this.program = program;
    this.asOf = asOf;
  }

  /** A query that gives {@code n} and {@code outcome} of each row of the table. */
  String query(String table) {
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < program.texts().size(); i++) {
      texts.add(text(program.texts().get(i)) + " AS o" + i);
    }
    String outcome = byDay(program.judgedBy());
    if (program.omission()) {
      outcome = "CASE WHEN covers = 'repair' THEN 1 ELSE " + outcome + " END";
    }
    String from = table;
    for (List<String> layer : formula.layers()) {
      if (!layer.isEmpty()) {
        from = "(SELECT *, " + String.join(", ", layer) + " FROM " + from + ")";
      }
    }
    return "SELECT n, "
        + outcome
        + " AS outcome FROM (SELECT *, "
        + String.join(", ", texts)
        + " FROM "
        + from
        + ") ORDER BY n";
  }

  /** One text: 1 where it does not apply, 2 where that or what it asks cannot be told. */
  private String text(DatedText text) {
    SqlTruth when = when(text);
    String doesNotApply = "(" + when.isVoid() + " OR NOT " + when.truth() + ")";
    Formula require = text.require();
    if (require == null) {
      return "(CASE WHEN " + doesNotApply + " THEN 1 ELSE 2 END)";
    }
    SqlTruth asks = formula.truth(require.tree());
    return "(CASE WHEN "
        + doesNotApply
        + " OR "
        + asks.isVoid()
        + " THEN 1 WHEN "
        + asks.truth()
        + " THEN 0 WHEN "
        + when.truth()
        + " AND NOT "
        + asks.truth()
        + " THEN 3 ELSE 2 END)";
  }

  private SqlTruth when(DatedText text) {
    SqlTruth ofRule = truth(program.when());
    SqlTruth ofText = truth(text.when());
    String truth =
        "((CASE WHEN "
            + ofRule.isVoid()
            + " THEN TRUE ELSE "
            + ofRule.truth()
            + " END) AND (CASE WHEN "
            + ofText.isVoid()
            + " THEN TRUE ELSE "
            + ofText.truth()
            + " END))";
    // A rule without a condition of its own has only the text's, and the other way round.
    String isVoid =
        program.when() == null
            ? ofText.isVoid()
            : text.when() == null
                ? ofRule.isVoid()
                : "(" + ofRule.isVoid() + " AND " + ofText.isVoid() + ")";
    return new SqlTruth(truth, isVoid);
  }

  private SqlTruth truth(org.wellcurb.formula.@org.jspecify.annotations.Nullable Formula of) {
    return of == null ? new SqlTruth("TRUE") : formula.truth(of.tree());
  }

  private String byDay(JudgedBy day) {
    boolean isDated =
        program.texts().size() > 1
            || program.texts().get(0).from() != null
            || program.texts().get(0).until() != null;
    if (!isDated) {
      return "o0";
    }
    if (day instanceof JudgedBy.LessStrictOf several) {
      // least passes nulls over: a day that is n/a is left out, unless all are.
      String counted =
          several.days().stream()
              .map(one -> "CASE WHEN NOT " + isOut(one) + " THEN " + byDay(one) + " END")
              .collect(Collectors.joining(", ", "least(", ")"));
      String all =
          several.days().stream().map(this::byDay).collect(Collectors.joining(", ", "least(", ")"));
      return "coalesce(" + counted + ", " + all + ")";
    }
    if (day instanceof JudgedBy.AsOf) {
      String on = Long.toString(asOf.toEpochDay());
      return between(on, on);
    }
    if (day instanceof JudgedBy.Entry of) {
      String name = SqlFormula.column(of.entry());
      return between(
          "coalesce(" + name + "_lo, " + FIRST_DAY + ")",
          "coalesce(" + name + "_hi, " + LAST_DAY + ")");
    }
    throw new UnsupportedOperationException("no SQL for " + day);
  }

  private static String isOut(JudgedBy day) {
    return day instanceof JudgedBy.Entry of
        ? SqlFormula.isNotApplicable(SqlFormula.column(of.entry()))
        : "FALSE";
  }

  /** Alike by every text that may be in force, and by none where a day is left over; else 2. */
  private String between(String first, String last) {
    List<String> may = new ArrayList<>();
    List<String> days = new ArrayList<>();
    for (int i = 0; i < program.texts().size(); i++) {
      DatedText text = program.texts().get(i);
      long from = text.from() == null ? FIRST_DAY : text.from().toEpochDay();
      long until = text.until() == null ? LAST_DAY : text.until().toEpochDay();
      String common =
          "(least(" + last + ", " + until + ") - greatest(" + first + ", " + from + ") + 1)";
      days.add("greatest(0, " + common + ")");
      may.add("CASE WHEN " + common + " > 0 THEN o" + i + " END");
    }
    String all = String.join(", ", may);
    String left = "(" + last + " - " + first + " + 1 > " + String.join(" + ", days) + ")";
    String least = "least(" + all + ", CASE WHEN " + left + " THEN 1 END)";
    String greatest = "greatest(" + all + ", CASE WHEN " + left + " THEN 1 END)";
    return "(CASE WHEN " + least + " = " + greatest + " THEN " + least + " ELSE 2 END)";
  }
}
