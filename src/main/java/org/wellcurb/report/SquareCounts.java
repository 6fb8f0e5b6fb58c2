package org.wellcurb.report;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Counts by kind of the squares of a map, without an object for each. */
final class SquareCounts {
  private static final int FIRST_SLOTS = 64;

  private final int kinds;
  private long[] keys = new long[FIRST_SLOTS];
  private boolean[] isTaken = new boolean[FIRST_SLOTS];
  private long[] counts;
  private int size;

  SquareCounts(int kinds) {
    this.kinds = kinds;
    counts = new long[FIRST_SLOTS * kinds];
  }

  /** Squares with a count. */
  int size() {
    return size;
  }

  void add(long key, int kind, long count) {
    int slot = slot(key);
    if (!isTaken[slot]) {
      isTaken[slot] = true;
      keys[slot] = key;
      size++;
      if (2 * size > keys.length) {
        grow();
        slot = slot(key);
      }
    }
    counts[slot * kinds + kind] += count;
  }

  private int slot(long key) {
    int mask = keys.length - 1;
    int slot = (int) ((key * 0x9E3779B97F4A7C15L) >>> 32) & mask;
    while (isTaken[slot] && keys[slot] != key) {
      slot = (slot + 1) & mask;
    }
    return slot;
  }

  private void grow() {
    SquareCounts before = take(2 * keys.length);
    for (int slot = before.next(0); slot >= 0; slot = before.next(slot + 1)) {
      for (int kind = 0; kind < kinds; kind++) {
        add(before.key(slot), kind, before.count(slot, kind));
      }
    }
  }

  /** All that was counted; nothing is left here. */
  SquareCounts take() {
    return take(keys.length);
  }

  private SquareCounts take(int slots) {
    SquareCounts taken = new SquareCounts(kinds);
    taken.keys = keys;
    taken.isTaken = isTaken;
    taken.counts = counts;
    taken.size = size;
    keys = new long[slots];
    isTaken = new boolean[slots];
    counts = new long[slots * kinds];
    size = 0;
    return taken;
  }

  void clear() {
    Arrays.fill(isTaken, false);
    Arrays.fill(counts, 0);
    size = 0;
  }

  /** The next place, from this one on, that holds a square; -1 if none does. */
  int next(int from) {
    for (int slot = from; slot < keys.length; slot++) {
      if (isTaken[slot]) {
        return slot;
      }
    }
    return -1;
  }

  /** The places that hold squares, in the order of their keys. */
  int[] inOrder() {
    return IntStream.range(0, keys.length)
        .filter(slot -> isTaken[slot])
        .boxed()
        .sorted(java.util.Comparator.comparingLong(slot -> keys[slot]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  long key(int slot) {
    return keys[slot];
  }

  long count(int slot, int kind) {
    return counts[slot * kinds + kind];
  }
}
