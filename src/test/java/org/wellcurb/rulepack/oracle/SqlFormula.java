package org.wellcurb.rulepack.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Relation;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/**
 * Says formulas in SQL, so that an engine which knows nothing of ours evaluates them. Unknown is
 * SQL's own null: Kleene's tables are the database's. What does not apply is carried beside it.
 */
final class SqlFormula {
  /** Depths brought to ground: the stick-up where the record measures from the casing top. */
  static final String SHIFT = "shift";

  private final SqlTables tables = new SqlTables(this);
  private final List<Entry> compared = new ArrayList<>();

  /** Layers of columns to be computed before the formula, each {@code expression AS name}. */
  List<List<String>> layers() {
    return tables.layers();
  }

  SqlTruth truth(Expr.Condition c) {
    if (c instanceof Expr.Compare e) {
      compared.clear();
      entries(e.a());
      entries(e.b());
      return compare(e.relation(), amount(e.a()), amount(e.b()));
    } else if (c instanceof Expr.Between e) {
      SqlAmount a = amount(e.a());
      return joined(
          List.of(
              compare(Relation.AT_LEAST, a, amount(e.least())),
              compare(Relation.AT_MOST, a, amount(e.greatest()))),
          "AND",
          "TRUE");
    } else if (c instanceof Expr.YesNo e) {
      String name = column(e.entry());
      String wanted = name + "_lo = " + (e.expected() ? 1 : 0);
      return new SqlTruth(whereGiven(name, wanted), isNotApplicable(name));
    } else if (c instanceof Expr.Constant e) {
      return new SqlTruth(e.value() ? "TRUE" : "FALSE");
    } else if (c instanceof Expr.Known e) {
      String name = column(e.entry());
      return new SqlTruth("(" + name + "_s = 1)", isNotApplicable(name));
    } else if (c instanceof Expr.IsApplicable e) {
      return new SqlTruth("(NOT " + isNotApplicable(column(e.entry())) + ")", "FALSE");
    } else if (c instanceof Expr.IsOneOf e) {
      return isOneOf(e);
    } else if (c instanceof Expr.Not e) {
      return truth(e.a()).negated();
    } else if (c instanceof Expr.And e) {
      return joined(e.all().stream().map(this::truth).toList(), "AND", "TRUE");
    } else if (c instanceof Expr.Or e) {
      return joined(e.any().stream().map(this::truth).toList(), "OR", "FALSE");
    } else if (c instanceof Expr.ConditionIf e) {
      return choose(truth(e.test()), truth(e.then()), truth(e.otherwise()));
    }
    throw new UnsupportedOperationException("no SQL for " + c);
  }

  /** A side that does not apply is taken for the neutral value, so that it leaves the others. */
  private static SqlTruth joined(List<SqlTruth> parts, String sign, String neutral) {
    String truth =
        parts.stream()
            .map(
                p ->
                    "(CASE WHEN "
                        + p.isVoid()
                        + " THEN "
                        + neutral
                        + " ELSE "
                        + p.truth()
                        + " END)")
            .collect(Collectors.joining(" " + sign + " ", "(", ")"));
    String isVoid =
        parts.stream().map(SqlTruth::isVoid).collect(Collectors.joining(" AND ", "(", ")"));
    return new SqlTruth(truth, isVoid);
  }

  private static SqlTruth choose(SqlTruth test, SqlTruth then, SqlTruth otherwise) {
    String both =
        "CASE WHEN NOT "
            + then.isVoid()
            + " AND NOT "
            + otherwise.isVoid()
            + " AND "
            + then.truth()
            + " = "
            + otherwise.truth()
            + " THEN "
            + then.truth()
            + " END";
    String truth =
        "(CASE WHEN "
            + test.truth()
            + " THEN "
            + then.truth()
            + " WHEN NOT "
            + test.truth()
            + " THEN "
            + otherwise.truth()
            + " ELSE "
            + both
            + " END)";
    String isVoid =
        "("
            + test.isVoid()
            + " OR CASE WHEN "
            + test.truth()
            + " THEN "
            + then.isVoid()
            + " WHEN NOT "
            + test.truth()
            + " THEN "
            + otherwise.isVoid()
            + " ELSE "
            + then.isVoid()
            + " AND "
            + otherwise.isVoid()
            + " END)";
    return new SqlTruth(truth, isVoid);
  }

  private SqlTruth isOneOf(Expr.IsOneOf e) {
    if (e.word() instanceof Expr.TableWord of) {
      SqlTruth in = tables.gives(of.table(), e.words());
      return e.isNegated() ? in.negated() : in;
    }
    String name = column(((Expr.EntryWord) e.word()).entry());
    SqlTruth in =
        new SqlTruth(
            whereGiven(name, name + "_w IN (" + quoted(e.words()) + ")"), isNotApplicable(name));
    return e.isNegated() ? in.negated() : in;
  }

  static String quoted(List<String> words) {
    return words.stream()
        .map(word -> "'" + word.replace("'", "''") + "'")
        .collect(Collectors.joining(", "));
  }

  SqlTruth compare(Relation relation, SqlAmount a, SqlAmount b) {
    String either = "(" + a.isVoid() + " OR " + b.isVoid() + ")";
    return switch (relation) {
      case AT_LEAST -> new SqlTruth(atLeast(a, b), either);
      case AT_MOST -> new SqlTruth(atLeast(b, a), either);
      case MORE -> new SqlTruth(atLeast(b, a), either).negated();
      case LESS -> new SqlTruth(atLeast(a, b), either).negated();
      default -> throw new UnsupportedOperationException("no SQL for " + relation);
    };
  }

  private static String atLeast(SqlAmount a, SqlAmount b) {
    return "(CASE WHEN same_or_more("
        + a.lo()
        + ", "
        + b.hi()
        + ") THEN TRUE WHEN less("
        + a.hi()
        + ", "
        + b.lo()
        + ") THEN FALSE END)";
  }

  SqlAmount amount(Expr.Amount a) {
    if (a instanceof Expr.Literal e) {
      return SqlAmount.of(e.value());
    } else if (a instanceof Expr.Dual e) {
      return dual(e);
    } else if (a instanceof Expr.Day e) {
      return SqlAmount.of(e.value());
    } else if (a instanceof Expr.EntryAmount e) {
      return entry(e.entry());
    } else if (a instanceof Expr.WorkingAmount e) {
      return SqlWorkings.amount(this, e.working().name());
    } else if (a instanceof Expr.TableAmount e) {
      return tables.amount(e.table());
    } else if (a instanceof Expr.Arithmetic e) {
      return arithmetic(e);
    } else if (a instanceof Expr.Extreme e) {
      return extreme(e);
    } else if (a instanceof Expr.AmountIf e) {
      return choose(truth(e.test()), amount(e.then()), amount(e.otherwise()));
    }
    throw new UnsupportedOperationException("no SQL for " + a);
  }

  /** The bracketed figure, where all that is given was written in the system of its unit. */
  private SqlAmount dual(Expr.Dual e) {
    String system = "'" + e.bracketUnit().system() + "'";
    List<String> all = new ArrayList<>();
    List<String> any = new ArrayList<>();
    for (Entry entry : compared) {
      String name = column(entry);
      all.add("(" + name + "_s <> 1 OR " + name + "_u = " + system + ")");
      any.add(name + "_s = 1");
    }
    if (all.isEmpty()) {
      return SqlAmount.of(e.primary());
    }
    String figure =
        "(CASE WHEN "
            + String.join(" AND ", all)
            + " AND ("
            + String.join(" OR ", any)
            + ") THEN "
            + SqlAmount.of(e.bracket()).lo()
            + " ELSE "
            + SqlAmount.of(e.primary()).lo()
            + " END)";
    return new SqlAmount(figure, figure, SqlTruth.NEVER);
  }

  /** The entries that a comparison compares; a dual limit stands beside entries only, as yet. */
  private void entries(Expr.Amount a) {
    if (a instanceof Expr.EntryAmount e) {
      compared.add(e.entry());
    } else if (a instanceof Expr.Arithmetic e) {
      entries(e.a());
      entries(e.b());
    }
  }

  SqlAmount entry(Entry entry) {
    String name = column(entry);
    String shift = entry.datum().isMovable() ? " - " + SHIFT : "";
    return new SqlAmount(
        "(" + name + "_lo" + shift + ")", "(" + name + "_hi" + shift + ")", isNotApplicable(name));
  }

  private SqlAmount arithmetic(Expr.Arithmetic e) {
    SqlAmount a = amount(e.a());
    SqlAmount b = amount(e.b());
    boolean addsTime =
        e.a().dimension().equals(Dimension.DATE) && e.b().dimension().equals(Dimension.TIME);
    String days = addsTime ? " / 86400.0" : "";
    String either = "(" + a.isVoid() + " OR " + b.isVoid() + ")";
    return switch (e.sign()) {
      case '+' ->
          new SqlAmount(
              "(" + a.lo() + " + " + b.lo() + days + ")",
              "(" + a.hi() + " + " + b.hi() + days + ")",
              either);
      case '-' ->
          new SqlAmount(
              "(" + a.lo() + " - " + b.hi() + days + ")",
              "(" + a.hi() + " - " + b.lo() + days + ")",
              either);
      case '/' -> quotient(a, b, either);
      // Of amounts that cannot be negative.
      case '*' ->
          new SqlAmount(
              "(" + a.lo() + " * " + b.lo() + ")", "(" + a.hi() + " * " + b.hi() + ")", either);
      default -> throw new UnsupportedOperationException("no SQL for " + e);
    };
  }

  /**
   * Of amounts that cannot be negative; by a divisor that may be 0 it has no greatest value, and by
   * one without a greatest value (a null where its least is known) it may come down to 0.
   */
  private static SqlAmount quotient(SqlAmount a, SqlAmount b, String isVoid) {
    String fits = "CASE WHEN " + b.lo() + " >= 0 AND " + a.lo() + " >= 0 ";
    return new SqlAmount(
        "("
            + fits
            + "AND coalesce("
            + b.hi()
            + ", 1) > 0 THEN coalesce("
            + a.lo()
            + " / "
            + b.hi()
            + ", 0) END)",
        "(" + fits + "AND " + b.lo() + " > 0 THEN " + a.hi() + " / " + b.lo() + " END)",
        isVoid);
  }

  private SqlAmount extreme(Expr.Extreme e) {
    List<SqlAmount> all = e.of().stream().map(this::amount).toList();
    String los = list(all.stream().map(SqlAmount::lo).toList());
    String his = list(all.stream().map(SqlAmount::hi).toList());
    String isVoid =
        all.stream().map(SqlAmount::isVoid).collect(Collectors.joining(" OR ", "(", ")"));
    // least and greatest pass nulls over: right at the end where the bound is the other side's.
    return e.isGreatest()
        ? new SqlAmount("greatest(" + los + ")", strict("greatest", all, false), isVoid)
        : new SqlAmount(strict("least", all, true), "least(" + his + ")", isVoid);
  }

  private static String strict(String function, List<SqlAmount> all, boolean isLow) {
    List<String> ends = all.stream().map(a -> isLow ? a.lo() : a.hi()).toList();
    String known =
        ends.stream().map(end -> end + " IS NOT NULL").collect(Collectors.joining(" AND "));
    return "(CASE WHEN " + known + " THEN " + function + "(" + list(ends) + ") END)";
  }

  private static String list(List<String> parts) {
    return String.join(", ", parts);
  }

  private static SqlAmount choose(SqlTruth test, SqlAmount then, SqlAmount otherwise) {
    return new SqlAmount(
        end(test, then, otherwise, true),
        end(test, then, otherwise, false),
        "("
            + test.isVoid()
            + " OR CASE WHEN "
            + test.truth()
            + " THEN "
            + then.isVoid()
            + " WHEN NOT "
            + test.truth()
            + " THEN "
            + otherwise.isVoid()
            + " ELSE "
            + then.isVoid()
            + " AND "
            + otherwise.isVoid()
            + " END)");
  }

  private static String end(SqlTruth test, SqlAmount then, SqlAmount otherwise, boolean isLow) {
    String a = isLow ? then.lo() : then.hi();
    String b = isLow ? otherwise.lo() : otherwise.hi();
    String hull =
        "CASE WHEN "
            + then.isVoid()
            + " = "
            + otherwise.isVoid()
            + " AND "
            + a
            + " IS NOT NULL AND "
            + b
            + " IS NOT NULL THEN "
            + (isLow ? "least(" : "greatest(")
            + a
            + ", "
            + b
            + ") END";
    return "(CASE WHEN "
        + test.truth()
        + " THEN "
        + a
        + " WHEN NOT "
        + test.truth()
        + " THEN "
        + b
        + " ELSE "
        + hull
        + " END)";
  }

  static String whereGiven(String name, String condition) {
    return "(CASE WHEN " + name + "_s = 1 THEN " + condition + " END)";
  }

  static String isNotApplicable(String name) {
    return "(" + name + "_s = 2)";
  }

  static String column(Entry entry) {
    return "e_" + entry.key().replace('.', '_');
  }

  /** The columns of an entry, as a table of the database declares them. */
  static List<String> columns(Entry entry) {
    String name = column(entry);
    List<String> all = new ArrayList<>(List.of(name + "_s TINYINT"));
    if (entry.kind() == Kind.CHOICE || entry.kind() == Kind.TEXT) {
      all.add(name + "_w VARCHAR");
    } else {
      all.add(name + "_lo DOUBLE");
      all.add(name + "_hi DOUBLE");
      all.add(name + "_u VARCHAR");
    }
    return all;
  }
}
