package org.wellcurb.formula;

import java.util.Locale;
import java.util.Random;

/**
 * A random condition, written twice by the same draw: in the rule language, and as SQL that gives 0
 * false, 1 unknown, 2 true, 3 void. The SQL is made from the words of the contract and shares no
 * code with the language; it works on columns lo, hi, na (and half, metric) for each entry.
 */
final class GeneratedRule {
  /** Length entries, with the beginning of their columns. */
  static final String[] LENGTHS = {"setback.septic_tank", "setback.privy", "setback.cesspool"};

  private final Random random;

  /**
   * @param text in the rule language, or in SQL
   */
  record Twice(String rule, String sql) {}

  /** An amount, in both: SQL as its least, its greatest, and whether it is void. */
  private record Amount(String rule, String lo, String hi, String na) {}

  private GeneratedRule(Random random) {
    this.random = random;
  }

  static Twice draw(Random random) {
    return new GeneratedRule(random).condition(3);
  }

  private Twice condition(int depth) {
    int kind = random.nextInt(depth > 0 ? 10 : 5);
    switch (kind) {
      case 0:
        return limit();
      case 1:
        return new Twice(
            "well.use is one of 'household', 'public'",
            "CASE WHEN use_na THEN 3 WHEN use IS NULL THEN 1"
                + " WHEN use IN ('household', 'public') THEN 2 ELSE 0 END");
      case 2:
        return new Twice(
            "relief.fitted is yes",
            "CASE WHEN fitted_na THEN 3 WHEN fitted IS NULL THEN 1 WHEN fitted THEN 2 ELSE 0 END");
      case 3:
        {
          int i = random.nextInt(LENGTHS.length);
          if (random.nextInt(3) == 0) {
            return new Twice(
                "applies(" + LENGTHS[i] + ")",
                String.format(Locale.ROOT, "CASE WHEN e%d_na THEN 0 ELSE 2 END", i));
          }
          return new Twice(
              "known(" + LENGTHS[i] + ")",
              String.format(
                  Locale.ROOT, "CASE WHEN e%d_na THEN 3 WHEN e%d_known THEN 2 ELSE 0 END", i, i));
        }
      case 4:
        return compared();
      case 5:
        {
          Twice a = condition(depth - 1);
          return new Twice(
              "not (" + a.rule + ")", sql("CASE WHEN %1$s = 3 THEN 3 ELSE 2 - %1$s END", a.sql));
        }
      case 6:
        {
          Twice test = condition(0);
          Twice a = condition(depth - 1);
          Twice b = condition(depth - 1);
          return new Twice(
              "(if " + test.rule + " then " + a.rule + " else " + b.rule + ")",
              sql(
                  "CASE %1$s WHEN 3 THEN 3 WHEN 2 THEN %2$s WHEN 0 THEN %3$s"
                      + " ELSE CASE WHEN %2$s = %3$s THEN %2$s ELSE 1 END END",
                  test.sql, a.sql, b.sql));
        }
      default:
        {
          boolean isAnd = kind < 9;
          Twice a = condition(depth - 1);
          Twice b = condition(depth - 1);
          return new Twice(
              "(" + a.rule + (isAnd ? " and " : " or ") + b.rule + ")",
              sql(
                  "CASE WHEN %1$s = 3 THEN %2$s WHEN %2$s = 3 THEN %1$s ELSE %3$s(%1$s, %2$s) END",
                  a.sql, b.sql, isAnd ? "LEAST" : "GREATEST"));
        }
    }
  }

  private static String sql(String pattern, Object... parts) {
    Object[] bracketed = new Object[parts.length];
    for (int i = 0; i < parts.length; i++) {
      String part = (String) parts[i];
      bracketed[i] = part.length() > 10 ? "(" + part + ")" : part;
    }
    return String.format(Locale.ROOT, pattern, bracketed);
  }

  /** Two sums compared: in one unit system, so that neither duals nor rounding play a part. */
  private Twice compared() {
    Amount a = amount(2);
    Amount b = amount(1);
    // A sum on the left, so that no side is a single entry and no slack is given.
    Amount left = new Amount("(" + a.rule + ") + 0 ft", "(" + a.lo + ")", "(" + a.hi + ")", a.na);
    String[] signs = {"<", "<=", ">", ">=", "=", "<>"};
    String sign = signs[random.nextInt(signs.length)];
    return new Twice(
        "(" + left.rule + " " + sign + " (" + b.rule + ") + 0 ft)", relation(sign, left, b));
  }

  private static String less(String a, String b) {
    return String.format(
        Locale.ROOT,
        "(%1$s < %2$s AND NOT (abs(%1$s - %2$s) < 1e-9 * greatest(abs(%1$s), abs(%2$s))))",
        a,
        b);
  }

  private static String relation(String sign, Amount a, Amount b) {
    String na = "CASE WHEN " + a.na + " OR " + b.na + " THEN 3 WHEN ";
    return switch (sign) {
      case ">=" ->
          na
              + "NOT "
              + less(a.lo, b.hi)
              + " THEN 2 WHEN "
              + less(a.hi, b.lo)
              + " THEN 0 ELSE 1 END";
      case "<=" ->
          na
              + "NOT "
              + less(b.lo, a.hi)
              + " THEN 2 WHEN "
              + less(b.hi, a.lo)
              + " THEN 0 ELSE 1 END";
      case ">" ->
          na + less(b.hi, a.lo) + " THEN 2 WHEN NOT " + less(b.lo, a.hi) + " THEN 0 ELSE 1 END";
      case "<" ->
          na + less(a.hi, b.lo) + " THEN 2 WHEN NOT " + less(a.lo, b.hi) + " THEN 0 ELSE 1 END";
      default -> {
        String apart = less(a.hi, b.lo) + " OR " + less(b.hi, a.lo);
        String same = a.lo + " = " + a.hi + " AND " + b.lo + " = " + b.hi;
        boolean isEqual = sign.equals("=");
        yield na
            + apart
            + " THEN "
            + (isEqual ? 0 : 2)
            + " WHEN "
            + same
            + " THEN "
            + (isEqual ? 2 : 0)
            + " ELSE 1 END";
      }
    };
  }

  private Amount amount(int depth) {
    int kind = random.nextInt(depth > 0 ? 7 : 2);
    switch (kind) {
      case 0:
        {
          int feet = random.nextInt(120);
          String metres = "(" + feet + " * 0.3048::DOUBLE)";
          return new Amount(feet + " ft", metres, metres, "false");
        }
      case 1:
        {
          int i = random.nextInt(LENGTHS.length);
          return new Amount(LENGTHS[i], "e" + i + "_lo", "e" + i + "_hi", "e" + i + "_na");
        }
      case 2:
        {
          Amount a = amount(depth - 1);
          Amount b = amount(depth - 1);
          return new Amount(
              a.rule + " + " + b.rule,
              "(" + a.lo + " + " + b.lo + ")",
              "(" + a.hi + " + " + b.hi + ")",
              either(a, b));
        }
      case 3:
        {
          Amount a = amount(depth - 1);
          Amount b = amount(0);
          return new Amount(
              a.rule + " - " + b.rule,
              "(" + a.lo + " - " + b.hi + ")",
              "(" + a.hi + " - " + b.lo + ")",
              either(a, b));
        }
      case 4:
        {
          Amount a = amount(0);
          return new Amount(
              "2.5 * " + a.rule,
              "(2.5::DOUBLE * " + a.lo + ")",
              "(2.5::DOUBLE * " + a.hi + ")",
              a.na);
        }
      case 5:
        {
          Amount a = amount(depth - 1);
          String size = "abs(" + a.lo + ")";
          String other = "abs(" + a.hi + ")";
          return new Amount(
              "abs(" + a.rule + ")",
              "(CASE WHEN "
                  + a.lo
                  + " <= 0 AND "
                  + a.hi
                  + " >= 0 THEN 0 ELSE least("
                  + size
                  + ", "
                  + other
                  + ") END)",
              "greatest(" + size + ", " + other + ")",
              a.na);
        }
      default:
        {
          Amount a = amount(depth - 1);
          Amount b = amount(depth - 1);
          String name = random.nextBoolean() ? "max" : "min";
          String sql = name.equals("max") ? "greatest" : "least";
          return new Amount(
              name + "(" + a.rule + ", " + b.rule + ")",
              sql + "(" + a.lo + ", " + b.lo + ")",
              sql + "(" + a.hi + ", " + b.hi + ")",
              either(a, b));
        }
    }
  }

  private static String either(Amount a, Amount b) {
    return "(" + a.na + " OR " + b.na + ")";
  }

  /** One entry against a limit, bare or dual: here the unit that was written plays its part. */
  private Twice limit() {
    int i = random.nextInt(LENGTHS.length);
    int feet = 20 + random.nextInt(60);
    boolean isDual = random.nextBoolean();
    int metres = (int) Math.round(feet * 0.3048);
    boolean isLeast = random.nextBoolean();
    String sign = isLeast ? ">=" : "<=";
    String rule =
        LENGTHS[i] + " " + sign + " " + feet + " ft" + (isDual ? " (" + metres + " m)" : "");
    String e = "e" + i;
    String bound =
        isDual
            ? "(CASE WHEN "
                + e
                + "_metric THEN "
                + metres
                + "::DOUBLE ELSE "
                + feet
                + " * 0.3048::DOUBLE END)"
            : "(" + feet + " * 0.3048::DOUBLE)";
    Amount entry = new Amount("", e + "_lo", e + "_hi", e + "_na");
    Amount limit = new Amount("", bound, bound, "false");
    String asWritten = "(" + relation(sign, entry, limit) + ")";
    String eased = "(" + e + "_lo " + (isLeast ? "+ " : "- ") + e + "_half)";
    Amount withSlack = new Amount("", eased, eased, e + "_na");
    String slack =
        "CASE WHEN "
            + asWritten
            + " = 0 AND "
            + e
            + "_metric AND "
            + e
            + "_half > 0 AND "
            + e
            + "_lo = "
            + e
            + "_hi AND ("
            + relation(sign, withSlack, limit)
            + ") = 2 THEN 2 ELSE "
            + asWritten
            + " END";
    return new Twice(rule, isDual ? asWritten : slack);
  }
}
