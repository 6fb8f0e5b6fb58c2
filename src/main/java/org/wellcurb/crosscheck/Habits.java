package org.wellcurb.crosscheck;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

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

  /**
   * Lengths of rods, and of joints of pipe: a depth may be so many of them and a constant more, for
   * the bit or the height of the casing above ground.
   */
  private static final float[] RODS = {
    32.808f, 29.528f, 25, 24, 22, 21, 20, 19.685f, 16.404f, 14.764f, 7.62f, 6.401f, 6.096f
  };

  /** Figures that are looked at for a constant, the most frequent ones. */
  private static final int TRIED_FOR_CONSTANT = 5;

  /** Fewest numbers of rods by which a constant is told: one figure repeated is none. */
  private static final int LEAST_RODS = 3;

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

  /** What is added to so many rods; 0 where there is nothing. */
  private final float constant;

  Habits(int size, double worth, Figures own, Figures others) {
    this.size = size;
    this.worth = worth;
    this.own = own;
    this.others = others;
    float coarse = findStep(Float.MAX_VALUE, 5);
    float[] rods = coarse > 0 ? new float[] {coarse, 0} : findRods();
    step = rods[0] > 0 ? rods[0] : findStep(5, 0);
    constant = rods[1];
  }

  /** The longest row of equal figures. */
  LongestRow row() {
    return row;
  }

  /** The coarsest step of which most of its figures are multiples; 0 if there is none. */
  private float findStep(float most, float more) {
    for (float each : STEPS) {
      if (each <= most && each > more && multiples(each, 0, Float.NaN) >= OF_STEP * size) {
        return each;
      }
    }
    return 0;
  }

  /** Rods and a constant of which most of its figures are made; zeros if there are none. */
  private float[] findRods() {
    List<Integer> candidates = mostFrequent();
    for (int candidate : candidates) {
      float figure = own.figure(candidate);
      // Without the most frequent, too: one figure that is repeated makes no constant.
      float but = own.figure(candidates.get(0));
      double rest = size - own.count(candidates.get(0));
      for (float rod : RODS) {
        float more = (float) (figure - Math.floor(figure / rod) * rod);
        boolean isMost =
            multiples(rod, more, Float.NaN) >= OF_STEP * size
                && multiples(rod, more, but) >= OF_STEP * rest;
        if (isMost && numbers(rod, more) >= LEAST_RODS) {
          return new float[] {rod, more};
        }
      }
    }
    return new float[] {0, 0};
  }

  private List<Integer> mostFrequent() {
    return IntStream.range(0, own.size())
        .boxed()
        .sorted(Comparator.comparingDouble((Integer i) -> -own.count(i)))
        .limit(TRIED_FOR_CONSTANT)
        .toList();
  }

  /** Figures of its own, but one, that are a constant more than multiples. */
  private double multiples(float of, float more, float but) {
    double sum = 0;
    for (int i = 0; i < own.size(); i++) {
      float figure = own.figure(i);
      sum += figure != but && isMultiple(figure - more, of) ? own.count(i) : 0;
    }
    return sum;
  }

  /** Of how many different numbers of rods such figures are. */
  private long numbers(float of, float more) {
    return IntStream.range(0, own.size())
        .filter(i -> isMultiple(own.figure(i) - more, of))
        .mapToLong(i -> Math.round((own.figure(i) - more) / of))
        .distinct()
        .count();
  }

  /** What a figure would be if it were rounded as the contractor does. */
  private float rounded(float figure) {
    return (float) Math.rint((figure - constant) / step) * step + constant;
  }

  static boolean isMultiple(float figure, float step) {
    double away = Math.abs(figure - Math.rint(figure / step) * step);
    return away < (step == Math.rint(step) ? 0.01 : ROUNDED);
  }

  /** Whether its figures are made by rods whose multiples have last digits of their own. */
  boolean isOfRods() {
    return constant > 0 || (step > 5 && step % 5 != 0);
  }

  /** A share of all others' figures, never quite 0 nor 1: half a figure more, of one more. */
  private double share(double figures) {
    return (figures / size * worth + 0.5) / (worth + 1);
  }

  /** How far off a figure may be to become this one if it is rounded to the step. */
  float reach(float figure) {
    // A figure that is no multiple of the step did not come of rounding to it.
    return step > 0 && isMultiple(figure - constant, step) ? step / 2 : 0;
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
    double ofOwn = multiples(own, each, but, false);
    return ofOwn >= LEAST_OF_CREW && ofOwn >= MORE_OF_CREW * multiples(others, each, but, step > 0);
  }

  /** How many figures, but one, are multiples once they are rounded. */
  private double multiples(Figures figures, float of, float but, boolean isRounded) {
    double sum = 0;
    for (int i = 0; i < figures.size(); i++) {
      float figure = figures.figure(i);
      float seen = isRounded ? rounded(figure) : figure;
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
    boolean isHonest = step > 0 && step < coarse;
    double round = 0;
    for (int i = 0; i < others.size(); i++) {
      float figure = others.figure(i);
      float seen = isHonest ? rounded(figure) : figure;
      round += isMultiple(seen, coarse) ? others.count(i) : 0;
    }
    return share(round);
  }
}
