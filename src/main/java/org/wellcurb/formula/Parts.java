package org.wellcurb.formula;

import java.util.ArrayList;
import java.util.List;

/** The direct parts of an expression, in the order in which they are written. */
public final class Parts {
  private Parts() {}

  public static List<Expr> of(Expr expr) {
    if (expr instanceof Expr.Arithmetic e) {
      return List.of(e.a(), e.b());
    } else if (expr instanceof Expr.Negative e) {
      return List.of(e.a());
    } else if (expr instanceof Expr.Absolute e) {
      return List.of(e.a());
    } else if (expr instanceof Expr.Extreme e) {
      return new ArrayList<>(e.of());
    } else if (expr instanceof Expr.Rounded e) {
      return List.of(e.a(), e.step());
    } else if (expr instanceof Expr.AmountIf e) {
      return List.of(e.test(), e.then(), e.otherwise());
    } else if (expr instanceof Expr.Compare e) {
      return List.of(e.a(), e.b());
    } else if (expr instanceof Expr.Between e) {
      return List.of(e.a(), e.least(), e.greatest());
    } else if (expr instanceof Expr.IsOneOf e) {
      return List.of(e.word());
    } else if (expr instanceof Expr.SameWord e) {
      return List.of(e.a(), e.b());
    } else if (expr instanceof Expr.Not e) {
      return List.of(e.a());
    } else if (expr instanceof Expr.And e) {
      return new ArrayList<>(e.all());
    } else if (expr instanceof Expr.Or e) {
      return new ArrayList<>(e.any());
    } else if (expr instanceof Expr.ConditionIf e) {
      return List.of(e.test(), e.then(), e.otherwise());
    }
    return List.of();
  }

  /**
   * The same expression with other parts in place of its own, as many and of the same kinds.
   *
   * @param parts what {@link #of} gave, with some of them changed
   */
  public static Expr with(Expr expr, List<Expr> parts) {
    if (expr instanceof Expr.Arithmetic e) {
      return new Expr.Arithmetic(e.sign(), amount(parts, 0), amount(parts, 1), e.dimension());
    } else if (expr instanceof Expr.Negative) {
      return new Expr.Negative(amount(parts, 0));
    } else if (expr instanceof Expr.Absolute) {
      return new Expr.Absolute(amount(parts, 0));
    } else if (expr instanceof Expr.Extreme e) {
      return new Expr.Extreme(e.isGreatest(), amounts(parts));
    } else if (expr instanceof Expr.Rounded e) {
      return new Expr.Rounded(amount(parts, 0), e.step());
    } else if (expr instanceof Expr.AmountIf) {
      return new Expr.AmountIf(condition(parts, 0), amount(parts, 1), amount(parts, 2));
    } else if (expr instanceof Expr.Compare e) {
      return new Expr.Compare(e.relation(), amount(parts, 0), amount(parts, 1), e.underNot());
    } else if (expr instanceof Expr.Between e) {
      return new Expr.Between(amount(parts, 0), amount(parts, 1), amount(parts, 2), e.underNot());
    } else if (expr instanceof Expr.IsOneOf e) {
      return new Expr.IsOneOf(word(parts, 0), e.words(), e.shown(), e.isNegated());
    } else if (expr instanceof Expr.SameWord e) {
      return new Expr.SameWord(word(parts, 0), word(parts, 1), e.isNegated());
    } else if (expr instanceof Expr.Not) {
      return new Expr.Not(condition(parts, 0));
    } else if (expr instanceof Expr.And) {
      return new Expr.And(conditions(parts));
    } else if (expr instanceof Expr.Or) {
      return new Expr.Or(conditions(parts));
    } else if (expr instanceof Expr.ConditionIf) {
      return new Expr.ConditionIf(condition(parts, 0), condition(parts, 1), condition(parts, 2));
    }
    return expr;
  }

  private static Expr.Amount amount(List<Expr> parts, int at) {
    return (Expr.Amount) parts.get(at);
  }

  private static Expr.Condition condition(List<Expr> parts, int at) {
    return (Expr.Condition) parts.get(at);
  }

  private static Expr.Word word(List<Expr> parts, int at) {
    return (Expr.Word) parts.get(at);
  }

  private static List<Expr.Amount> amounts(List<Expr> parts) {
    List<Expr.Amount> all = new ArrayList<>();
    parts.forEach(part -> all.add((Expr.Amount) part));
    return all;
  }

  private static List<Expr.Condition> conditions(List<Expr> parts) {
    List<Expr.Condition> all = new ArrayList<>();
    parts.forEach(part -> all.add((Expr.Condition) part));
    return all;
  }

  /** True if this expression or a part of it, at any depth, passes the test. */
  public static boolean any(Expr expr, java.util.function.Predicate<Expr> test) {
    return test.test(expr) || of(expr).stream().anyMatch(part -> any(part, test));
  }
}
