package org.wellcurb.crosscheck;

/**
 * What one contractor writes in a zone, and what all others write in the same areas, each area
 * weighed as the contractor's figures are spread over them.
 */
final class Habits {
  /**
   * Steps that contractors honestly round to: feet, fives, tens, rods of 20 and 21 feet, and of 10,
   * 9, 6, 5, 4.5 and 3 metres written in feet or of 25, 21 and 20 feet written in metres.
   */
  private static final float[] STEPS = {
    100, 50, 32.808f, 29.528f, 25, 24, 22, 21, 20, 19.685f, 16.404f, 14.764f, 10, 9.8425f, 7.62f,
    6.401f, 6.096f, 6, 5, 2, 1
  };

  /** How far from a multiple of a broken step a figure is that was rounded after it. */
  private static final double ROUNDED = 0.51;

  /** Share of figures that are multiples of a step by which it is told. */
  private static final double OF_STEP = 0.6;

  /** Steps to which some of a contractor's crews may round, though most of its figures are not. */
  private static final float[] CREW_STEPS = {100, 50, 25, 21, 20, 19.685f, 14.764f, 10};

  /** Fewest multiples of a step, and how many times others' share, by which a crew is told. */
  private static final int LEAST_OF_CREW = 5;

  private static final double MORE_OF_CREW = 2;

  /** How far around a figure others' figures are spread out, at most, and as a share of it. */
  private static final float MOST_AROUND = 10;

  private static final float SHARE_AROUND = 0.25f;

  /** Its figures that are compared, with how often each stands there. */
  final Figures own;

  /** The figures of all others, with what each weighs. */
  final Figures others;

  /** How many figures of its own are compared. */
  final int size;

  /** Figures of all others, as many as would tell as much if all weighed the same. */
  final double worth;

  private final LongestRow row = new LongestRow();
  private final float step;

  Habits(int size, double worth, Figures own, Figures others) {
    this.size = size;
    this.worth = worth;
    this.own = own;
    this.others = others;
    step = findStep();
  }

  /** The longest row of equal figures. */
  LongestRow row() {
    return row;
  }

  /** The coarsest step of which most of its figures are multiples; 0 if there is none. */
  private float findStep() {
    for (float each : STEPS) {
      int of = 0;
      for (int i = 0; i < own.size(); i++) {
        of += isMultiple(own.figure(i), each) ? (int) own.count(i) : 0;
      }
      if (of >= OF_STEP * size) {
        return each;
      }
    }
    return 0;
  }

  static boolean isMultiple(float figure, float step) {
    double away = Math.abs(figure - Math.rint(figure / step) * step);
    return away < (step == Math.rint(step) ? 0.01 : ROUNDED);
  }

  /** Whether its figures are made by rods whose multiples have last digits of their own. */
  boolean isOfRods() {
    return step > 5 && step % 5 != 0;
  }

  /** A share of all others' figures, never quite 0 nor 1: half a figure more, of one more. */
  private double share(double figures) {
    return (figures / size * worth + 0.5) / (worth + 1);
  }

  /** How far off a figure may be to become this one if it is rounded to the step. */
  float reach(float figure) {
    // A figure that is no multiple of the step did not come of rounding to it.
    return step > 0 && isMultiple(figure, step) ? step / 2 : 0;
  }

  /** Share of all others' figures that would be this one if they were rounded to the step. */
  double othersShare(float figure) {
    float reach = reach(figure);
    boolean isRounded = reach > 0;
    // Others heap on other figures than one who writes each foot: what they write around it counts,
    // spread evenly.
    float around = Math.max(reach, Math.min(MOST_AROUND, Math.abs(figure) * SHARE_AROUND));
    double spreadOut =
        others.sum(figure - around, figure + around) * (isRounded ? step : 1) / (2 * around);
    double sum = Math.max(others.sum(figure - reach, figure + reach), spreadOut);
    for (float each : CREW_STEPS) {
      if (each > 2 * reach && isMultiple(figure, each) && isStepOfCrew(each, figure)) {
        sum = Math.max(sum, others.sum(figure - each / 2, figure + each / 2));
      }
    }
    return share(sum);
  }

  /**
   * Whether a crew of the contractor rounds to a step, told by figures other than one: far more of
   * them are multiples than among all others.
   */
  private boolean isStepOfCrew(float each, float but) {
    double ofOwn = multiples(own, each, but, 0);
    return ofOwn >= LEAST_OF_CREW && ofOwn >= MORE_OF_CREW * multiples(others, each, but, step);
  }

  /** How many figures, but one, are multiples once they are rounded. */
  private static double multiples(Figures figures, float of, float but, float rounded) {
    double sum = 0;
    for (int i = 0; i < figures.size(); i++) {
      float figure = figures.figure(i);
      float seen = rounded > 0 ? (float) Math.rint(figure / rounded) * rounded : figure;
      sum += seen != but && isMultiple(seen, of) ? figures.count(i) : 0;
    }
    return sum;
  }

  /** Figures of its own that are multiples of a coarse step. */
  int ownRound(float coarse) {
    int round = 0;
    for (int i = 0; i < own.size(); i++) {
      round += isMultiple(own.figure(i), coarse) ? (int) own.count(i) : 0;
    }
    return round;
  }

  /** Share of all others' figures that would be multiples if rounded to the contractor's step. */
  double othersRound(float coarse) {
    float honest = step < coarse ? step : 0;
    double round = 0;
    for (int i = 0; i < others.size(); i++) {
      float figure = others.figure(i);
      float seen = honest > 0 ? (float) Math.rint(figure / honest) * honest : figure;
      round += isMultiple(seen, coarse) ? others.count(i) : 0;
    }
    return share(round);
  }
}
