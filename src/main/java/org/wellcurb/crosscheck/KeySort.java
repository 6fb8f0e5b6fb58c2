package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.LongBuffer;
import java.util.Arrays;

/**
 * Sorts long keys in time that grows with their number alone, eleven bits at a time from the lowest
 * up; bits that all keys share cost nothing. And finds keys among sorted ones.
 */
final class KeySort {
  private static final int BITS = 11;
  private static final int SIZE = 1 << BITS;

  /** Of fewer keys comparing is quicker. */
  private static final int FEW = 2048;

  private KeySort() {}

  /** Sorts the first so many keys, in place, with room of its own where there are many. */
  static void sort(LongBuffer keys, int count, Columns columns) throws IOException {
    sort(keys, 0, count, count < FEW ? keys : columns.longs(count));
  }

  /**
   * Sorts the first so many keys, in place.
   *
   * @param spare room for as many keys, of which nothing is kept; unused where there are few
   */
  static void sort(LongBuffer keys, int count, LongBuffer spare) {
    sort(keys, 0, count, spare);
  }

  /** Sorts keys from one place to before another, in place. */
  static void sort(LongBuffer keys, int start, int end, LongBuffer spare) {
    int count = end - start;
    if (count < FEW) {
      long[] few = new long[count];
      keys.get(start, few);
      Arrays.sort(few);
      keys.put(start, few);
      return;
    }
    LongBuffer all = keys.slice(start, count);
    long differing = 0;
    for (int i = 1; i < count; i++) {
      differing |= all.get(i) ^ all.get(0);
    }
    LongBuffer from = all;
    LongBuffer to = spare;
    boolean isInSpare = false;
    for (int shift = 0; shift < Long.SIZE; shift += BITS) {
      if (((differing >>> shift) & (SIZE - 1)) != 0) {
        pass(from, to, count, shift);
        LongBuffer swap = from;
        from = to;
        to = swap;
        isInSpare = !isInSpare;
      }
    }
    if (isInSpare) {
      all.put(0, spare, 0, count);
    }
  }

  private static void pass(LongBuffer from, LongBuffer to, int count, int shift) {
    // The sign bit stands among the highest: keys below 0 come first.
    int flip = shift + BITS >= Long.SIZE ? 1 << (Long.SIZE - 1 - shift) : 0;
    int[] starts = new int[SIZE + 1];
    for (int i = 0; i < count; i++) {
      starts[(((int) (from.get(i) >>> shift) & (SIZE - 1)) ^ flip) + 1]++;
    }
    for (int i = 0; i < SIZE; i++) {
      starts[i + 1] += starts[i];
    }
    for (int i = 0; i < count; i++) {
      long key = from.get(i);
      to.put(starts[((int) (key >>> shift) & (SIZE - 1)) ^ flip]++, key);
    }
  }

  /** The place of a key among the first so many, which are sorted; less than 0 if it is none. */
  static int find(LongBuffer sorted, int count, long key) {
    int low = 0;
    int high = count - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      long there = sorted.get(middle);
      if (there == key) {
        return middle;
      }
      if (there < key) {
        low = middle + 1;
      } else {
        high = middle - 1;
      }
    }
    return -1;
  }
}
