package org.wellcurb.crosscheck;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * What one contractor writes in a zone, and what all others write in the same areas, each area
 * weighed as the contractor's figures are spread over them.
 */
final class Habits {
  /** Fewest figures of others in an area for it to be compared. */
  static final int LEAST_IN_AREA = 15;

  /** Steps that contractors honestly round to: feet, fives, tens, rods of 20 and 21 feet, ... */
  private static final float[] STEPS = {100, 50, 25, 21, 20, 10, 5, 2, 1};

  /** Share of figures that are multiples of a step by which it is told. */
  private static final double OF_STEP = 0.6;

  /** How far around a figure others' figures are spread out, at most, and as a share of it. */
  private static final float MOST_AROUND = 10;

  private static final float SHARE_AROUND = 0.25f;

  final int contractor;
  final int zone;
  final TreeMap<Float, int[]> own = new TreeMap<>();
  final TreeMap<Float, double[]> others = new TreeMap<>();

  /** Figures of its own that are compared. */
  int size;

  /** Figures of all others, as many as would tell as much if all weighed the same. */
  double worth;

  float last = Float.NaN;
  int run;
  int longest;
  float longestFigure = Float.NaN;
  private float step;

  Habits(int contractor, int zone) {
    this.contractor = contractor;
    this.zone = zone;
  }

  /**
   * Takes the records of the contractor.
   *
   * @param records in input order, from one place to another
   */
  void take(int[] records, int from, int to, float[] written, Areas areas, FiguresByArea all) {
    Map<Integer, Map<Float, int[]>> byArea = new TreeMap<>();
    Map<Integer, int[]> sizes = new HashMap<>();
    for (int at = from; at < to; at++) {
      int area = areas.area(records[at]);
      byArea.computeIfAbsent(area, a -> new HashMap<>())
          .computeIfAbsent(written[records[at]], f -> new int[1])[0]++;
      sizes.computeIfAbsent(area, a -> new int[1])[0]++;
    }
    double squares = 0;
    for (Map.Entry<Integer, Map<Float, int[]>> each : byArea.entrySet()) {
      int here = sizes.getOrDefault(each.getKey(), NOTHING)[0];
      int rest = all.size(each.getKey()) - here;
      if (rest >= LEAST_IN_AREA) {
        double weight = (double) here / rest;
        size += here;
        squares += weight * here;
        each.getValue()
            .forEach(
                (figure, count) -> own.computeIfAbsent(figure, f -> new int[1])[0] += count[0]);
        all.each(
            each.getKey(),
            (figure, count) -> {
              int theirs = count - each.getValue().getOrDefault(figure, NOTHING)[0];
              if (theirs > 0) {
                others.computeIfAbsent(figure, f -> new double[1])[0] += weight * theirs;
              }
            });
      }
    }
    worth = size == 0 ? 0 : (double) size * size / squares;
    for (int at = from; at < to; at++) {
      float figure = written[records[at]];
      run = figure == last ? run + 1 : 1;
      last = figure;
      if (run > longest && own.containsKey(figure)) {
        longest = run;
        longestFigure = figure;
      }
    }
    step = findStep();
  }

  private static final int[] NOTHING = new int[1];

  /** The coarsest step of which most of its figures are multiples; 0 if there is none. */
  private float findStep() {
    for (float each : STEPS) {
      int of = 0;
      for (Map.Entry<Float, int[]> figure : own.entrySet()) {
        of += isMultiple(figure.getKey(), each) ? figure.getValue()[0] : 0;
      }
      if (of >= OF_STEP * size) {
        return each;
      }
    }
    return 0;
  }

  static boolean isMultiple(float figure, float step) {
    return Math.abs(figure - Math.rint(figure / step) * step) < 0.01;
  }

  /** A share of all others' figures, never quite 0 nor 1: half a figure more, of one more. */
  private double share(double figures) {
    return (figures / size * worth + 0.5) / (worth + 1);
  }

  /** Share of all others' figures that would be this one if they were rounded to the step. */
  double othersShare(float figure) {
    // A figure that is no multiple of the step did not come of rounding to it.
    boolean isRounded = step > 0 && isMultiple(figure, step);
    float reach = isRounded ? step / 2 : 0;
    // Others heap on other figures than one who writes each foot: what they write around it counts,
    // spread evenly.
    float around = Math.max(reach, Math.min(MOST_AROUND, Math.abs(figure) * SHARE_AROUND));
    double spreadOut = within(figure, around) * (isRounded ? step : 1) / (2 * around);
    return share(Math.max(within(figure, reach), spreadOut));
  }

  /** Figures of all others within reach. */
  private double within(float figure, float reach) {
    double sum = 0;
    for (double[] count : others.subMap(figure - reach, true, figure + reach, true).values()) {
      sum += count[0];
    }
    return sum;
  }

  /** Figures of its own that are multiples of a coarse step. */
  int ownRound(float coarse) {
    int round = 0;
    for (Map.Entry<Float, int[]> each : own.entrySet()) {
      round += isMultiple(each.getKey(), coarse) ? each.getValue()[0] : 0;
    }
    return round;
  }

  /** Share of all others' figures that would be multiples if rounded to the contractor's step. */
  double othersRound(float coarse) {
    float honest = step < coarse ? step : 0;
    double round = 0;
    for (Map.Entry<Float, double[]> each : others.entrySet()) {
      float figure = each.getKey();
      float seen = honest > 0 ? (float) Math.rint(figure / honest) * honest : figure;
      round += isMultiple(seen, coarse) ? each.getValue()[0] : 0;
    }
    return share(round);
  }

  /** How much wider the variance is because others' share is only known from so many figures. */
  double widened(double spread) {
    return spread * (1 + size / worth);
  }
}
