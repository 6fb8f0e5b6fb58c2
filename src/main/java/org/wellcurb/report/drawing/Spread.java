package org.wellcurb.report.drawing;

/** Moves labels apart so that none covers another, each as near its own place as can be. */
final class Spread {
  private Spread() {}

  /**
   * Heights for labels.
   *
   * @param wanted where each wants to stand, from least to greatest
   * @param heights how far below each the next may stand
   * @param top none stands above
   */
  static double[] apart(double[] wanted, double[] heights, double top) {
    int n = wanted.length;
    double[] at = new double[n];
    // Of each block: where its first label stands, how many it has, and how high it is.
    double[] start = new double[n];
    int[] count = new int[n];
    double[] high = new double[n];
    int blocks = 0;
    // Neighbours that touch become one block, which stands at the mean of what its labels want.
    for (int i = 0; i < n; i++) {
      start[blocks] = wanted[i];
      count[blocks] = 1;
      high[blocks] = heights[i];
      blocks++;
      while (blocks > 1 && start[blocks - 1] < start[blocks - 2] + high[blocks - 2]) {
        int a = blocks - 2;
        int b = blocks - 1;
        double sum = start[a] * count[a] + (start[b] - high[a]) * count[b];
        count[a] += count[b];
        start[a] = sum / count[a];
        high[a] += high[b];
        blocks--;
      }
    }
    int label = 0;
    double least = top;
    for (int b = 0; b < blocks; b++) {
      double y = Math.max(least, start[b]);
      for (int k = 0; k < count[b]; k++) {
        at[label] = y;
        y += heights[label++];
      }
      least = y;
    }
    return at;
  }
}
