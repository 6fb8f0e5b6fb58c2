package org.wellcurb.report.drawing;

import java.util.List;

/** Moves labels apart so that none covers another, each as near its own place as can be. */
final class Spread {
  private Spread() {}

  /**
   * Heights for labels.
   *
   * @param wanted where each wants to stand, from least to greatest
   * @param gap least distance between two
   * @param top none stands above
   */
  static double[] apart(List<Double> wanted, double gap, double top) {
    int n = wanted.size();
    double[] at = new double[n];
    double[] start = new double[n];
    int[] count = new int[n];
    int groups = 0;
    // Neighbours that touch become one block, which stands at the mean of what its labels want.
    for (int i = 0; i < n; i++) {
      start[groups] = wanted.get(i);
      count[groups] = 1;
      groups++;
      while (groups > 1 && start[groups - 1] < start[groups - 2] + gap * count[groups - 2]) {
        merge(start, count, groups, gap);
        groups--;
      }
    }
    int label = 0;
    double least = top;
    for (int g = 0; g < groups; g++) {
      double y = Math.max(least, start[g]);
      for (int k = 0; k < count[g]; k++) {
        at[label++] = y + k * gap;
      }
      least = y + count[g] * gap;
    }
    return at;
  }

  private static void merge(double[] start, int[] count, int groups, double gap) {
    int a = groups - 2;
    int b = groups - 1;
    double sum = start[a] * count[a] + (start[b] - gap * count[a]) * count[b];
    count[a] += count[b];
    start[a] = sum / count[a];
  }
}
