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
 * limit; where the parts are of different dimensions, the first.
 */
final class DecidingPart {
  private final Evaluation at;
  private final Margins margins;

  DecidingPart(Evaluation at, Speech speech) {
    this.at = at;
    margins = new Margins(at, speech);
  }

  Deciding of(Expr.Condition c) {
    if (c instanceof Expr.Not e) {
      return opposite(of(e.a()));
    } else if (c instanceof Expr.And e) {
      return among(c, e.all(), true);
    } else if (c instanceof Expr.Or e) {
      return among(c, e.any(), false);
    } else if (c instanceof Expr.ConditionIf e) {
      int test = at.truth(e.test());
      return of(test == Truth.FALSE ? e.otherwise() : e.then());
    }
    return margins.of(c);
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

  private Deciding among(Expr.Condition whole, List<Expr.Condition> parts, boolean wantsLeast) {
    int truth = at.truth(whole);
    List<Deciding> deciding = new ArrayList<>();
    for (Expr.Condition part : wantsLeast ? parts : limits(parts)) {
      if (at.truth(part) == truth) {
        deciding.add(of(part));
      }
    }
    if (deciding.isEmpty()) {
      return of(parts.get(0));
    }
    if (!wantsLeast && deciding.size() > 1) {
      deciding = alone(truth, parts, deciding);
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
  private List<Deciding> alone(int truth, List<Expr.Condition> parts, List<Deciding> all) {
    List<Deciding> alone = new ArrayList<>();
    for (Expr.Condition part : limits(parts)) {
      boolean isBarredOnce =
          !(part instanceof Expr.And e)
              || e.all().stream().filter(each -> at.truth(each) == truth).count() == 1;
      if (at.truth(part) == truth && isBarredOnce) {
        alone.add(of(part));
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
