package org.wellcurb.formula;

import java.util.List;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;
import org.wellcurb.workings.Working;

/**
 * A formula as a tree, names resolved and dimensions checked. Its parts are values; see {@link
 * Compiler}.
 */
public sealed interface Expr {

  /** An amount, with its dimension. */
  sealed interface Amount extends Expr {
    Dimension dimension();
  }

  /** Something true or false. */
  sealed interface Condition extends Expr {}

  /** A word: of a choice or a text. */
  sealed interface Word extends Expr {}

  // Amounts.

  /** An amount as written: in SI, and its unit. */
  record Literal(double value, Unit unit) implements Amount {
    @Override
    public Dimension dimension() {
      return unit.dimension();
    }
  }

  /** A limit stated in both unit systems: {@code 50 ft (15 m)}. */
  record Dual(double primary, Unit unit, double bracket, Unit bracketUnit) implements Amount {
    @Override
    public Dimension dimension() {
      return unit.dimension();
    }
  }

  /** A day, as days since 1970-01-01. */
  record Day(double value) implements Amount {
    @Override
    public Dimension dimension() {
      return Dimension.DATE;
    }
  }

  /** The as-of date of the run. */
  record AsOf() implements Amount {
    @Override
    public Dimension dimension() {
      return Dimension.DATE;
    }
  }

  /** The amount of an entry. */
  record EntryAmount(Entry entry, Dimension dimension) implements Amount {}

  /** The value of a working. */
  record WorkingAmount(Working working) implements Amount {
    @Override
    public Dimension dimension() {
      return working.dimension();
    }
  }

  /** The limit that a table gives. */
  record TableAmount(Table table, Dimension dimension) implements Amount {}

  /** A figure that the pack sets, in SI. */
  record FigureAmount(String name, double value, Unit unit) implements Amount {
    @Override
    public Dimension dimension() {
      return unit.dimension();
    }
  }

  /** Sum, difference, product or quotient: one of {@code + - * /}. */
  record Arithmetic(char sign, Amount a, Amount b, Dimension dimension) implements Amount {}

  record Negative(Amount a) implements Amount {
    @Override
    public Dimension dimension() {
      return a.dimension();
    }
  }

  record Absolute(Amount a) implements Amount {
    @Override
    public Dimension dimension() {
      return a.dimension();
    }
  }

  /** The least or the greatest of several. */
  record Extreme(boolean isGreatest, List<Amount> of) implements Amount {
    public Extreme {
      of = List.copyOf(of);
    }

    @Override
    public Dimension dimension() {
      return of.get(0).dimension();
    }
  }

  /** Rounded to a step, half away from zero. */
  record Rounded(Amount a, Literal step) implements Amount {
    @Override
    public Dimension dimension() {
      return a.dimension();
    }
  }

  record AmountIf(Condition test, Amount then, Amount otherwise) implements Amount {
    @Override
    public Dimension dimension() {
      return then.dimension();
    }
  }

  // Conditions.

  /**
   * @param underNot true where it stands under a {@code not}: there rounding gives no slack
   */
  record Compare(Relation relation, Amount a, Amount b, boolean underNot) implements Condition {}

  /** Within two ends, both included. */
  record Between(Amount a, Amount least, Amount greatest, boolean underNot) implements Condition {}

  /** A yes-no entry that must be this. */
  record YesNo(Entry entry, boolean expected) implements Condition {}

  record Constant(boolean value) implements Condition {}

  /** Whether anything could be read of an entry. */
  record Known(Entry entry) implements Condition {}

  /** Whether an entry is not n/a, blank or not: false where it is, and never void. */
  record IsApplicable(Entry entry) implements Condition {}

  /** Whether an entry is said not to apply although it must (made by {@code mustApply} only). */
  record Applies(Entry entry) implements Condition {}

  /**
   * Whether a word is one of these; or, negated, none of them.
   *
   * @param words the words in lower case, as they are compared
   * @param shown the same as the pack writes them
   */
  record IsOneOf(Word word, List<String> words, List<String> shown, boolean isNegated)
      implements Condition {
    public IsOneOf {
      words = List.copyOf(words);
      shown = List.copyOf(shown);
    }
  }

  /** Whether two words are the same; or, negated, are not. */
  record SameWord(Word a, Word b, boolean isNegated) implements Condition {}

  record Not(Condition a) implements Condition {}

  record And(List<Condition> all) implements Condition {
    public And {
      all = List.copyOf(all);
    }
  }

  record Or(List<Condition> any) implements Condition {
    public Or {
      any = List.copyOf(any);
    }
  }

  record ConditionIf(Condition test, Condition then, Condition otherwise) implements Condition {}

  // Words.

  record EntryWord(Entry entry) implements Word {}

  record TableWord(Table table) implements Word {}
}
