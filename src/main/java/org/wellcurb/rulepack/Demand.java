package org.wellcurb.rulepack;

import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Relation;
import org.wellcurb.record.Entry;

/**
 * What a condition asks of one entry, whatever the figure: two rules that ask alike judge one thing
 * twice.
 *
 * @param entry the entry
 * @param sense in which direction it has to lie
 * @param against the other entries and workings that its limit hangs on; none for a figure or one
 *     out of a table
 */
record Demand(Entry entry, Sense sense, Set<Object> against) {
  /** The direction in which an entry has to lie. */
  enum Sense {
    MORE,
    LESS,
    YES,
    NO,
    WORD,
    OTHER_WORD
  }

  Demand {
    against = Set.copyOf(against);
  }

  /** All that a condition asks in any case; not what is one of several ways to meet it. */
  static Set<Demand> of(Expr.Condition condition) {
    Set<Demand> all = new LinkedHashSet<>();
    add(condition, all);
    return all;
  }

  private static void add(Expr.Condition c, Set<Demand> into) {
    if (c instanceof Expr.And e) {
      e.all().forEach(part -> add(part, into));
    } else if (c instanceof Expr.ConditionIf e) {
      add(e.then(), into);
      add(e.otherwise(), into);
    } else if (c instanceof Expr.Compare e) {
      compared(e.a(), e.relation(), e.b(), into);
      compared(e.b(), e.relation().mirrored(), e.a(), into);
    } else if (c instanceof Expr.Between e) {
      compared(e.a(), Relation.AT_LEAST, e.least(), into);
      compared(e.a(), Relation.AT_MOST, e.greatest(), into);
    } else if (c instanceof Expr.YesNo e) {
      into.add(new Demand(e.entry(), e.expected() ? Sense.YES : Sense.NO, Set.of()));
    } else if (c instanceof Expr.IsOneOf e && e.word() instanceof Expr.EntryWord word) {
      Sense sense = e.isNegated() ? Sense.OTHER_WORD : Sense.WORD;
      into.add(new Demand(word.entry(), sense, Set.of()));
    }
  }

  private static void compared(
      Expr.Amount subject, Relation relation, Expr.Amount limit, Set<Demand> into) {
    @Nullable Sense sense =
        switch (relation) {
          case MORE, AT_LEAST -> Sense.MORE;
          case LESS, AT_MOST -> Sense.LESS;
          case EQUAL, NOT_EQUAL -> null;
        };
    if (sense != null && subject instanceof Expr.EntryAmount e) {
      Set<Object> against = new LinkedHashSet<>();
      against(limit, against);
      into.add(new Demand(e.entry(), sense, against));
    }
  }

  private static void against(Expr expr, Set<Object> into) {
    if (expr instanceof Expr.EntryAmount e) {
      into.add(e.entry());
    } else if (expr instanceof Expr.WorkingAmount e) {
      into.add(e.working());
    } else if (expr instanceof Expr.AsOf) {
      into.add(expr);
    }
    Parts.of(expr).forEach(part -> against(part, into));
  }
}
