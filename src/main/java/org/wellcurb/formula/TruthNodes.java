package org.wellcurb.formula;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.WellRecord;

/** The kinds of compiled conditions, but for comparisons of amounts. */
final class TruthNodes {
  private TruthNodes() {}

  static final class Fixed extends TruthNode {
    private final int truth;

    Fixed(boolean value) {
      truth = Truth.of(value);
    }

    @Override
    int eval(Frame f, int at) {
      return truth;
    }
  }

  /** {@code between}: one comparison, so void if any of its amounts is. */
  static final class Within extends TruthNode {
    private final TruthNode aboveLeast;
    private final TruthNode belowGreatest;

    Within(TruthNode aboveLeast, TruthNode belowGreatest) {
      this.aboveLeast = aboveLeast;
      this.belowGreatest = belowGreatest;
    }

    @Override
    int eval(Frame f, int at) {
      int above = aboveLeast.eval(f, at);
      int below = belowGreatest.eval(f, at);
      return above == Truth.VOID || below == Truth.VOID ? Truth.VOID : Math.min(above, below);
    }
  }

  static final class IsYesNo extends TruthNode {
    private final int entry;
    private final double expected;

    IsYesNo(int entry, boolean expected) {
      this.entry = entry;
      this.expected = expected ? 1 : 0;
    }

    @Override
    int eval(Frame f, int at) {
      return switch (f.state(entry)) {
        case WellRecord.GIVEN -> Truth.of(f.record().lo(entry) == expected);
        case WellRecord.NOT_APPLICABLE -> Truth.VOID;
        default -> Truth.UNKNOWN;
      };
    }
  }

  static final class IsKnown extends TruthNode {
    private final int entry;

    IsKnown(int entry) {
      this.entry = entry;
    }

    @Override
    int eval(Frame f, int at) {
      return switch (f.state(entry)) {
        case WellRecord.GIVEN -> Truth.TRUE;
        case WellRecord.NOT_APPLICABLE -> Truth.VOID;
        default -> Truth.FALSE;
      };
    }
  }

  static final class IsApplicable extends TruthNode {
    private final int entry;

    IsApplicable(int entry) {
      this.entry = entry;
    }

    @Override
    int eval(Frame f, int at) {
      return Truth.of(f.state(entry) != WellRecord.NOT_APPLICABLE);
    }
  }

  /** False where the form says n/a of an entry that must apply and that it covers. */
  static final class DoesApply extends TruthNode {
    private final int entry;

    DoesApply(int entry) {
      this.entry = entry;
    }

    @Override
    int eval(Frame f, int at) {
      if (f.state(entry) == WellRecord.NOT_APPLICABLE) {
        return Truth.VOID;
      }
      return Truth.of(f.record().state(entry) != WellRecord.NOT_APPLICABLE);
    }
  }

  /** A choice among some; the choices as bits. */
  static final class ChoiceIn extends TruthNode {
    private final int entry;
    private final long bits;
    private final boolean isNegated;

    ChoiceIn(int entry, long bits, boolean isNegated) {
      this.entry = entry;
      this.bits = bits;
      this.isNegated = isNegated;
    }

    @Override
    int eval(Frame f, int at) {
      return switch (f.state(entry)) {
        case WellRecord.GIVEN ->
            Truth.of(((bits >>> (int) f.record().lo(entry)) & 1) == (isNegated ? 0 : 1));
        case WellRecord.NOT_APPLICABLE -> Truth.VOID;
        default -> Truth.UNKNOWN;
      };
    }
  }

  /** A text among some, all in lower case. */
  static final class TextIn extends TruthNode {
    private final int entry;
    private final Set<String> words;
    private final boolean isNegated;

    TextIn(int entry, Set<String> words, boolean isNegated) {
      this.entry = entry;
      this.words = Set.copyOf(words);
      this.isNegated = isNegated;
    }

    @Override
    int eval(Frame f, int at) {
      return switch (f.state(entry)) {
        case WellRecord.GIVEN -> {
          @Nullable String text = f.record().text(entry);
          yield Truth.of((text != null && words.contains(text)) != isNegated);
        }
        case WellRecord.NOT_APPLICABLE -> Truth.VOID;
        default -> Truth.UNKNOWN;
      };
    }
  }

  /** Words that a table or a second entry may give. */
  static final class WordsMeet extends TruthNode {
    private final WordNode a;
    private final WordNode b;
    private final boolean isNegated;

    WordsMeet(WordNode a, WordNode b, boolean isNegated) {
      this.a = a;
      this.b = b;
      this.isNegated = isNegated;
    }

    @Override
    int eval(Frame f, int at) {
      @Nullable List<String> left = a.words(f);
      @Nullable List<String> right = b.words(f);
      if (left == null || right == null) {
        return Truth.VOID;
      }
      int truth = meet(left, right);
      return isNegated ? Truth.not(truth) : truth;
    }

    /** True if the right side holds all that the left may be, false if none of it. */
    private int meet(List<String> left, List<String> right) {
      if (left.isEmpty() || right.isEmpty()) {
        return Truth.UNKNOWN;
      }
      boolean isSure = b.isAnyOf() || right.size() == 1;
      if (isSure && right.containsAll(left)) {
        return Truth.TRUE;
      }
      return left.stream().noneMatch(right::contains) ? Truth.FALSE : Truth.UNKNOWN;
    }
  }

  static final class Negation extends TruthNode {
    private final TruthNode a;

    Negation(TruthNode a) {
      this.a = a;
    }

    @Override
    int eval(Frame f, int at) {
      return Truth.not(a.eval(f, at));
    }
  }

  static final class All extends TruthNode {
    private final TruthNode[] all;

    All(TruthNode[] all) {
      this.all = all;
    }

    @Override
    int eval(Frame f, int at) {
      int truth = Truth.VOID;
      for (TruthNode one : all) {
        truth = Truth.and(truth, one.eval(f, at));
        if (truth == Truth.FALSE) {
          return truth;
        }
      }
      return truth;
    }
  }

  static final class Any extends TruthNode {
    private final TruthNode[] any;

    Any(TruthNode[] any) {
      this.any = any;
    }

    @Override
    int eval(Frame f, int at) {
      int truth = Truth.VOID;
      for (TruthNode one : any) {
        truth = Truth.or(truth, one.eval(f, at));
        if (truth == Truth.TRUE) {
          return truth;
        }
      }
      return truth;
    }
  }

  /** Where the test is unknown: the branches' truth if alike, else unknown. */
  static final class Choose extends TruthNode {
    private final TruthNode test;
    private final TruthNode then;
    private final TruthNode otherwise;

    Choose(TruthNode test, TruthNode then, TruthNode otherwise) {
      this.test = test;
      this.then = then;
      this.otherwise = otherwise;
    }

    @Override
    int eval(Frame f, int at) {
      switch (test.eval(f, at)) {
        case Truth.TRUE:
          return then.eval(f, at);
        case Truth.FALSE:
          return otherwise.eval(f, at);
        case Truth.VOID:
          return Truth.VOID;
        default:
          int first = then.eval(f, at);
          return first == otherwise.eval(f, at) ? first : Truth.UNKNOWN;
      }
    }
  }
}
