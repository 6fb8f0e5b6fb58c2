package org.wellcurb.crosscheck;

import java.util.Arrays;

/** Figures in ascending order, each with how often it stands, or what it weighs. */
final class Figures {
  private float[] figures = new float[16];
  private double[] counts = new double[16];
  private int size;

  /** Adds a figure that is greater than all before it. */
  void add(float figure, double count) {
    if (size == figures.length) {
      figures = Arrays.copyOf(figures, 2 * size);
      counts = Arrays.copyOf(counts, 2 * size);
    }
    figures[size] = figure;
    counts[size++] = count;
  }

  /** How many figures there are. */
  int size() {
    return size;
  }

  float figure(int i) {
    return figures[i];
  }

  double count(int i) {
    return counts[i];
  }

  /** How often a figure stands here. */
  double countOf(float figure) {
    int at = Arrays.binarySearch(figures, 0, size, figure);
    return at < 0 ? 0 : counts[at];
  }

  /** The counts of all figures from one to another, both with them, added in ascending order. */
  double sum(float from, float to) {
    int at = Arrays.binarySearch(figures, 0, size, from);
    double sum = 0;
    for (int i = at < 0 ? -at - 1 : at; i < size && figures[i] <= to; i++) {
      sum += counts[i];
    }
    return sum;
  }
}
