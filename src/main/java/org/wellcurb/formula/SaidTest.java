package org.wellcurb.formula;

import java.util.List;

/**
 * What an {@code if} turns on, as it is said. "150 ft where the use is public, otherwise 100 ft"
 * has whoever wrote {@code n/a} as the use go on with the 100 ft. So {@code applies(well.use) and
 * well.use is 'public'} is judged, and only by the first half of it; said, that half tells nobody
 * anything.
 */
public final class SaidTest {
  private SaidTest() {}

  /** The test without each {@code applies(..)} beside which the same entry must be something. */
  public static Expr.Condition of(Expr.Condition test) {
    if (!(test instanceof Expr.And and)) {
      return test;
    }
    List<Expr.Condition> told =
        and.all().stream().filter(part -> !isTold(part, and.all())).toList();
    return told.size() == 1 ? told.get(0) : new Expr.And(told);
  }

  private static boolean isTold(Expr.Condition part, List<Expr.Condition> all) {
    return part instanceof Expr.IsApplicable asked
        && all.stream().anyMatch(other -> mustBe(other, asked));
  }

  /** True where a condition cannot be read as holding for an entry that is not there. */
  private static boolean mustBe(Expr.Condition c, Expr.IsApplicable asked) {
    if (c instanceof Expr.Known known) {
      return known.entry().equals(asked.entry());
    } else if (c instanceof Expr.YesNo yesNo) {
      return yesNo.entry().equals(asked.entry());
    } else if (c instanceof Expr.IsOneOf word) {
      return !word.isNegated()
          && word.word() instanceof Expr.EntryWord of
          && of.entry().equals(asked.entry());
    }
    return c instanceof Expr.Compare compare
        && compare.relation() != Relation.NOT_EQUAL
        && compare.a() instanceof Expr.EntryAmount of
        && of.entry().equals(asked.entry());
  }
}
