package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.util.BitSet;

/** Which positions say where a well is, and not only in which section. */
final class Positions {
  private Positions() {}

  /** Records whose position is written finely and shared by no other record. */
  static BitSet ownAndFine(SurveyFile survey, FloatBuffer latitude, FloatBuffer longitude)
      throws IOException {
    int count = survey.rows();
    ByteBuffer flags = survey.flags();
    LongBuffer sorted = survey.columns().longs(count);
    for (int i = 0; i < count; i++) {
      sorted.put(i, key(latitude.get(i), longitude.get(i)));
    }
    KeySort.sort(sorted, count, survey.columns());
    BitSet usable = new BitSet();
    for (int i = 0; i < count; i++) {
      usable.set(
          i,
          (flags.get(i) & SurveyRow.PLACED) != 0
              && isOnce(sorted, count, key(latitude.get(i), longitude.get(i))));
    }
    return usable;
  }

  /** Records that have a position at all. */
  static BitSet any(FloatBuffer latitude) {
    BitSet usable = new BitSet();
    for (int i = 0; i < latitude.capacity(); i++) {
      usable.set(i, !Float.isNaN(latitude.get(i)));
    }
    return usable;
  }

  /** Marks of records that hang on what they say, and not on where they stand. */
  static IntBuffer marks(SurveyFile survey) throws IOException {
    LongBuffer ids = survey.ids();
    FloatBuffer depths = survey.floats(SurveyRow.VALUES + 4 * Field.DEPTH.ordinal());
    IntBuffer marks = survey.columns().ints(survey.rows());
    for (int i = 0; i < marks.capacity(); i++) {
      long said = Areas.mixed(ids.get(i)) + Float.floatToIntBits(depths.get(i));
      marks.put(i, (int) (Areas.mixed(said) >>> Integer.SIZE));
    }
    return marks;
  }

  private static long key(float latitude, float longitude) {
    return ((long) Float.floatToIntBits(latitude) << 32)
        | (Float.floatToIntBits(longitude) & 0xFFFFFFFFL);
  }

  private static boolean isOnce(LongBuffer sorted, int count, long key) {
    int at = KeySort.find(sorted, count, key);
    return at >= 0
        && (at == 0 || sorted.get(at - 1) != key)
        && (at + 1 == count || sorted.get(at + 1) != key);
  }
}
