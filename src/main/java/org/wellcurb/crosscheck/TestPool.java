package org.wellcurb.crosscheck;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * All tests of a batch, in families of one kind. The q of a test is the greater of that over all
 * tests of the batch and that over its family: so many hints of one kind make no other kind look
 * surer, and none is surer for being one of few that were tried.
 */
final class TestPool {
  private final List<double[]> families = new ArrayList<>();
  private int size;

  /**
   * Adds the p-values of a family.
   *
   * @return the place of its first among all
   */
  int add(double[] family) {
    families.add(family);
    size += family.length;
    return size - family.length;
  }

  /** The ranks of all tests, in the order in which they were added. */
  CrossResult.Rank[] ranks() {
    double[] all = new double[size];
    int at = 0;
    for (double[] family : families) {
      System.arraycopy(family, 0, all, at, family.length);
      at += family.length;
    }
    Arrays.sort(all);
    CrossResult.Rank[] ranks = new CrossResult.Rank[size];
    at = 0;
    for (double[] family : families) {
      double[] sorted = family.clone();
      Arrays.sort(sorted);
      for (double p : family) {
        ranks[at++] = new CrossResult.Rank(rank(all, p), rank(sorted, p));
      }
    }
    return ranks;
  }

  /** How many are not greater. */
  private static int rank(double[] sorted, double p) {
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] <= p) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The q of all tests, in the order in which they were added. */
  double[] q() {
    double[] all = new double[size];
    int at = 0;
    for (double[] family : families) {
      System.arraycopy(family, 0, all, at, family.length);
      at += family.length;
    }
    double[] q = FalseDiscovery.q(all);
    at = 0;
    for (double[] family : families) {
      for (double each : FalseDiscovery.q(family)) {
        q[at] = Math.max(q[at], each);
        at++;
      }
    }
    return q;
  }
}
