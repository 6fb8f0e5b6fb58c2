package org.wellcurb.crosscheck;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Figures that one contractor repeats, rounds, or writes in a row far more than all others in the
 * same zone. That is worth a look and no proof: wells of one street are alike.
 *
 * <p>What others write is the measure. A contractor who rounds to a step of fives, tens or rod
 * lengths is measured by how many of all others' figures that step would bring to the same figure,
 * so that honest rounding raises nothing; only multiples of fifty are looked at as such. Each
 * p-value is the greater of an exact binomial tail and a normal one whose variance is widened by as
 * much as contractors differ from one another anyway.
 */
public final class Copying {
  /** Fewest figures of a contractor in a zone. */
  public static final int LEAST_OWN = 20;

  /** Fewest figures of all others there. */
  public static final int LEAST_OTHERS = 60;

  /** Fewest times that a figure is repeated. */
  static final int LEAST_REPEATS = 5;

  /** Least share of a contractor's figures that is worth saying. */
  static final double LEAST_SHARE = 0.15;

  /** How many times the share of all others it must be. */
  static final double LEAST_RATIO = 3;

  /** By how much a share of round figures must be greater than that of all others. */
  static final double LEAST_MORE_ROUND = 0.35;

  /** What counts as a round figure. */
  static final float ROUND = 50;

  /** Steps that contractors honestly round to: feet, fives, tens, rods of 20 and 21 feet, ... */
  private static final float[] STEPS = {100, 50, 25, 21, 20, 10, 5, 2, 1};

  /** Share of figures that are multiples of a step by which it is told. */
  private static final double OF_STEP = 0.6;

  /** How far around a figure others' figures are spread out, at most, and as a share of it. */
  private static final float MOST_AROUND = 10;

  private static final float SHARE_AROUND = 0.25f;

  /** Fewest equal figures in a row. */
  static final int LEAST_RUN = 5;

  /** The median of the square of a standard normal. */
  private static final double MEDIAN_OF_SQUARE = 0.45494;

  /** Fewest expected repeats from which the spread between contractors is told. */
  private static final double EXPECTED = 4;

  private final int[] contractor;
  private final int[] zone;
  private final int nobody;

  /** What was looked at. */
  public enum Kind {
    /** One figure again and again. */
    REPEATED,
    /** Multiples of fifty. */
    ROUND,
    /** The same figure in a row of records. */
    RUN
  }

  /**
   * One test of one contractor in one zone.
   *
   * @param contractor code of the contractor
   * @param zone code of the zone
   * @param field what was measured
   * @param kind what was looked at
   * @param figure the figure; NaN where it is about multiples of fifty
   * @param hits how often it stands there, or how long the row is
   * @param own figures of the contractor there
   * @param othersShare share of it among the figures of all others there
   * @param p how likely that would be if the contractor were like all others
   * @param isMarked whether it is great enough to be worth saying, whatever p is
   */
  record Tried(
      int contractor,
      int zone,
      Field field,
      Kind kind,
      double figure,
      int hits,
      int own,
      double othersShare,
      double p,
      boolean isMarked) {}

  Copying(SurveyFile survey) throws IOException {
    contractor = survey.ints(SurveyRow.CONTRACTOR);
    zone = survey.ints(SurveyRow.ZONE);
    nobody = survey.contractors().indexOf("");
  }

  /** A contractor in a zone: figures by how often, in the order of records. */
  private static final class Group {
    final int contractor;
    final int zone;
    final TreeMap<Float, int[]> counts = new TreeMap<>();
    int size;
    int round;
    float last = Float.NaN;
    int run;
    int longest;
    float longestFigure = Float.NaN;

    Group(int contractor, int zone) {
      this.contractor = contractor;
      this.zone = zone;
    }

    /** The coarsest step of which most of its figures are multiples; 0 if there is none. */
    float step() {
      for (float step : STEPS) {
        int of = 0;
        for (Map.Entry<Float, int[]> each : counts.entrySet()) {
          of += isMultiple(each.getKey(), step) ? each.getValue()[0] : 0;
        }
        if (of >= OF_STEP * size) {
          return step;
        }
      }
      return 0;
    }

    void add(float figure) {
      counts.computeIfAbsent(figure, f -> new int[1])[0]++;
      size++;
      round += isRound(figure) ? 1 : 0;
      run = figure == last ? run + 1 : 1;
      last = figure;
      if (run > longest) {
        longest = run;
        longestFigure = figure;
      }
    }
  }

  private static boolean isMultiple(float figure, float step) {
    return Math.abs(figure - Math.rint(figure / step) * step) < 0.01;
  }

  private static boolean isRound(float figure) {
    return figure % ROUND == 0;
  }

  /** All tests on one field. */
  List<Tried> tried(Field field, float[] written) {
    Map<Long, Group> groups = new HashMap<>();
    Map<Integer, Group> zones = new HashMap<>();
    for (int i = 0; i < written.length; i++) {
      if (!Float.isNaN(written[i]) && written[i] != 0) {
        zones.computeIfAbsent(zone[i], z -> new Group(-1, z)).add(written[i]);
        if (contractor[i] != nobody) {
          int c = contractor[i];
          int z = zone[i];
          groups.computeIfAbsent(((long) z << 32) | c, key -> new Group(c, z)).add(written[i]);
        }
      }
    }
    long[] keys = groups.keySet().stream().mapToLong(Long::longValue).sorted().toArray();
    List<Group> able = new ArrayList<>();
    for (long key : keys) {
      Group group = groups.get(key);
      if (group != null && group.size >= LEAST_OWN) {
        Group all = zones.get(group.zone);
        if (all != null && all.size - group.size >= LEAST_OTHERS) {
          able.add(group);
        }
      }
    }
    double spreadOfRepeats = spreadOfRepeats(able, zones);
    double spreadOfRounds = spreadOfRounds(able, zones);
    List<Tried> tried = new ArrayList<>();
    for (Group group : able) {
      Group all = zones.getOrDefault(group.zone, group);
      tried.add(repeats(field, group, all, spreadOfRepeats));
      tried.add(rounds(field, group, all, spreadOfRounds));
      tried.add(run(field, group, all));
    }
    return tried;
  }

  /** The figure that stands out most, paid for by the number of figures that it could have been. */
  private static Tried repeats(Field field, Group group, Group all, double spread) {
    double least = 2;
    float figure = Float.NaN;
    int hits = 0;
    double share = 0;
    float step = group.step();
    for (Map.Entry<Float, int[]> each : group.counts.entrySet()) {
      int own = each.getValue()[0];
      double others = othersShare(each.getKey(), step, group, all);
      double p = tail(own, group.size, others, spread);
      if (p < least) {
        least = p;
        figure = each.getKey();
        hits = own;
        share = others;
      }
    }
    double ownShare = (double) hits / group.size;
    boolean isMarked =
        hits >= LEAST_REPEATS && ownShare >= LEAST_SHARE && ownShare >= LEAST_RATIO * share;
    double p = Math.min(1, least * group.counts.size());
    return new Tried(
        group.contractor,
        group.zone,
        field,
        Kind.REPEATED,
        figure,
        hits,
        group.size,
        share,
        p,
        isMarked);
  }

  private static Tried rounds(Field field, Group group, Group all, double spread) {
    double others = othersRound(group, all);
    double p = tail(group.round, group.size, others, spread);
    boolean isMarked = (double) group.round / group.size - others >= LEAST_MORE_ROUND;
    return new Tried(
        group.contractor,
        group.zone,
        field,
        Kind.ROUND,
        Double.NaN,
        group.round,
        group.size,
        others,
        p,
        isMarked);
  }

  /** A row of equal figures: each next one is as likely as that figure is among all others. */
  private static Tried run(Field field, Group group, Group all) {
    int[] own = group.counts.getOrDefault(group.longestFigure, new int[1]);
    // Rows come by being repeated often, too: its own share counts where it is greater.
    double share =
        Math.max(
            othersShare(group.longestFigure, group.step(), group, all),
            (double) own[0] / group.size);
    double p = Math.min(1, group.size * Math.pow(share, group.longest - 1.0));
    return new Tried(
        group.contractor,
        group.zone,
        field,
        Kind.RUN,
        group.longestFigure,
        group.longest,
        group.size,
        share,
        p,
        group.longest >= LEAST_RUN);
  }

  /** Share of all others' figures that would be this one if they were rounded to the step. */
  private static double othersShare(float figure, float step, Group group, Group all) {
    // A figure that is no multiple of the step did not come of rounding to it.
    boolean isRounded = step > 0 && isMultiple(figure, step);
    float reach = isRounded ? step / 2 : 0;
    // Others heap on other figures than one who writes each foot: what they write around it counts,
    // spread evenly.
    float around = Math.max(reach, Math.min(MOST_AROUND, Math.abs(figure) * SHARE_AROUND));
    double spreadOut = others(figure, around, group, all) * (isRounded ? step : 1) / (2 * around);
    double near = Math.max(others(figure, reach, group, all), spreadOut);
    return (near + 0.5) / (all.size - group.size + 1.0);
  }

  /** Figures of all others within reach. */
  private static int others(float figure, float reach, Group group, Group all) {
    return sum(all.counts.subMap(figure - reach, true, figure + reach, true))
        - sum(group.counts.subMap(figure - reach, true, figure + reach, true));
  }

  /** Share of all others' figures that would be round if they were rounded to the group's step. */
  private static double othersRound(Group group, Group all) {
    float step = group.step();
    float honest = step < ROUND ? step : 0;
    int round = 0;
    for (Map.Entry<Float, int[]> each : all.counts.entrySet()) {
      float figure = each.getKey();
      double seen = honest > 0 ? Math.rint(figure / honest) * honest : figure;
      if (seen % ROUND == 0) {
        round += each.getValue()[0] - group.counts.getOrDefault(figure, new int[1])[0];
      }
    }
    return (round + 0.5) / (all.size - group.size + 1.0);
  }

  private static int sum(Map<Float, int[]> counts) {
    int sum = 0;
    for (int[] count : counts.values()) {
      sum += count[0];
    }
    return sum;
  }

  /** How likely as many, or more, are; never less than with the wider variance. */
  static double tail(int hits, int of, double share, double spread) {
    if (hits == 0) {
      return 1;
    }
    double exact = BinomialDistribution.of(of, share).survivalProbability(hits - 1);
    double deviation = Math.sqrt(of * share * (1 - share) * spread);
    double wide =
        NormalDistribution.of(0, 1)
            .survivalProbability((hits - 0.5 - of * share) / Math.max(deviation, 1e-12));
    return Math.max(exact, wide);
  }

  /** How much more than by chance contractors differ in how often they write a common figure. */
  private static double spreadOfRepeats(List<Group> able, Map<Integer, Group> zones) {
    double[] squares = new double[64];
    int count = 0;
    for (Group group : able) {
      Group all = zones.getOrDefault(group.zone, group);
      float step = group.step();
      for (Map.Entry<Float, int[]> each : group.counts.entrySet()) {
        double share = othersShare(each.getKey(), step, group, all);
        if (share * group.size >= EXPECTED) {
          if (count == squares.length) {
            squares = Arrays.copyOf(squares, 2 * count);
          }
          squares[count++] = square(each.getValue()[0], group.size, share);
        }
      }
    }
    return spread(squares, count);
  }

  private static double spreadOfRounds(List<Group> able, Map<Integer, Group> zones) {
    double[] squares = new double[able.size()];
    for (int i = 0; i < squares.length; i++) {
      Group group = able.get(i);
      Group all = zones.getOrDefault(group.zone, group);
      double others = othersRound(group, all);
      squares[i] = square(group.round, group.size, others);
    }
    return spread(squares, squares.length);
  }

  static double square(int hits, int of, double share) {
    double away = hits - of * share;
    return away * away / (of * share * (1 - share));
  }

  /** How much more than by chance; 1 where there are too few to say. */
  static double spread(double[] squares, int count) {
    return count < 5 ? 1 : Math.max(1, Spread.median(squares, count) / MEDIAN_OF_SQUARE);
  }
}
