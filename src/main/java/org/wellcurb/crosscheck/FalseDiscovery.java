package org.wellcurb.crosscheck;

import java.util.Arrays;

/**
 * Keeps the share of false alarms among many tests in hand.
 *
 * <p>Source: Y. Benjamini and Y. Hochberg, Controlling the false discovery rate, Journal of the
 * Royal Statistical Society B 57 (1995), 289-300 (procedure from memory; checked in the tests
 * against published figures).
 */
public final class FalseDiscovery {
  private FalseDiscovery() {}

  /**
   * The least rate of false discoveries at which each test would be called one.
   *
   * @param p p-values, of all tests that were tried
   * @return q-values, in the same order
   */
  public static double[] q(double[] p) {
    int n = p.length;
    double[] sorted = p.clone();
    Arrays.sort(sorted);
    double[] least = new double[n];
    double q = 1;
    for (int i = n - 1; i >= 0; i--) {
      q = Math.min(q, sorted[i] * n / (i + 1));
      least[i] = q;
    }
    double[] all = new double[n];
    for (int i = 0; i < n; i++) {
      // Any of equal ones will do: the least for the last of them is the least for all.
      all[i] = least[Arrays.binarySearch(sorted, p[i])];
    }
    return all;
  }
}
