package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.FloatBuffer;
import java.nio.LongBuffer;
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
        KeySort.sort(LongBuffer.wrap(keys), count, LongBuffer.allocate(count));
        assertArrayEquals(sorted, keys, "seed " + seed + ", " + count + " keys, bits " + bits);
      }
    }
  }

  @Test
  void sortsAPieceAndNothingAroundIt() {
    long seed = 8;
    Random random = new Random(seed);
    for (int count : new int[] {0, 1, 100, 5000}) {
      long[] keys = random.longs(count + 20).toArray();
      long[] sorted = keys.clone();
      Arrays.sort(sorted, 7, 7 + count);
      KeySort.sort(LongBuffer.wrap(keys), 7, 7 + count, LongBuffer.allocate(count + 20));
      assertArrayEquals(sorted, keys, "seed " + seed + ", " + count + " keys");
    }
  }

  @Test
  void keysAreFoundWhereTheyStand() {
    LongBuffer sorted = LongBuffer.wrap(new long[] {Long.MIN_VALUE, -3, 0, 5, 9, 7});
    int found = 5;
    for (int i = 0; i < found; i++) {
      assertEquals(i, KeySort.find(sorted, found, sorted.get(i)));
    }
    assertEquals(-1, KeySort.find(sorted, found, 7), "what is left over is not looked at");
    assertEquals(-1, KeySort.find(sorted, 0, 5));
  }

  @Test
  void codesStandInTheOrderOfKeys() {
    Distinct distinct =
        new Distinct(LongBuffer.wrap(new long[] {7, -2, 7, 9, -2}), LongBuffer.allocate(5));
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
      assertEquals(
          sorted[count / 2], Spread.middle(FloatBuffer.wrap(values), count), "seed " + seed);
    }
    assertEquals(0, Spread.middle(FloatBuffer.allocate(0), 0));
  }
}
