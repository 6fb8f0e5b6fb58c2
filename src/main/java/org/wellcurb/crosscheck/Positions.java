package org.wellcurb.crosscheck;

import java.io.IOException;
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

  /** Marks of records that hang on what they say, and not on where they stand. */
  static int[] marks(SurveyFile survey) throws IOException {
    long[] ids = survey.ids();
    float[] depths = survey.floats(SurveyRow.VALUES + 4 * Field.DEPTH.ordinal());
    int[] marks = new int[ids.length];
    for (int i = 0; i < marks.length; i++) {
      long said = Areas.mixed(ids[i]) + Float.floatToIntBits(depths[i]);
      marks[i] = (int) (Areas.mixed(said) >>> Integer.SIZE);
    }
    return marks;
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
