package org.wellcurb.crosscheck;

import java.util.Arrays;

/** The distinct ones of many keys, in order: the place of a key among them is its code. */
final class Distinct {
  private final long[] keys;

  /**
   * @param keys of all records; they are sorted in place, and what follows the distinct ones is
   *     left over
   */
  Distinct(long[] keys) {
    KeySort.sort(keys, keys.length);
    int distinct = 0;
    for (int i = 0; i < keys.length; i++) {
      if (i == 0 || keys[i] != keys[distinct - 1]) {
        keys[distinct++] = keys[i];
      }
    }
    this.keys = Arrays.copyOf(keys, distinct);
  }

  /** How many there are. */
  int count() {
    return keys.length;
  }

  /** The code of a key that is one of them. */
  int code(long key) {
    return Arrays.binarySearch(keys, key);
  }

  /** The key of a code. */
  long key(int code) {
    return keys[code];
  }
}
