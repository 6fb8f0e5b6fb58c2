package org.wellcurb.formula;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Entry;

/**
 * Turns formulas into what works them out for records side by side. Parts that are equal are made
 * once, whichever rules they stand in: hundreds of rules ask whether the well is a household's.
 * Kinds of parts that are rare, or do much for one record, have no form of their own and are
 * evaluated one record after the other, by the nodes that judge a single one.
 */
public final class LaneCompiler {
  private final IdentityHashMap<Scope, Integer> scopes = new IdentityHashMap<>();
  private final Map<Shared, TruthLanes> truths = new HashMap<>();
  private final Map<Shared, AmountLanes> amounts = new HashMap<>();

  /** Place of the scope at hand, from 1. */
  private int place;

  private Compiler alone;

  /** What equal parts have in common: those with workings go by the figures of their scope. */
  private record Shared(int scope, Expr expr) {}

  /** Compiles formulas of any scopes. */
  @SuppressWarnings("NullAway.Init")
  public LaneCompiler() {}

  /** The condition of a formula. */
  public TruthLanes condition(Formula formula) {
    scopes.putIfAbsent(formula.scope(), scopes.size() + 1);
    place = java.util.Objects.requireNonNull(scopes.get(formula.scope()));
    alone = new Compiler(formula.scope());
    return truth(formula.tree());
  }

  private Shared shared(Expr expr) {
    boolean hangsOnScope = Parts.any(expr, part -> part instanceof Expr.WorkingAmount);
    return new Shared(hangsOnScope ? place : 0, expr);
  }

  private TruthLanes truth(Expr.Condition c) {
    Shared key = shared(c);
    @Nullable TruthLanes made = truths.get(key);
    if (made == null) {
      made = made(c);
      truths.put(key, made);
    }
    return made;
  }

  private TruthLanes made(Expr.Condition c) {
    if (c instanceof Expr.Compare e) {
      return compare(e.relation(), e.a(), e.b(), e.underNot(), List.of(e.a(), e.b()));
    } else if (c instanceof Expr.Between e) {
      List<Expr> sides = List.of(e.a(), e.least(), e.greatest());
      return new LaneTruths.Within(
          compare(Relation.AT_LEAST, e.a(), e.least(), e.underNot(), sides),
          compare(Relation.AT_MOST, e.a(), e.greatest(), e.underNot(), sides));
    } else if (c instanceof Expr.YesNo e) {
      return new LaneTruths.ChoiceIn(e.entry().index(), e.expected() ? 0b10 : 0b01);
    } else if (c instanceof Expr.Constant e) {
      return new LaneTruths.Fixed(e.value());
    } else if (c instanceof Expr.Known e) {
      return new LaneTruths.IsKnown(e.entry().index());
    } else if (c instanceof Expr.IsApplicable e) {
      return new LaneTruths.IsApplicable(e.entry().index());
    } else if (c instanceof Expr.IsOneOf e && e.word() instanceof Expr.EntryWord of) {
      return of.entry().choices().isEmpty()
          ? new LaneTruths.EachAlone(alone.truth(c))
          : isOneOf(of.entry(), e);
    } else if (c instanceof Expr.Not e) {
      return new LaneTruths.Negation(truth(e.a()));
    } else if (c instanceof Expr.And e) {
      return new LaneTruths.Joined(true, truths(e.all()));
    } else if (c instanceof Expr.Or e) {
      return new LaneTruths.Joined(false, truths(e.any()));
    } else if (c instanceof Expr.ConditionIf e) {
      return new LaneTruths.Choose(truth(e.test()), truth(e.then()), truth(e.otherwise()));
    }
    return new LaneTruths.EachAlone(alone.truth(c));
  }

  private TruthLanes[] truths(List<Expr.Condition> all) {
    return all.stream().map(this::truth).toArray(TruthLanes[]::new);
  }

  private static TruthLanes isOneOf(Entry entry, Expr.IsOneOf e) {
    long bits = 0;
    for (String word : e.words()) {
      bits |= 1L << entry.choice(word);
    }
    return new LaneTruths.ChoiceIn(entry.index(), e.isNegated() ? ~bits : bits);
  }

  private TruthLanes compare(
      Relation relation, Expr.Amount a, Expr.Amount b, boolean underNot, List<Expr> sides) {
    CompareNode one = alone.compare(relation, a, b, underNot, sides);
    return new CompareLanes(relation, amount(a), amount(b), one.amounts(), one);
  }

  private AmountLanes amount(Expr.Amount a) {
    // What a dual limit is hangs on the comparison that it stands in, so it is never shared.
    if (Compiler.isDual(a)) {
      return madeAmount(a);
    }
    Shared key = shared(a);
    @Nullable AmountLanes made = amounts.get(key);
    if (made == null) {
      made = madeAmount(a);
      amounts.put(key, made);
    }
    return made;
  }

  private AmountLanes madeAmount(Expr.Amount a) {
    if (a instanceof Expr.Literal e) {
      return new LaneAmounts.Fixed(e.value());
    } else if (a instanceof Expr.Day e) {
      return new LaneAmounts.Fixed(e.value());
    } else if (a instanceof Expr.FigureAmount e) {
      return new LaneAmounts.Fixed(e.value());
    } else if (a instanceof Expr.Dual e) {
      return new LaneAmounts.DualLimit(e);
    } else if (a instanceof Expr.EntryAmount e) {
      return new LaneAmounts.OfEntry(e);
    } else if (a instanceof Expr.Extreme e) {
      return new LaneAmounts.LeastOrGreatest(
          e.isGreatest(), e.of().stream().map(this::amount).toArray(AmountLanes[]::new));
    } else if (a instanceof Expr.Arithmetic e) {
      return arithmetic(e);
    } else if (a instanceof Expr.Absolute e) {
      return new LaneAmounts.Size(amount(e.a()));
    }
    AmountNode node = alone.amount(a);
    if (a instanceof Expr.WorkingAmount e
        && node instanceof WorkingNode one
        && WorkingLanes.canTake(e.working())) {
      return new WorkingLanes(one);
    }
    return new LaneAmounts.EachAlone(node);
  }

  private AmountLanes arithmetic(Expr.Arithmetic e) {
    AmountLanes a = amount(e.a());
    AmountLanes b = amount(e.b());
    if (e.sign() != '+' && e.sign() != '-') {
      return new LaneAmounts.Product(e.sign() != '*', a, b);
    }
    AmountLanes sum = new LaneAmounts.Sum(e.sign() == '+', a, b, Compiler.scaleOfB(e));
    return Compiler.isDaysBetween(e) ? new LaneAmounts.Days(sum) : sum;
  }
}
