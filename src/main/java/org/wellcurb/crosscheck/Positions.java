package org.wellcurb.crosscheck;

import java.util.Arrays;

/** Which positions say where a well is, and not only in which section. */
final class Positions {
  private Positions() {}

  /** Records whose position is written finely and shared by no other record. */
  static boolean[] ownAndFine(float[] latitude, float[] longitude, byte[] flags) {
    long[] sorted = new long[latitude.length];
    for (int i = 0; i < sorted.length; i++) {
      sorted[i] = key(latitude[i], longitude[i]);
    }
    KeySort.sort(sorted, sorted.length);
    boolean[] usable = new boolean[latitude.length];
    for (int i = 0; i < usable.length; i++) {
      usable[i] =
          (flags[i] & SurveyRow.PLACED) != 0 && isOnce(sorted, key(latitude[i], longitude[i]));
    }
    return usable;
  }

  /** Records that have a position at all. */
  static boolean[] any(float[] latitude) {
    boolean[] usable = new boolean[latitude.length];
    for (int i = 0; i < usable.length; i++) {
      usable[i] = !Float.isNaN(latitude[i]);
    }
    return usable;
  }

  private static long key(float latitude, float longitude) {
    return ((long) Float.floatToIntBits(latitude) << 32)
        | (Float.floatToIntBits(longitude) & 0xFFFFFFFFL);
  }

  private static boolean isOnce(long[] sorted, long key) {
    int at = Arrays.binarySearch(sorted, key);
    return at >= 0
        && (at == 0 || sorted[at - 1] != key)
        && (at + 1 == sorted.length || sorted[at + 1] != key);
  }
}
