package org.wellcurb.judgement;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Evaluation;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Relation;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Truth;
import org.wellcurb.quantity.Unit;

/**
 * Finds the comparison that decided a condition. Of {@code and} it is a part with the truth of the
 * whole, the one nearest to failing; of {@code or} the one nearest to holding, of those that have a
 * limit; where the parts are of different dimensions, the first. Of {@code if} it is what decided
 * the branch that holds; where that cannot be told, the one of both that comes out worse.
 */
final class DecidingPart {
  private final Evaluation at;
  private final Margins margins;

  DecidingPart(Evaluation at, Speech speech) {
    this.at = at;
    margins = new Margins(at, speech);
  }

  Deciding of(Expr.Condition c) {
    return of(c, /* isNegated= */ false);
  }

  /**
   * What decided a condition.
   *
   * @param isNegated true under {@code not}, where what is true here is worse than what is false
   */
  private Deciding of(Expr.Condition c, boolean isNegated) {
    if (c instanceof Expr.Not e) {
      return opposite(of(e.a(), !isNegated));
    } else if (c instanceof Expr.And e) {
      return among(c, e.all(), true, isNegated);
    } else if (c instanceof Expr.Or e) {
      return among(c, e.any(), false, isNegated);
    } else if (c instanceof Expr.ConditionIf e) {
      return switch (at.truth(e.test())) {
        case Truth.FALSE -> of(e.otherwise(), isNegated);
        case Truth.UNKNOWN -> worse(e.then(), e.otherwise(), isNegated);
        default -> of(e.then(), isNegated);
      };
    }
    return margins.of(c);
  }

  /** Of two branches either of which may hold, the one with the worse margin, as of ranges. */
  private Deciding worse(Expr.Condition then, Expr.Condition otherwise, boolean isNegated) {
    Deciding first = of(then, isNegated);
    Deciding next = of(otherwise, isNegated);
    if (Margins.sameDimension(List.of(first, next))) {
      double difference = inSi(next) - inSi(first);
      return (isNegated ? difference > 0 : difference < 0) ? next : first;
    }
    // Distances of two kinds cannot be compared: what does not hold is worse than what may.
    return worth(otherwise, isNegated) < worth(then, isNegated) ? next : first;
  }

  /** How well a branch comes out; what does not apply to a record is nothing to mend. */
  private int worth(Expr.Condition branch, boolean isNegated) {
    int truth = at.truth(branch);
    return isNegated ? Truth.not(truth) : truth;
  }

  private static Deciding opposite(Deciding d) {
    return new Deciding(
        d.entry(),
        d.written(),
        d.value(),
        d.unit(),
        d.limit(),
        -d.margin(),
        d.valueText(),
        d.isDate() || d.unit() != null ? d.limitText() : Wanted.opposite(d.limitText()),
        d.isDate(),
        d.subject(),
        d.limitName(),
        !d.isStrict(),
        -d.leastMargin(),
        d.beside());
  }

  private Deciding among(
      Expr.Condition whole, List<Expr.Condition> parts, boolean wantsLeast, boolean isNegated) {
    int truth = at.truth(whole);
    List<Deciding> deciding = new ArrayList<>();
    for (Expr.Condition part : wantsLeast ? parts : limits(parts)) {
      if (at.truth(part) == truth) {
        deciding.add(of(part, isNegated));
      }
    }
    if (deciding.isEmpty()) {
      return of(parts.get(0), isNegated);
    }
    if (!wantsLeast && deciding.size() > 1) {
      deciding = alone(truth, parts, deciding, isNegated);
    }
    Deciding best = deciding.get(0);
    if (Margins.sameDimension(deciding)) {
      for (Deciding one : deciding) {
        double difference = inSi(one) - inSi(best);
        if (wantsLeast ? difference < 0 : difference > 0) {
          best = one;
        }
      }
    }
    return best;
  }

  /**
   * Of ways any of which would do, those that one comparison bars: to come up to a limit where more
   * is lacking beside it would mend nothing. All, where each way lacks more than one thing.
   */
  private List<Deciding> alone(
      int truth, List<Expr.Condition> parts, List<Deciding> all, boolean isNegated) {
    List<Deciding> alone = new ArrayList<>();
    for (Expr.Condition part : limits(parts)) {
      boolean isBarredOnce =
          !(part instanceof Expr.And e)
              || e.all().stream().filter(each -> at.truth(each) == truth).count() == 1;
      if (at.truth(part) == truth && isBarredOnce) {
        alone.add(of(part, isNegated));
      }
    }
    return alone.isEmpty() ? all : alone;
  }

  /**
   * Of parts any of which would do, those that have a limit to come up to; all, where none has. One
   * that asks for a figure itself ({@code = 0 psi}), for a word or for whether an entry is given or
   * applies is another way out, and no limit.
   */
  private static List<Expr.Condition> limits(List<Expr.Condition> parts) {
    List<Expr.Condition> limits = parts.stream().filter(DecidingPart::hasLimit).toList();
    return limits.isEmpty() ? parts : limits;
  }

  private static boolean hasLimit(Expr expr) {
    if (expr instanceof Expr.Compare e) {
      return e.relation() != Relation.EQUAL;
    }
    if (expr instanceof Expr.ConditionIf e) {
      return hasLimit(e.then()) || hasLimit(e.otherwise());
    }
    return expr instanceof Expr.Between
        || (expr instanceof Expr.Condition
            && Parts.of(expr).stream().anyMatch(DecidingPart::hasLimit));
  }

  private static double inSi(Deciding d) {
    @Nullable Unit unit = d.unit();
    return unit == null ? d.margin() : d.margin() * unit.factor();
  }
}
