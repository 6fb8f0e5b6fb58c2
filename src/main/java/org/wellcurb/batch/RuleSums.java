package org.wellcurb.batch;

import java.util.Arrays;

/** Counts of a few rules out of many, in the order of the rules. */
final class RuleSums {
  private int[] rules = new int[4];
  private long[] counts = new long[4];
  private int size;

  /** Adds so many to a rule. */
  void add(int rule, long many) {
    int at = Arrays.binarySearch(rules, 0, size, rule);
    if (at >= 0) {
      counts[at] += many;
      return;
    }
    if (size == rules.length) {
      rules = Arrays.copyOf(rules, 2 * size);
      counts = Arrays.copyOf(counts, 2 * size);
    }
    int place = -at - 1;
    System.arraycopy(rules, place, rules, place + 1, size - place);
    System.arraycopy(counts, place, counts, place + 1, size - place);
    rules[place] = rule;
    counts[place] = many;
    size++;
  }

  void add(RuleSums other) {
    for (int i = 0; i < other.size; i++) {
      add(other.rules[i], other.counts[i]);
    }
  }

  /** How many this rule has. */
  long of(int rule) {
    int at = Arrays.binarySearch(rules, 0, size, rule);
    return at < 0 ? 0 : counts[at];
  }

  /** The rules that have some, in their order. */
  int[] rules() {
    return Arrays.copyOf(rules, size);
  }
}
