package org.wellcurb.workings;

import java.util.ArrayList;
import java.util.List;

/** A working over ranges by corners and turning points, written as plainly as it is explained. */
final class Corners {
  private Corners() {}

  static double[] over(Working working, double[] lo, double[] hi) {
    double[] out = new double[2];
    if (working.over() != null) {
      working.over().over(lo, hi, out);
      return out;
    }
    List<List<Double>> tried = new ArrayList<>();
    for (int i = 0; i < lo.length; i++) {
      List<Double> values = new ArrayList<>(List.of(lo[i]));
      if (hi[i] > lo[i]) {
        values.add(hi[i]);
        for (Turn turn : working.turns()) {
          if (turn.input() == i) {
            addInside(values, turn.at() < 0 ? turn.value() : lo[turn.at()], lo[i], hi[i]);
            addInside(values, turn.at() < 0 ? turn.value() : hi[turn.at()], lo[i], hi[i]);
          }
        }
      }
      tried.add(values);
    }
    out[0] = Double.POSITIVE_INFINITY;
    out[1] = Double.NEGATIVE_INFINITY;
    descend(working, tried, 0, lo.clone(), out);
    return out;
  }

  private static void addInside(List<Double> values, double value, double lo, double hi) {
    if (value > lo && value < hi) {
      values.add(value);
    }
  }

  private static void descend(
      Working working, List<List<Double>> tried, int at, double[] x, double[] out) {
    if (at < x.length) {
      for (double value : tried.get(at)) {
        x[at] = value;
        descend(working, tried, at + 1, x, out);
      }
      return;
    }
    double least = working.function().at(x);
    double greatest = working.greatest() == null ? least : working.greatest().at(x);
    if (Double.isNaN(least) || Double.isNaN(greatest) || Double.isNaN(out[0])) {
      out[0] = Double.NaN;
      out[1] = Double.NaN;
    } else {
      out[0] = Math.min(out[0], least);
      out[1] = Math.max(out[1], greatest);
    }
  }
}
