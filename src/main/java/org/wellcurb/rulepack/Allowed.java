package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Relation;

/** What a condition leaves of the values of one amount, word or question. */
sealed interface Allowed {

  /** What both leave; null if they leave nothing. */
  @Nullable Allowed and(Allowed other);

  /** A stretch of amounts. */
  record Span(double lo, boolean loIncluded, double hi, boolean hiIncluded) {
    @Nullable Span and(Span o) {
      boolean isLoMine = lo > o.lo || (lo == o.lo && !loIncluded);
      boolean isHiMine = hi < o.hi || (hi == o.hi && !hiIncluded);
      double low = isLoMine ? lo : o.lo;
      double high = isHiMine ? hi : o.hi;
      boolean lowIn = isLoMine ? loIncluded : o.loIncluded;
      boolean highIn = isHiMine ? hiIncluded : o.hiIncluded;
      return low < high || (low == high && lowIn && highIn)
          ? new Span(low, lowIn, high, highIn)
          : null;
    }
  }

  /** Amounts in one of several stretches. */
  record Ranges(List<Span> spans) implements Allowed {
    private static final double ALL = Double.POSITIVE_INFINITY;

    public Ranges {
      spans = List.copyOf(spans);
    }

    /** The amounts that stand so to a limit. */
    static Ranges of(Relation relation, double limit) {
      return switch (relation) {
        case AT_LEAST -> new Ranges(List.of(new Span(limit, true, ALL, false)));
        case MORE -> new Ranges(List.of(new Span(limit, false, ALL, false)));
        case AT_MOST -> new Ranges(List.of(new Span(-ALL, false, limit, true)));
        case LESS -> new Ranges(List.of(new Span(-ALL, false, limit, false)));
        case EQUAL -> new Ranges(List.of(new Span(limit, true, limit, true)));
        case NOT_EQUAL ->
            new Ranges(
                List.of(new Span(-ALL, false, limit, false), new Span(limit, false, ALL, false)));
      };
    }

    @Override
    public @Nullable Allowed and(Allowed other) {
      List<Span> both = new ArrayList<>();
      if (other instanceof Ranges o) {
        for (Span mine : spans) {
          for (Span theirs : o.spans) {
            Span span = mine.and(theirs);
            if (span != null) {
              both.add(span);
            }
          }
        }
      }
      return both.isEmpty() ? null : new Ranges(both);
    }
  }

  /**
   * Words.
   *
   * @param words some words
   * @param isOther true if all others are meant
   */
  record Words(Set<String> words, boolean isOther) implements Allowed {
    public Words {
      words = Set.copyOf(words);
    }

    @Override
    public @Nullable Allowed and(Allowed other) {
      if (!(other instanceof Words o)) {
        return null;
      }
      Set<String> both = new TreeSet<>(isOther && !o.isOther ? o.words : words);
      if (isOther && o.isOther) {
        both.addAll(o.words);
        return new Words(both, true);
      }
      if (isOther) {
        both.removeAll(words);
      } else if (o.isOther) {
        both.removeAll(o.words);
      } else {
        both.retainAll(o.words);
      }
      return both.isEmpty() ? null : new Words(both, false);
    }
  }

  /** The answer to a question: yes or no. */
  record Answer(boolean isYes) implements Allowed {
    @Override
    public @Nullable Allowed and(Allowed other) {
      return equals(other) ? this : null;
    }
  }
}
