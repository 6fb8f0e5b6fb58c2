package org.wellcurb.crosscheck;

import java.nio.LongBuffer;

/** The distinct ones of many keys, in order: the place of a key among them is its code. */
final class Distinct {
  private final LongBuffer keys;
  private final int count;

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
  }

  /** How many there are. */
  int count() {
    return count;
  }

  /** The code of a key that is one of them. */
  int code(long key) {
    return KeySort.find(keys, count, key);
  }

  /** The key of a code. */
  long key(int code) {
    return keys.get(code);
  }
}
