package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Relation;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Kind;

/**
 * A condition as a list of ways in which it can hold, each a set of values for the amounts, words
 * and questions in it. Used only to prove that something can never hold: whatever cannot be
 * reckoned with is a question that may be answered either way, so that a list without any way is a
 * proof, and one with a way is none.
 */
final class Branches {
  /** A condition with more ways is left alone. */
  private static final int MOST = 256;

  /** One way: what it leaves of each variable. */
  record Branch(Map<Object, Allowed> values) {
    @Nullable Branch and(Branch other) {
      Map<Object, Allowed> both = new HashMap<>(values);
      for (Map.Entry<Object, Allowed> each : other.values.entrySet()) {
        Allowed mine = both.get(each.getKey());
        Allowed left = mine == null ? each.getValue() : mine.and(each.getValue());
        if (left == null) {
          return null;
        }
        both.put(each.getKey(), left);
      }
      return new Branch(both);
    }

    /** True if it is about single entries only, so that some record surely goes this way. */
    boolean isPlain() {
      return values.keySet().stream().allMatch(key -> key instanceof String name && isEntry(name));
    }
  }

  private static boolean isEntry(String name) {
    return Catalogue.standard().find(name) != null;
  }

  /** There are more ways than can be reckoned with. */
  static final class TooMany extends Exception {
    private static final long serialVersionUID = 1L;
  }

  private final Linear linear;
  private final @Nullable Spread spread;

  /**
   * @param side which side of dual limits counts
   */
  Branches(UnitSystem side) {
    this(side, new Spread(side));
  }

  private Branches(UnitSystem side, @Nullable Spread spread) {
    linear = new Linear(side);
    this.spread = spread;
  }

  /** Without what follows from the least and the most that a table gives. */
  static Branches withoutSpreads(UnitSystem side) {
    return new Branches(side, null);
  }

  /** The ways in which a condition holds, or, negated, does not. */
  List<Branch> of(Expr.Condition c, boolean holds) throws TooMany {
    if (c instanceof Expr.And e) {
      return join(e.all(), holds, holds);
    } else if (c instanceof Expr.Or e) {
      return join(e.any(), !holds, holds);
    } else if (c instanceof Expr.Not e) {
      return of(e.a(), !holds);
    } else if (c instanceof Expr.ConditionIf e) {
      List<Branch> yes = and(of(e.test(), true), of(e.then(), holds));
      return or(yes, and(of(e.test(), false), of(e.otherwise(), holds)));
    } else if (c instanceof Expr.Constant e) {
      return e.value() == holds ? List.of(new Branch(Map.of())) : List.of();
    } else if (c instanceof Expr.Compare e) {
      return compare(e.relation(), e.a(), e.b(), holds);
    } else if (c instanceof Expr.Between e) {
      List<Branch> above = compare(Relation.AT_LEAST, e.a(), e.least(), holds);
      List<Branch> below = compare(Relation.AT_MOST, e.a(), e.greatest(), holds);
      return holds ? and(above, below) : or(above, below);
    } else if (c instanceof Expr.IsOneOf e) {
      return one(Linear.name(e.word()), words(e.word(), e.words(), e.isNegated() == holds));
    } else if (c instanceof Expr.YesNo e) {
      return one(e.entry().key(), new Allowed.Answer(e.expected() == holds));
    } else if (c instanceof Expr.SameWord e) {
      return one(
          new Expr.SameWord(e.a(), e.b(), false), new Allowed.Answer(e.isNegated() != holds));
    }
    return one(c, new Allowed.Answer(holds));
  }

  private List<Branch> join(List<Expr.Condition> parts, boolean isAnd, boolean holds)
      throws TooMany {
    List<Branch> all = isAnd ? List.of(new Branch(Map.of())) : List.of();
    for (Expr.Condition part : parts) {
      all = isAnd ? and(all, of(part, holds)) : or(all, of(part, holds));
    }
    return all;
  }

  /** The ways in which both hold. */
  static List<Branch> and(List<Branch> a, List<Branch> b) throws TooMany {
    Set<Branch> both = new LinkedHashSet<>();
    for (Branch x : a) {
      for (Branch y : b) {
        Branch branch = x.and(y);
        if (branch != null) {
          both.add(branch);
        }
        if (both.size() > MOST) {
          throw new TooMany();
        }
      }
    }
    return List.copyOf(both);
  }

  /** The ways in which one of them holds. */
  static List<Branch> or(List<Branch> a, List<Branch> b) throws TooMany {
    List<Branch> either = new ArrayList<>(a);
    either.addAll(b);
    if (either.size() > MOST) {
      throw new TooMany();
    }
    return either;
  }

  private static List<Branch> one(Object variable, Allowed allowed) {
    return List.of(new Branch(Map.of(variable, allowed)));
  }

  private List<Branch> compare(Relation relation, Expr.Amount a, Expr.Amount b, boolean holds)
      throws TooMany {
    if (a instanceof Expr.AmountIf e) {
      return either(
          e, compare(relation, e.then(), b, holds), compare(relation, e.otherwise(), b, holds));
    } else if (b instanceof Expr.AmountIf e) {
      return either(
          e, compare(relation, a, e.then(), holds), compare(relation, a, e.otherwise(), holds));
    }
    Relation is = holds ? relation : opposite(relation);
    List<Branch> ways = ways(is, linear.difference(a, b));
    if (spread == null) {
      return ways;
    }
    // What follows from it for each side alone, where the other has a least and a most.
    @Nullable Interval left = spread.of(a);
    @Nullable Interval right = spread.of(b);
    if (right != null && !right.isPoint()) {
      ways = within(ways, is, a, left, right);
    }
    if (left != null && !left.isPoint()) {
      ways = within(ways, is.mirrored(), b, right, left);
    }
    return ways;
  }

  private List<Branch> either(Expr.AmountIf e, List<Branch> then, List<Branch> otherwise)
      throws TooMany {
    return or(and(of(e.test(), true), then), and(of(e.test(), false), otherwise));
  }

  /** The ways that are left of some, as an amount that may itself be within ends stands so. */
  private List<Branch> within(
      List<Branch> ways, Relation is, Expr.Amount a, @Nullable Interval own, Interval limit)
      throws TooMany {
    List<Branch> left = ways;
    if (is == Relation.AT_LEAST || is == Relation.MORE || is == Relation.EQUAL) {
      Relation above = is == Relation.EQUAL ? Relation.AT_LEAST : is;
      left =
          own == null
              ? and(left, ways(above, linear.difference(a, limit.lo())))
              : and(left, ways(above, constant(own.hi() - limit.lo())));
    }
    if (is == Relation.AT_MOST || is == Relation.LESS || is == Relation.EQUAL) {
      Relation below = is == Relation.EQUAL ? Relation.AT_MOST : is;
      left =
          own == null
              ? and(left, ways(below, linear.difference(a, limit.hi())))
              : and(left, ways(below, constant(own.lo() - limit.hi())));
    }
    return left;
  }

  private static Linear.Difference constant(double gap) {
    return new Linear.Difference(null, false, gap);
  }

  /** The ways in which a difference stands so to nothing. */
  private static List<Branch> ways(Relation is, Linear.Difference d) {
    if (d.variable() == null) {
      double gap = d.constant();
      boolean isSo = Allowed.Ranges.of(is, 0).and(point(gap)) != null;
      return isSo ? List.of(new Branch(Map.of())) : List.of();
    }
    Relation seen = d.isNegative() ? is.mirrored() : is;
    double limit = d.isNegative() ? d.constant() : -d.constant();
    return one(d.variable(), Allowed.Ranges.of(seen, limit));
  }

  private static Allowed.Ranges point(double value) {
    return Allowed.Ranges.of(Relation.EQUAL, value);
  }

  private static Relation opposite(Relation relation) {
    return switch (relation) {
      case EQUAL -> Relation.NOT_EQUAL;
      case NOT_EQUAL -> Relation.EQUAL;
      case LESS -> Relation.AT_LEAST;
      case AT_LEAST -> Relation.LESS;
      case MORE -> Relation.AT_MOST;
      case AT_MOST -> Relation.MORE;
    };
  }

  /** The words meant; of an entry with choices those that are left, where others are meant. */
  private static Allowed words(Expr.Word word, List<String> words, boolean isOther) {
    if (isOther && word instanceof Expr.EntryWord e && e.entry().kind() == Kind.CHOICE) {
      Set<String> left = new LinkedHashSet<>();
      e.entry().choices().forEach(choice -> left.add(choice.toLowerCase(Locale.ROOT)));
      words.forEach(left::remove);
      return new Allowed.Words(left, false);
    }
    return new Allowed.Words(Set.copyOf(words), isOther);
  }
}
