package org.wellcurb.crosscheck;

import java.util.Arrays;

/**
 * Sorts long keys in time that grows with their number alone, eleven bits at a time from the lowest
 * up; bits that all keys share cost nothing.
 */
final class KeySort {
  private static final int BITS = 11;
  private static final int SIZE = 1 << BITS;

  /** Of fewer keys comparing is quicker. */
  private static final int FEW = 2048;

  private KeySort() {}

  /** Sorts the first so many keys, in place. */
  static void sort(long[] keys, int count) {
    if (count < FEW) {
      Arrays.sort(keys, 0, count);
      return;
    }
    long differing = 0;
    for (int i = 1; i < count; i++) {
      differing |= keys[i] ^ keys[0];
    }
    long[] from = keys;
    long[] to = new long[count];
    for (int shift = 0; shift < Long.SIZE; shift += BITS) {
      if (((differing >>> shift) & (SIZE - 1)) != 0) {
        pass(from, to, count, shift);
        long[] swap = from;
        from = to;
        to = swap;
      }
    }
    if (from != keys) {
      System.arraycopy(from, 0, keys, 0, count);
    }
  }

  private static void pass(long[] from, long[] to, int count, int shift) {
    // The sign bit stands among the highest: keys below 0 come first.
    int flip = shift + BITS >= Long.SIZE ? 1 << (Long.SIZE - 1 - shift) : 0;
    int[] starts = new int[SIZE + 1];
    for (int i = 0; i < count; i++) {
      starts[(((int) (from[i] >>> shift) & (SIZE - 1)) ^ flip) + 1]++;
    }
    for (int i = 0; i < SIZE; i++) {
      starts[i + 1] += starts[i];
    }
    for (int i = 0; i < count; i++) {
      to[starts[((int) (from[i] >>> shift) & (SIZE - 1)) ^ flip]++] = from[i];
    }
  }
}
