package org.wellcurb.record;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The word read last in each entry, and its place among the choices: from one record to the next
 * most words are the same, and to compare a few bytes is quicker than to look them up.
 */
final class LastWords {
  private final @Nullable Object[] words;
  private final int[] places;

  LastWords(int entries) {
    words = new @Nullable Object[entries];
    places = new int[entries];
  }

  /** The place of this word; {@link WordTable#NONE} if it is not the one read last. */
  int place(int entry, byte[] source, int from, int to) {
    return words[entry] instanceof byte[] last
            && Arrays.equals(last, 0, last.length, source, from, to)
        ? places[entry]
        : WordTable.NONE;
  }

  void keep(int entry, byte[] source, int from, int to, int place) {
    words[entry] = Arrays.copyOfRange(source, from, to);
    places[entry] = place;
  }
}
