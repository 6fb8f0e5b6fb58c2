package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Tests of several kinds, over all of which false discoveries are kept in hand. */
class TestPoolTest {
  private static final long SEED = 20264;

  @Test
  void fewTestsOfOneKindPayForAllThatWereTried() {
    TestPool pool = new TestPool();
    int figures = pool.add(new double[] {0.004, 0.9, 0.8});
    double[] many = new double[997];
    Arrays.fill(many, 0.7);
    pool.add(many);
    assertTrue(FalseDiscovery.q(new double[] {0.004, 0.9, 0.8})[0] <= CrossResult.ACCEPTED);
    assertTrue(pool.q()[figures] > 0.5, "1 of 1000 at 0.004 is what chance does");
  }

  @Test
  void manyHintsOfOneKindMakeNoOtherSurer() {
    TestPool pool = new TestPool();
    pool.add(new double[900]);
    int figures = pool.add(new double[] {0.03, 0.9, 0.8});
    assertEquals(0.09, pool.q()[figures], 1e-12);
  }

  /** By the definition: at the q of each it is among the discoveries over all, and over its own. */
  @Test
  void qIsTheGreaterOfBoth() {
    Random random = new Random(SEED);
    for (int run = 0; run < 50; run++) {
      double[] a = random.doubles(1 + random.nextInt(20)).map(x -> x * x * x).toArray();
      double[] b = random.doubles(random.nextInt(40)).map(x -> x * x).toArray();
      double[] all = Arrays.copyOf(a, a.length + b.length);
      System.arraycopy(b, 0, all, a.length, b.length);
      TestPool pool = new TestPool();
      pool.add(a);
      pool.add(b);
      double[] q = pool.q();
      for (int i = 0; i < q.length; i++) {
        double own = i < a.length ? FalseDiscovery.q(a)[i] : FalseDiscovery.q(b)[i - a.length];
        assertEquals(Math.max(FalseDiscovery.q(all)[i], own), q[i], 1e-15, "" + SEED);
      }
    }
  }
}
