package org.wellcurb.batch;

/** Counts the outcomes of one record in the bits of one number: counters would wait in memory. */
final class OutcomeCount {
  /** Bits that one outcome has in a number that counts all of them. */
  private static final int COUNTER_BITS = 12;

  private static final int MOST_AT_ONCE = (1 << COUNTER_BITS) - 1;

  private OutcomeCount() {}

  /** Adds how often each outcome is among those judged. */
  static void add(byte[] judged, int[] outcomes) {
    for (int from = 0; from < judged.length; from += MOST_AT_ONCE) {
      add(judged, from, Math.min(judged.length, from + MOST_AT_ONCE), outcomes);
    }
  }

  private static void add(byte[] judged, int from, int to, int[] outcomes) {
    long sums = 0;
    for (int i = from; i < to; i++) {
      sums += 1L << (COUNTER_BITS * judged[i]);
    }
    for (int i = 0; i < outcomes.length; i++) {
      outcomes[i] += (int) (sums >>> (COUNTER_BITS * i)) & MOST_AT_ONCE;
    }
  }
}
