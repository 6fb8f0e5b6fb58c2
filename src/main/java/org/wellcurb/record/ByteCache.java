package org.wellcurb.record;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Remembers what was made of short texts, so that those that come again and again cost nothing: a
 * later one takes the place of an earlier one in the same slot. What it gives is what would be made
 * anew, so it changes no result.
 */
final class ByteCache<T> {
  private static final int SLOTS = 1024;
  private static final int LONGEST = 40;

  private final byte[][] keys = new byte[SLOTS][];
  private final int[] salts = new int[SLOTS];
  private final @Nullable Object[] values = new @Nullable Object[SLOTS];

  /** What was kept for these bytes under this salt; null if nothing is. */
  @SuppressWarnings("unchecked")
  @Nullable T get(byte[] source, int from, int to, int salt) {
    int slot = slot(source, from, to, salt);
    byte[] key = keys[slot];
    boolean same =
        key != null && salts[slot] == salt && Arrays.equals(key, 0, key.length, source, from, to);
    return same ? (T) values[slot] : null;
  }

  /** Keeps a value for these bytes; long ones are not kept. */
  void put(byte[] source, int from, int to, int salt, T value) {
    if (to - from <= LONGEST) {
      int slot = slot(source, from, to, salt);
      keys[slot] = Arrays.copyOfRange(source, from, to);
      salts[slot] = salt;
      values[slot] = value;
    }
  }

  private static int slot(byte[] source, int from, int to, int salt) {
    int hash = salt;
    int end = Math.min(to, from + LONGEST);
    for (int i = from; i < end; i++) {
      hash = hash * 31 + source[i];
    }
    hash *= 0x9E3779B1;
    return hash >>> 22;
  }
}
