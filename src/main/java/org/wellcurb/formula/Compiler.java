package org.wellcurb.formula;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.record.Entry;

/** Turns a checked tree into nodes that evaluate without making objects. */
final class Compiler {
  private static final double DAYS_IN_A_SECOND = 1 / 86400.0;

  private final Scope scope;

  Compiler(Scope scope) {
    this.scope = scope;
  }

  TruthNode truth(Expr.Condition c) {
    if (c instanceof Expr.Compare e) {
      return compare(e.relation(), e.a(), e.b(), e.underNot(), List.of(e.a(), e.b()));
    } else if (c instanceof Expr.Between e) {
      List<Expr> sides = List.of(e.a(), e.least(), e.greatest());
      return new TruthNodes.Within(
          compare(Relation.AT_LEAST, e.a(), e.least(), e.underNot(), sides),
          compare(Relation.AT_MOST, e.a(), e.greatest(), e.underNot(), sides));
    } else if (c instanceof Expr.YesNo e) {
      return new TruthNodes.IsYesNo(e.entry().index(), e.expected());
    } else if (c instanceof Expr.Constant e) {
      return new TruthNodes.Fixed(e.value());
    } else if (c instanceof Expr.Known e) {
      return new TruthNodes.IsKnown(e.entry().index());
    } else if (c instanceof Expr.IsApplicable e) {
      return new TruthNodes.IsApplicable(e.entry().index());
    } else if (c instanceof Expr.Applies e) {
      return new TruthNodes.DoesApply(e.entry().index());
    } else if (c instanceof Expr.IsOneOf e) {
      return isOneOf(e);
    } else if (c instanceof Expr.SameWord e) {
      return new TruthNodes.WordsMeet(word(e.a()), word(e.b()), e.isNegated());
    } else if (c instanceof Expr.Not e) {
      return new TruthNodes.Negation(truth(e.a()));
    } else if (c instanceof Expr.And e) {
      return new TruthNodes.All(truths(e.all()));
    } else if (c instanceof Expr.Or e) {
      return new TruthNodes.Any(truths(e.any()));
    } else if (c instanceof Expr.ConditionIf e) {
      return new TruthNodes.Choose(truth(e.test()), truth(e.then()), truth(e.otherwise()));
    }
    throw new IllegalStateException("no node for " + c);
  }

  private TruthNode[] truths(List<Expr.Condition> all) {
    return all.stream().map(this::truth).toArray(TruthNode[]::new);
  }

  CompareNode compare(
      Relation relation, Expr.Amount a, Expr.Amount b, boolean underNot, List<Expr> sides) {
    int @Nullable [] amounts =
        sides.stream().anyMatch(Compiler::isDual)
            ? Written.amounts(sides, scope.catalogue())
            : null;
    boolean hasSlack = !underNot && relation != Relation.NOT_EQUAL;
    return new CompareNode(
        relation,
        amount(a),
        amount(b),
        amounts,
        hasSlack ? Slack.of(a, b) : null,
        hasSlack ? Slack.of(b, a) : null);
  }

  /** True if a dual limit stands in it, or a table that gives one. */
  static boolean isDual(Expr side) {
    return Parts.any(side, part -> part instanceof Expr.Dual || isDualTable(part));
  }

  private static boolean isDualTable(Expr part) {
    return part instanceof Expr.TableAmount t
        && t.table().rows().stream()
            .anyMatch(row -> row.value() instanceof Table.Amount v && v.bracketUnit() != null);
  }

  private static TruthNode isOneOf(Expr.IsOneOf e) {
    if (e.word() instanceof Expr.EntryWord of) {
      Entry entry = of.entry();
      if (entry.choices().isEmpty()) {
        return new TruthNodes.TextIn(entry.index(), Set.copyOf(e.words()), e.isNegated());
      }
      long bits = 0;
      for (String word : e.words()) {
        bits |= 1L << entry.choice(word);
      }
      return new TruthNodes.ChoiceIn(entry.index(), bits, e.isNegated());
    }
    return new TruthNodes.WordsMeet(word(e.word()), new WordNode.OneOf(e.words()), e.isNegated());
  }

  private static WordNode word(Expr.Word word) {
    if (word instanceof Expr.EntryWord e) {
      return new WordNode.OfEntry(e.entry());
    }
    return new WordNode.OfTable(((Expr.TableWord) word).table());
  }

  AmountNode amount(Expr.Amount a) {
    if (a instanceof Expr.Literal e) {
      return new AmountNodes.Fixed(e.value());
    } else if (a instanceof Expr.Day e) {
      return new AmountNodes.Fixed(e.value());
    } else if (a instanceof Expr.AsOf) {
      return new AmountNodes.AsOfDay();
    } else if (a instanceof Expr.FigureAmount e) {
      return new AmountNodes.Fixed(e.value());
    } else if (a instanceof Expr.Dual e) {
      return new AmountNodes.DualLimit(e);
    } else if (a instanceof Expr.EntryAmount e) {
      return new AmountNodes.OfEntry(e);
    } else if (a instanceof Expr.WorkingAmount e) {
      return new WorkingNode(e.working(), scope);
    } else if (a instanceof Expr.TableAmount e) {
      return new TableNode(e.table());
    } else if (a instanceof Expr.Arithmetic e) {
      return arithmetic(e);
    } else if (a instanceof Expr.Negative e) {
      return new AmountNodes.Negated(amount(e.a()));
    } else if (a instanceof Expr.Absolute e) {
      return new AmountNodes.Size(amount(e.a()));
    } else if (a instanceof Expr.Extreme e) {
      return new AmountNodes.LeastOrGreatest(
          e.isGreatest(), e.of().stream().map(this::amount).toArray(AmountNode[]::new));
    } else if (a instanceof Expr.Rounded e) {
      return new AmountNodes.ToStep(amount(e.a()), e.step().value());
    } else if (a instanceof Expr.AmountIf e) {
      return new AmountNodes.Choose(truth(e.test()), amount(e.then()), amount(e.otherwise()));
    }
    throw new IllegalStateException("no node for " + a);
  }

  private AmountNode arithmetic(Expr.Arithmetic e) {
    AmountNode sum = new AmountNodes.Sum(e.sign(), amount(e.a()), amount(e.b()), scaleOfB(e));
    return isDaysBetween(e) ? new AmountNodes.Days(sum) : sum;
  }

  /** True of what dates count in days, and other amounts in seconds. */
  static boolean isDaysBetween(Expr.Arithmetic e) {
    return e.a().dimension().equals(Dimension.DATE) && !addsTime(e);
  }

  /** What the second operand is multiplied by: dates count days, and times seconds. */
  static double scaleOfB(Expr.Arithmetic e) {
    return addsTime(e) ? DAYS_IN_A_SECOND : 1;
  }

  private static boolean addsTime(Expr.Arithmetic e) {
    return e.a().dimension().equals(Dimension.DATE) && e.b().dimension().equals(Dimension.TIME);
  }
}
