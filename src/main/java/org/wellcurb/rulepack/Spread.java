package org.wellcurb.rulepack;

import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.UnitSystem;

/**
 * The least and the most that a limit can be, whichever row of a table gives it and whichever way
 * an {@code if} goes: what even the best end contradicts, nothing can meet.
 */
final class Spread {
  private final UnitSystem side;

  /**
   * @param side which side of dual limits counts
   */
  Spread(UnitSystem side) {
    this.side = side;
  }

  /** From the least to the most, in SI; null where a record's own amounts come into it. */
  @Nullable Interval of(Expr.Amount a) {
    if (a instanceof Expr.Literal e) {
      return Interval.point(e.value());
    } else if (a instanceof Expr.Dual e) {
      return Interval.point(e.bracketUnit().system() == side ? e.bracket() : e.primary());
    } else if (a instanceof Expr.Day e) {
      return Interval.point(e.value());
    } else if (a instanceof Expr.FigureAmount e) {
      return Interval.point(e.value());
    } else if (a instanceof Expr.TableAmount e) {
      return rows(e.table());
    } else if (a instanceof Expr.AmountIf e) {
      return hull(of(e.then()), of(e.otherwise()));
    } else if (a instanceof Expr.Negative e) {
      return negative(of(e.a()));
    } else if (a instanceof Expr.Arithmetic e && !isOfDates(e)) {
      return switch (e.sign()) {
        case '+' -> sum(of(e.a()), of(e.b()));
        case '-' -> sum(of(e.a()), negative(of(e.b())));
        default -> null;
      };
    }
    return null;
  }

  /** Days and spans of time are not counted in one unit. */
  private static boolean isOfDates(Expr.Arithmetic e) {
    return e.dimension().equals(Dimension.DATE) || e.a().dimension().equals(Dimension.DATE);
  }

  private @Nullable Interval rows(Table table) {
    @Nullable Interval all = null;
    for (Table.Row row : table.rows()) {
      if (!(row.value() instanceof Table.Amount amount)) {
        return null;
      }
      boolean isBracket = amount.bracketUnit() != null && amount.bracketUnit().system() == side;
      Interval one = Interval.point(isBracket ? amount.bracket() : amount.primary());
      all = all == null ? one : hull(all, one);
    }
    return all;
  }

  private static @Nullable Interval hull(@Nullable Interval a, @Nullable Interval b) {
    return a == null || b == null
        ? null
        : new Interval(Math.min(a.lo(), b.lo()), Math.max(a.hi(), b.hi()));
  }

  private static @Nullable Interval negative(@Nullable Interval a) {
    return a == null ? null : new Interval(-a.hi(), -a.lo());
  }

  private static @Nullable Interval sum(@Nullable Interval a, @Nullable Interval b) {
    return a == null || b == null ? null : new Interval(a.lo() + b.lo(), a.hi() + b.hi());
  }
}
