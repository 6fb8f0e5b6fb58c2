package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Sorting of keys, and what rests on it. */
class KeySortTest {
  @Test
  void sortsAsTheLibraryDoes() {
    long seed = 5;
    Random random = new Random(seed);
    for (int count : new int[] {0, 1, 100, 2048, 5000}) {
      for (int bits = 0; bits < Long.SIZE; bits += 7) {
        long[] keys = new long[count + 3];
        for (int i = 0; i < keys.length; i++) {
          // Signs too, and keys that share bits above, below or both.
          keys[i] = (random.nextLong() >> bits) << (bits / 2);
        }
        long[] sorted = keys.clone();
        Arrays.sort(sorted, 0, count);
        KeySort.sort(keys, count);
        assertArrayEquals(sorted, keys, "seed " + seed + ", " + count + " keys, bits " + bits);
      }
    }
  }

  @Test
  void codesStandInTheOrderOfKeys() {
    Distinct distinct = new Distinct(new long[] {7, -2, 7, 9, -2});
    assertEquals(3, distinct.count());
    assertEquals(1, distinct.code(7));
    assertEquals(-2, distinct.key(0));
  }

  @Test
  void theMiddleIsTheUpperOfTheSorted() {
    long seed = 6;
    Random random = new Random(seed);
    for (int count = 1; count < 200; count++) {
      float[] values = new float[count];
      for (int i = 0; i < count; i++) {
        values[i] = (float) Math.rint(random.nextGaussian() * 10) / (1 + random.nextInt(3));
      }
      float[] sorted = values.clone();
      Arrays.sort(sorted);
      assertEquals(sorted[count / 2], Spread.middle(values, count), "seed " + seed);
    }
    assertEquals(0, Spread.middle(new float[0], 0));
  }
}
