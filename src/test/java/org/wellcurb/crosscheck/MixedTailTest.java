package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;

/** Tails where groups differ anyway, beside draws one by one. */
class MixedTailTest {
  private static final long SEED = 20267;

  @Test
  void withoutDifferencesItIsNoLessThanTheExactTail() {
    double exact = BinomialDistribution.of(215, 0.0627).survivalProbability(32);
    assertEquals(exact, MixedTail.of(33, 215, 0.0627, 0), 1e-7);
    assertTrue(MixedTail.of(33, 215, 0.0627, 0) >= exact);
  }

  @Test
  void isAsOftenAsDrawsHaveIt() {
    Random random = new Random(SEED);
    int draws = 40_000;
    int more = 0;
    for (int i = 0; i < draws; i++) {
      double odds = Math.log(0.1 / 0.9) + 0.5 * random.nextGaussian();
      double share = 1 / (1 + Math.exp(-odds));
      int hits = 0;
      for (int k = 0; k < 100; k++) {
        hits += random.nextDouble() < share ? 1 : 0;
      }
      more += hits >= 24 ? 1 : 0;
    }
    double drawn = (double) more / draws;
    double error = Math.sqrt(drawn * (1 - drawn) / draws);
    double p = MixedTail.of(24, 100, 0.1, 0.5);
    assertEquals(drawn, p, 4 * error, "seed " + SEED);
  }

  @Test
  void howMuchGroupsDifferComesBack() {
    Random random = new Random(SEED);
    int groups = 400;
    for (double between : new double[] {0, 0.3, 0.6}) {
      int[] hits = new int[groups];
      int[] of = new int[groups];
      double[] shares = new double[groups];
      for (int g = 0; g < groups; g++) {
        of[g] = 50 + random.nextInt(2000);
        shares[g] = 0.08;
        double own = 1 / (1 + Math.exp(-Math.log(0.08 / 0.92) - between * random.nextGaussian()));
        for (int k = 0; k < of[g]; k++) {
          hits[g] += random.nextDouble() < own ? 1 : 0;
        }
      }
      double told = MixedTail.between(hits, of, shares, groups, 0.7);
      assertEquals(between, told, 0.1, "seed " + SEED);
    }
  }

  @Test
  void theFewestThatAreSaidAreTwiceAndFivePointsMore() {
    assertEquals(5, RuleFloors.least(20, 0.05));
    assertEquals(13, RuleFloors.least(100, 0.05));
    assertEquals(50, RuleFloors.least(500, 0.05));
    assertEquals(29, RuleFloors.least(217, 0.063));
  }
}
