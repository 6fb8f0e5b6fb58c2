package org.wellcurb.crosscheck;

/**
 * How often each bit of a row of words is set, by group. A word is added to all its 64 counters at
 * once: counters stand bit by bit in words of their own, the lowest bits of all in the first, and
 * are emptied into plain numbers before they overflow. That is several times as fast as to look at
 * one bit after the other.
 */
final class BitCounts {
  /** Binary places of the counters that are added to. */
  private static final int PLACES = 8;

  private static final int MOST = (1 << PLACES) - 1;

  private final int words;
  private final long[] counters;
  private final int[] added;
  private final int[] counts;

  BitCounts(int groups, int words) {
    this.words = words;
    counters = new long[groups * words * PLACES];
    added = new int[groups];
    counts = new int[groups * words * Long.SIZE];
  }

  /** Adds as many words as there are in a row, or fewer, from a place in it. */
  void add(int group, long[] bits, int from, int count) {
    if (added[group] == MOST) {
      settle(group);
    }
    added[group]++;
    int first = (group * words + from) * PLACES;
    for (int word = 0; word < count; word++) {
      long carry = bits[word];
      for (int at = first + word * PLACES; carry != 0; at++) {
        long counter = counters[at];
        counters[at] = counter ^ carry;
        carry &= counter;
      }
    }
  }

  private void settle(int group) {
    for (int word = group * words; word < (group + 1) * words; word++) {
      for (int place = 0; place < PLACES; place++) {
        long left = counters[word * PLACES + place];
        for (; left != 0; left &= left - 1) {
          counts[word * Long.SIZE + Long.numberOfTrailingZeros(left)] += 1 << place;
        }
        counters[word * PLACES + place] = 0;
      }
    }
    added[group] = 0;
  }

  /** How often a bit of a row was set in a group. */
  int count(int group, int bit) {
    if (added[group] > 0) {
      settle(group);
    }
    return counts[group * words * Long.SIZE + bit];
  }
}
