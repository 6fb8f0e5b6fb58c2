package org.wellcurb.rulepack;

import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.UnitSystem;

/** Amounts as something unknown plus a constant, so that limits on one thing can be compared. */
final class Linear {
  private static final double DAY = 86400;

  private final UnitSystem side;

  Linear(UnitSystem side) {
    this.side = side;
  }

  /**
   * The difference of two amounts: a variable, perhaps negative, plus a constant in SI.
   *
   * @param variable what is unknown; null if nothing is
   */
  record Difference(@Nullable Object variable, boolean isNegative, double constant) {}

  /** Two unknowns, the first less the second. */
  private record Less(Object a, Object b) {}

  /**
   * What an unknown is called: entries, workings and tables by their names, which are quicker to
   * look up than what they stand for.
   */
  static Object name(Expr expr) {
    if (expr instanceof Expr.EntryAmount e) {
      return e.entry().key();
    } else if (expr instanceof Expr.EntryWord e) {
      return e.entry().key();
    } else if (expr instanceof Expr.WorkingAmount w) {
      return "workings." + w.working().name();
    } else if (expr instanceof Expr.TableAmount t) {
      return "table " + t.table().name();
    } else if (expr instanceof Expr.TableWord t) {
      return "table " + t.table().name();
    }
    return expr;
  }

  /** An amount: an unknown, or none, plus a constant. */
  private record Sum(Expr.@Nullable Amount unknown, double constant) {}

  /** {@code a - b}, in SI. */
  Difference difference(Expr.Amount a, double b) {
    Sum left = sum(a);
    Object unknown = left.unknown == null ? null : name(left.unknown);
    return new Difference(unknown, false, left.constant - b);
  }

  /** {@code a - b}. The difference of two unknowns has one name, whichever comes first. */
  Difference difference(Expr.Amount a, Expr.Amount b) {
    Sum left = sum(a);
    Sum right = sum(b);
    double constant = left.constant - right.constant;
    Object first = left.unknown == null ? null : name(left.unknown);
    Object second = right.unknown == null ? null : name(right.unknown);
    if (first == null || second == null) {
      return new Difference(first == null ? second : first, second != null, constant);
    }
    boolean isTurned = first.toString().compareTo(second.toString()) > 0;
    Less less = isTurned ? new Less(second, first) : new Less(first, second);
    return new Difference(less, isTurned, constant);
  }

  private Sum sum(Expr.Amount a) {
    if (a instanceof Expr.Literal e) {
      return new Sum(null, e.value());
    } else if (a instanceof Expr.Dual e) {
      return new Sum(null, e.bracketUnit().system() == side ? e.bracket() : e.primary());
    } else if (a instanceof Expr.Day e) {
      return new Sum(null, e.value());
    } else if (a instanceof Expr.FigureAmount e) {
      return new Sum(null, e.value());
    } else if (a instanceof Expr.Negative e) {
      Sum inner = sum(e.a());
      return inner.unknown == null ? new Sum(null, -inner.constant) : new Sum(a, 0);
    } else if (a instanceof Expr.Arithmetic e) {
      return arithmetic(e);
    }
    return new Sum(a, 0);
  }

  private Sum arithmetic(Expr.Arithmetic e) {
    Sum left = sum(e.a());
    Sum right = sum(e.b());
    boolean isDay = e.dimension().equals(Dimension.DATE);
    // A span of time is seconds, a date counts days.
    double scale = isDay && e.b().dimension().equals(Dimension.TIME) ? 1 / DAY : 1;
    boolean isSpanOfDates = !isDay && e.a().dimension().equals(Dimension.DATE);
    if (isSpanOfDates) {
      return new Sum(e, 0);
    }
    switch (e.sign()) {
      case '+':
        if (right.unknown == null) {
          return new Sum(left.unknown, left.constant + scale * right.constant);
        }
        return left.unknown == null && scale == 1
            ? new Sum(right.unknown, left.constant + right.constant)
            : new Sum(e, 0);
      case '-':
        return right.unknown == null
            ? new Sum(left.unknown, left.constant - scale * right.constant)
            : new Sum(e, 0);
      case '*':
        return left.unknown == null && right.unknown == null
            ? new Sum(null, left.constant * right.constant)
            : new Sum(e, 0);
      default:
        return left.unknown == null && right.unknown == null && right.constant != 0
            ? new Sum(null, left.constant / right.constant)
            : new Sum(e, 0);
    }
  }
}
