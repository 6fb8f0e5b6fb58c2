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

  /** True if this expression or a part of it, at any depth, passes the test. */
  public static boolean any(Expr expr, java.util.function.Predicate<Expr> test) {
    return test.test(expr) || of(expr).stream().anyMatch(part -> any(part, test));
  }
}
