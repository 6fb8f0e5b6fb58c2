package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Random;
import org.apache.commons.statistics.descriptive.Median;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.inference.ChiSquareTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The statistics against published figures (src/test/resources/published) and a library. */
class StatisticsTest {
  /**
   * CV-191 to CV-195: public table of Wilson intervals, cross-checked there against another
   * program; CV-196 to CV-198: Newcombe (1998), Statistics in Medicine 17:857-872, table I, method
   * 3 (from memory there, computed again). Four decimals are printed, so half of the last is the
   * tolerance.
   */
  @ParameterizedTest
  @CsvSource({
    "12,12,0.7575,1.0", "6,12,0.2538,0.7462", "10,12,0.552,0.953", "99,100,0.9455,0.9982",
    "24,24,0.862,1.0", "81,263,0.2553,0.3662", "15,148,0.0624,0.1605", "1,29,0.0061,0.1718"
  })
  void wilson(long hits, long of, double lo, double hi) {
    Share share = Share.of(hits, of);
    assertEquals(lo, share.lo(), 0.00006);
    assertEquals(hi, share.hi(), 0.00006);
  }

  @Test
  void nothingCountedIsTheWidestShare() {
    assertEquals(0, Share.of(0, 0).lo());
    assertEquals(1, Share.of(0, 0).hi());
    assertTrue(Double.isNaN(Share.of(0, 0).share()));
  }

  /**
   * The procedure by its definition: the largest k with p(k) at most k/m times the rate, tried at
   * the q of each; the p-values are those of Benjamini and Hochberg (1995), section 3.3 (from
   * memory): at a rate of 0.05 the four least of 15 are discoveries.
   */
  @Test
  void benjaminiHochberg() {
    double[] p = {
      0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262,
      0.5719, 0.6528, 0.7590, 1.0
    };
    double[] q = FalseDiscovery.q(p);
    assertEquals(4, Arrays.stream(q).filter(each -> each <= 0.05).count());
    assertEquals(0.0001 * 15, q[0], 1e-12);
    assertEquals(1, q[14], 1e-12);
  }

  @Test
  void qIsTheLeastRateByTheDefinition() {
    long seed = 20260101;
    Random random = new Random(seed);
    for (int run = 0; run < 300; run++) {
      int m = 1 + random.nextInt(30);
      double[] p = random.doubles(m).map(x -> Math.rint(x * x * 50) / 50).toArray();
      double[] q = FalseDiscovery.q(p);
      double[] sorted = p.clone();
      Arrays.sort(sorted);
      for (int i = 0; i < m; i++) {
        assertEquals(discovered(sorted, p[i], q[i] + 1e-12), true, "seed " + seed);
        if (q[i] > 1e-9) {
          assertEquals(discovered(sorted, p[i], q[i] - 1e-9), false, "seed " + seed);
        }
      }
    }
  }

  private static boolean discovered(double[] sorted, double p, double rate) {
    double bound = -1;
    for (int k = 1; k <= sorted.length; k++) {
      if (sorted[k - 1] <= k * rate / sorted.length) {
        bound = sorted[k - 1];
      }
    }
    return p <= bound;
  }

  /** CV-205: Iglewicz and Hoaglin (1993), section 3.3: median 2.45, score of 8.2 is 25.86. */
  @Test
  void medianAbsoluteDeviation() {
    double[] data = {2.1, 2.6, 2.4, 2.5, 2.3, 2.1, 2.3, 2.6, 8.2, 8.3};
    assertEquals(2.45, Spread.median(data, data.length), 1e-12);
    double score = (8.2 - 2.45) / Spread.of(data, data.length);
    assertEquals(25.86, score, 0.01);
  }

  /** CV-207: 1 / 0.6745, the factor that makes it a standard deviation. */
  @Test
  void normalFactor() {
    assertEquals(1 / 0.67449, Spread.NORMAL, 0.0001);
  }

  @Test
  void medianIsThatOfTheLibrary() {
    Random random = new Random(5);
    for (int n = 1; n < 40; n++) {
      double[] data = random.doubles(n).toArray();
      assertEquals(Median.withDefaults().evaluate(data.clone()), Spread.median(data, n), 1e-15);
    }
  }

  /** CV-200 and CV-201: last digits of 80 weights, chi-square 23.5 with 9 degrees of freedom. */
  @Test
  void chiSquareOfLastDigits() {
    long[] counts = {15, 5, 3, 8, 5, 17, 7, 6, 9, 5};
    assertEquals(23.5, ChiSquareTest.withDefaults().statistic(counts), 0.001);
    assertEquals(16.919, ChiSquaredDistribution.of(9).inverseSurvivalProbability(0.05), 0.0005);
  }

  /** Never smaller than the exact tail, and near it where contractors do not differ. */
  @Test
  void theTailIsAtLeastTheExactOne() {
    for (int of = 20; of <= 200; of += 45) {
      for (double share = 0.02; share < 0.9; share += 0.11) {
        for (int hits = 1; hits <= of; hits += 3) {
          double exact = BinomialDistribution.of(of, share).survivalProbability(hits - 1);
          assertTrue(Copying.tail(hits, of, share, 1) >= exact);
          assertTrue(Copying.tail(hits, of, share, 4) >= exact);
        }
      }
    }
    assertEquals(1, Copying.tail(0, 10, 0.5, 1));
  }

  @Test
  void nearestNeighboursAreThoseOfASearchThroughAll(@TempDir Path folder) throws IOException {
    long seed = 77;
    Random random = new Random(seed);
    int n = 400;
    float[] latitude = new float[n];
    float[] longitude = new float[n];
    BitSet usable = new BitSet();
    for (int i = 0; i < n; i++) {
      latitude[i] = (float) (44 + 0.05 * random.nextDouble());
      longitude[i] = (float) (-76 + 0.05 * random.nextDouble());
      usable.set(i, random.nextInt(10) > 0);
    }
    int[] marks = random.ints(n).toArray();
    Neighbourhood all =
        new Neighbourhood(
            FloatBuffer.wrap(latitude),
            FloatBuffer.wrap(longitude),
            usable,
            IntBuffer.wrap(marks),
            new Columns(folder));
    int[] codes = new int[all.size()];
    Arrays.setAll(codes, at -> all.record(at) % 3);
    NearestWells walk = new NearestWells(all, 6, 900, IntBuffer.wrap(codes));
    for (int run = 0; run < 2 * all.size(); run++) {
      // In the order of the grid first, then in any.
      int place = run < all.size() ? run : random.nextInt(all.size());
      int[] near = new int[walk.nearest(place, 0)];
      Arrays.setAll(near, i -> all.record(walk.near(i)));
      assertArrayEquals(slow(latitude, longitude, usable, all.record(place)), near, "seed " + seed);
    }
  }

  private static int[] slow(float[] latitude, float[] longitude, BitSet usable, int of) {
    double cosine = Math.cos(Math.toRadians(latitude[of]));
    record At(int place, double distance) {}
    return java.util.stream.IntStream.range(0, latitude.length)
        .filter(i -> i != of && usable.get(i) && i % 3 != 0)
        .mapToObj(
            i ->
                new At(
                    i,
                    111_195
                        * Math.hypot(
                            latitude[i] - latitude[of], (longitude[i] - longitude[of]) * cosine)))
        .filter(at -> at.distance() <= 900)
        .sorted(java.util.Comparator.comparingDouble(At::distance))
        .limit(6)
        .mapToInt(At::place)
        .toArray();
  }
}
