package org.wellcurb.rulepack;

import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Evaluation;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Parts;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.UnitSystem;

/**
 * Whether an example lies so near a limit that it shows where the limit is. An example of 5 ft and
 * one of 500 ft fall on both sides of 50 ft, and would on both sides of 100 ft too.
 */
final class Nearness {
  /** As a share of the greater side. */
  private static final double TENTH = 0.1;

  private static final double DAYS = 7;
  private static final double KELVIN = 6;

  private Nearness() {}

  /** True of what is no comparison of amounts: a word has no neighbours. */
  static boolean isNear(Evaluation at, Expr.Condition comparison) {
    @Nullable UnitSystem written = at.written(comparison);
    if (comparison instanceof Expr.Compare c) {
      // What must stand in order, such as a top above its bottom, has no figure to be near to.
      boolean isFigure = !readsForm(c.a()) || !readsForm(c.b());
      return !isFigure || isNear(at, c.a(), c.b(), written);
    }
    if (comparison instanceof Expr.Between c) {
      boolean isFigure = !readsForm(c.least()) || !readsForm(c.greatest());
      return !isFigure
          || isNear(at, c.a(), c.least(), written)
          || isNear(at, c.a(), c.greatest(), written);
    }
    return true;
  }

  private static boolean isNear(
      Evaluation at, Expr.Amount left, Expr.Amount right, @Nullable UnitSystem written) {
    @Nullable Interval a = at.amount(left, written);
    @Nullable Interval b = at.amount(right, written);
    if (a == null || b == null) {
      return false;
    }
    double gap = Math.max(0, Math.max(b.lo() - a.hi(), a.lo() - b.hi()));
    double size = Math.max(size(a), size(b));
    Dimension dimension = left.dimension();
    if (dimension.equals(Dimension.DATE)) {
      return gap <= DAYS;
    }
    if (dimension.equals(Dimension.TEMPERATURE)) {
      return gap <= KELVIN;
    }
    // Sizes of wire come in steps, and nothing but its sign tells what is near to nothing.
    boolean isZero = (size(a) == 0 && a.isPoint()) || (size(b) == 0 && b.isPoint());
    return dimension.equals(Dimension.WIRE_GAUGE)
        || (isZero && isLiteralZero(left, right))
        || gap <= TENTH * size * (1 + 1e-9)
        || (dimension.equals(Dimension.NUMBER) && gap <= 1);
  }

  private static boolean readsForm(Expr expr) {
    return expr instanceof Expr.EntryAmount
        || expr instanceof Expr.WorkingAmount
        || expr instanceof Expr.AsOf
        || Parts.of(expr).stream().anyMatch(Nearness::readsForm);
  }

  private static boolean isLiteralZero(Expr.Amount left, Expr.Amount right) {
    return (left instanceof Expr.Literal l && l.value() == 0)
        || (right instanceof Expr.Literal r && r.value() == 0);
  }

  /** The end nearer to nothing: how large the amount is at least. */
  private static double size(Interval x) {
    return x.lo() <= 0 && x.hi() >= 0 ? 0 : Math.min(Math.abs(x.lo()), Math.abs(x.hi()));
  }
}
