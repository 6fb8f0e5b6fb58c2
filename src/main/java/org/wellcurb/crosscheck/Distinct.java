package org.wellcurb.crosscheck;

import java.nio.LongBuffer;
import java.util.Arrays;

/** The distinct ones of many keys, in order: the place of a key among them is its code. */
final class Distinct {
  private final LongBuffer keys;
  private final int count;

  /** The keys again, where they are few: an array is looked through quicker. Else empty. */
  private final long[] few;

  /**
   * @param keys of all records; they are sorted in place, the distinct ones first, and belong to
   *     this from then on
   * @param spare room for as many keys, of which nothing is kept
   */
  Distinct(LongBuffer keys, LongBuffer spare) {
    KeySort.sort(keys, keys.capacity(), spare);
    int distinct = 0;
    for (int i = 0; i < keys.capacity(); i++) {
      if (i == 0 || keys.get(i) != keys.get(distinct - 1)) {
        keys.put(distinct++, keys.get(i));
      }
    }
    this.keys = keys;
    count = distinct;
    few = new long[distinct <= Columns.MOST_IN_HEAP ? distinct : 0];
    keys.get(0, few);
  }

  /** How many there are. */
  int count() {
    return count;
  }

  /** The code of a key that is one of them. */
  int code(long key) {
    return few.length == count
        ? Math.max(-1, Arrays.binarySearch(few, key))
        : KeySort.find(keys, count, key);
  }

  /** The key of a code. */
  long key(int code) {
    return keys.get(code);
  }
}
