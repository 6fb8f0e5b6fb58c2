package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.quantity.Dimension;

/**
 * The figures that a formula states, each with where it stands, so that one of them can be tried
 * with another in its place.
 */
final class Figures {

  /**
   * A figure of a formula.
   *
   * @param place its number among all parts of the formula, in the order in which they are written
   * @param comparison the comparison that it stands in
   * @param stated the figure as it is
   * @param others the figures that an example must tell it from: one less, one more
   */
  record Figure(
      int place, Expr.Condition comparison, Expr.Amount stated, List<Expr.Amount> others) {}

  private final List<Figure> found = new ArrayList<>();
  private int place;

  private Figures() {}

  /** All figures of a formula, in order. */
  static List<Figure> of(Formula formula) {
    Figures figures = new Figures();
    figures.look(formula.tree(), null, false);
    return figures.found;
  }

  /** True if a comparison states a figure of its own, not only within what an if turns on. */
  static boolean isFigured(Expr.Condition comparison) {
    Figures figures = new Figures();
    figures.look(comparison, null, false);
    return figures.found.stream().anyMatch(figure -> figure.comparison.equals(comparison));
  }

  /** The formula with another figure at a place. */
  static Formula with(Formula formula, int place, Expr.Amount other) {
    Figures figures = new Figures();
    return formula.with((Expr.Condition) figures.replace(formula.tree(), place, other));
  }

  /**
   * @param isFactor true within a product or quotient, where a count is not compared as such
   */
  private void look(Expr part, Expr.@Nullable Condition comparison, boolean isFactor) {
    int here = place++;
    if (part instanceof Expr.Amount amount && comparison != null) {
      List<Expr.Amount> others = Neighbours.of(amount, dimension(comparison), isFactor);
      if (!others.isEmpty()) {
        found.add(new Figure(here, comparison, amount, others));
      }
    }
    boolean isCompared = part instanceof Expr.Compare || part instanceof Expr.Between;
    Expr.@Nullable Condition within = isCompared ? (Expr.Condition) part : comparison;
    boolean isProduct = part instanceof Expr.Arithmetic a && (a.sign() == '*' || a.sign() == '/');
    List<Expr> parts = Parts.of(part);
    for (int i = 0; i < parts.size(); i++) {
      if (part instanceof Expr.Between between && i > 0) {
        end((Expr.Amount) parts.get(i), between);
      }
      // The step of a rounding says how finely to look, not where the limit is.
      boolean isStep = part instanceof Expr.Rounded && i == 1;
      look(parts.get(i), isStep ? null : within, !isCompared && (isFactor || isProduct));
    }
  }

  /** An end of a between that is an entry and no more: a figure of no days, or of one time it. */
  private void end(Expr.Amount end, Expr.Between between) {
    List<Expr.Amount> others = Neighbours.ofEnd(end);
    if (!others.isEmpty()) {
      found.add(new Figure(place, between, end, others));
    }
  }

  private static Dimension dimension(Expr.Condition comparison) {
    return comparison instanceof Expr.Compare c
        ? c.a().dimension()
        : ((Expr.Between) comparison).a().dimension();
  }

  private Expr replace(Expr part, int wanted, Expr.Amount other) {
    if (place++ == wanted) {
      return other;
    }
    List<Expr> parts = new ArrayList<>();
    for (Expr each : Parts.of(part)) {
      parts.add(replace(each, wanted, other));
    }
    return parts.isEmpty() ? part : Parts.with(part, parts);
  }
}
