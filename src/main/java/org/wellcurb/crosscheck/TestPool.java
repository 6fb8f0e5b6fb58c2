package org.wellcurb.crosscheck;

import java.util.ArrayList;
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
