package org.wellcurb.crosscheck;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * Contractors, and inputs, whose depths are a factor of 0.3048 or 3.2808 off those of the wells
 * around them: metres in a column of feet, or feet in one of metres.
 */
final class UnitSlips {
  /** Fewest wells of a group with neighbours of others. */
  static final int LEAST = 10;

  /** Neighbours that are asked for, of other groups. */
  private static final int NEAREST = 7;

  private static final int LEAST_NEIGHBOURS = 4;
  private static final double WITHIN = 5000;

  /** The logarithm of 1 / 0.3048. */
  private static final double FACTOR = Math.log(1 / 0.3048);

  /** How near to the factor a ratio is, in logarithms, to count for it. */
  private static final double NEAR = 0.35;

  /** Share of a group's wells that must be near the factor. */
  static final double LEAST_SHARE = 0.5;

  private final float[] latitude;
  private final float[] longitude;
  private final float[] depth;
  private final Neighbourhood all;

  /**
   * A test of one group.
   *
   * @param group its code
   * @param hits wells whose depth is off by the factor
   * @param of wells with neighbours of others
   * @param isShallow whether the factor looked for is 0.3048, and not 3.2808
   * @param ratio median of depth over that of the neighbours
   * @param othersShare share of such wells in all other groups
   * @param p how likely as many would be if the group were like all others
   * @param isMarked whether it is great enough to be worth saying, whatever p is
   */
  record Tried(
      int group,
      int hits,
      int of,
      boolean isShallow,
      double ratio,
      double othersShare,
      double p,
      boolean isMarked) {}

  UnitSlips(SurveyFile survey) throws IOException {
    latitude = survey.floats(SurveyRow.LATITUDE);
    longitude = survey.floats(SurveyRow.LONGITUDE);
    depth = survey.floats(SurveyRow.VALUES + 4 * Field.DEPTH.ordinal());
    boolean[] usable = Positions.any(latitude);
    for (int i = 0; i < usable.length; i++) {
      usable[i] &= depth[i] > 0;
    }
    all = new Neighbourhood(latitude, longitude, usable);
  }

  /** The first records of a group, at most so many, that are off by the factor that way. */
  List<Integer> records(int[] groups, int group, boolean isShallow, int most) {
    List<Integer> records = new ArrayList<>();
    int[] near = new int[NEAREST];
    for (int i = 0; i < groups.length && records.size() < most; i++) {
      if (groups[i] == group) {
        double ratio = ratio(i, groups, near);
        if (Math.abs(ratio + (isShallow ? FACTOR : -FACTOR)) < NEAR) {
          records.add(i);
        }
      }
    }
    return records;
  }

  /** Logarithm of a depth over that of wells of other groups around it; NaN where too few are. */
  private double ratio(int i, int[] groups, int[] near) {
    if (Float.isNaN(latitude[i]) || Float.isNaN(longitude[i]) || !(depth[i] > 0)) {
      return Double.NaN;
    }
    int group = groups[i];
    int count = all.nearest(i, near, WITHIN, other -> groups[other] != group);
    if (count < LEAST_NEIGHBOURS) {
      return Double.NaN;
    }
    double[] theirs = new double[count];
    for (int n = 0; n < count; n++) {
      theirs[n] = depth[near[n]];
    }
    return Math.log(depth[i] / Spread.median(theirs, count));
  }

  /**
   * Tests on each group.
   *
   * @param groups code of the group by record
   * @param none code of records that belong to no group; -1 if there are none
   */
  List<Tried> tried(int[] groups, int none) {
    Map<Integer, double[]> ratios = new HashMap<>();
    Map<Integer, Integer> sizes = new HashMap<>();
    int[] near = new int[NEAREST];
    for (int i = 0; i < groups.length; i++) {
      int group = groups[i];
      double ratio = group == none ? Double.NaN : ratio(i, groups, near);
      if (Double.isNaN(ratio)) {
        continue;
      }
      int size = sizes.merge(group, 1, Integer::sum);
      double[] list = ratios.computeIfAbsent(group, g -> new double[16]);
      if (size > list.length) {
        list = Arrays.copyOf(list, 2 * list.length);
        ratios.put(group, list);
      }
      list[size - 1] = ratio;
    }
    return tests(ratios, sizes);
  }

  private static List<Tried> tests(Map<Integer, double[]> ratios, Map<Integer, Integer> sizes) {
    int[] codes = ratios.keySet().stream().mapToInt(Integer::intValue).sorted().toArray();
    long[][] hits = new long[2][codes.length];
    long[] totals = new long[2];
    long wells = 0;
    for (int g = 0; g < codes.length; g++) {
      double[] list = ratios.getOrDefault(codes[g], new double[0]);
      int size = sizes.getOrDefault(codes[g], 0);
      for (int i = 0; i < size; i++) {
        hits[0][g] += Math.abs(list[i] + FACTOR) < NEAR ? 1 : 0;
        hits[1][g] += Math.abs(list[i] - FACTOR) < NEAR ? 1 : 0;
      }
      totals[0] += hits[0][g];
      totals[1] += hits[1][g];
      wells += size;
    }
    List<Tried> tried = new ArrayList<>();
    for (int g = 0; g < codes.length; g++) {
      double[] list = ratios.getOrDefault(codes[g], new double[0]);
      int size = sizes.getOrDefault(codes[g], 0);
      if (size < LEAST) {
        continue;
      }
      for (int way = 0; way < 2; way++) {
        int own = (int) hits[way][g];
        double others = (totals[way] - own + 0.5) / (wells - size + 1.0);
        double p =
            own == 0 ? 1 : BinomialDistribution.of(size, others).survivalProbability(own - 1);
        double ratio = Math.exp(Spread.median(list, size));
        tried.add(
            new Tried(codes[g], own, size, way == 0, ratio, others, p, own >= LEAST_SHARE * size));
      }
    }
    return tried;
  }
}
