package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.quantity.UnitSystem;

/**
 * Tells whether a formula with one limit changed is proved to come out as before for every record,
 * in both unit systems: what else the rule asks decides there, and no example can show the limit.
 */
final class ShadowProof {
  private ShadowProof() {}

  /** True if it is proved that the change alters nothing, in a text that counts at all. */
  static boolean isSame(ChangedRule.Place place, Formula changed) {
    try {
      for (UnitSystem side : List.of(UnitSystem.US, UnitSystem.METRIC)) {
        // Without what follows from a table's rows: where none matches, the limit may show.
        Branches branches = Branches.withoutSpreads(side);
        List<Branches.Branch> applies = branches.of(when(place), true);
        Expr.Condition before = place.formula().tree();
        Expr.Condition after = changed.tree();
        List<Branches.Branch> met = Branches.and(applies, branches.of(before, true));
        List<Branches.Branch> broken = Branches.and(applies, branches.of(before, false));
        boolean isAlone = met.isEmpty() || broken.isEmpty();
        if (isAlone
            || !Branches.and(met, branches.of(after, false)).isEmpty()
            || !Branches.and(broken, branches.of(after, true)).isEmpty()) {
          return false;
        }
      }
      return true;
    } catch (Branches.TooMany e) {
      return false;
    }
  }

  /** When what is required is asked; of a condition itself, always. */
  private static Expr.Condition when(ChangedRule.Place place) {
    List<Expr.Condition> all = new ArrayList<>();
    if (place.isRequired()) {
      DatedText text = place.program().texts().get(place.text() - 1);
      add(place.program().when(), all);
      add(text.when(), all);
    }
    return new Expr.And(all);
  }

  private static void add(@Nullable Formula formula, List<Expr.Condition> into) {
    if (formula != null) {
      into.add(formula.tree());
    }
  }
}
