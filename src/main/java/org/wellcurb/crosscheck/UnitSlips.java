package org.wellcurb.crosscheck;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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

  /** The depth is 0.3048 of those around it. */
  static final byte SHALLOW = 1;

  /** The depth is 3.2808 of those around it. */
  static final byte DEEP = 2;

  private final Neighbourhood all;
  private final float[] depth;

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

  /** Tests on groups of one kind. */
  static final class Found {
    /** What was tested of groups that no record belongs to. */
    static final Found NOTHING = new Found(List.of(), new byte[0]);

    private final List<Tried> tried;
    private final byte[] ways;

    private Found(List<Tried> tried, byte[] ways) {
      this.tried = tried;
      this.ways = ways;
    }

    List<Tried> tried() {
      return tried;
    }

    /** {@link #SHALLOW} or {@link #DEEP}; 0 where the depth of the record is not off. */
    byte way(int record) {
      return ways[record];
    }
  }

  UnitSlips(SurveyFile survey) throws IOException {
    float[] latitude = survey.floats(SurveyRow.LATITUDE);
    float[] depths = survey.floats(SurveyRow.VALUES + 4 * Field.DEPTH.ordinal());
    boolean[] usable = Positions.any(latitude);
    for (int i = 0; i < usable.length; i++) {
      usable[i] &= depths[i] > 0;
    }
    all = new Neighbourhood(latitude, survey.floats(SurveyRow.LONGITUDE), usable);
    depth = all.inOrder(depths);
  }

  /**
   * Tests on each group. A well's depth is laid beside those of wells of other groups around it.
   *
   * @param groups code of the group by record
   * @param none code of records that belong to no group; -1 if there are none
   */
  Found find(int[] groups, int none) {
    byte[] ways = new byte[groups.length];
    int[] own = all.inOrder(groups);
    int most = Arrays.stream(own).max().orElse(-1);
    double[][] ratios = new double[most + 1][0];
    int[] sizes = new int[most + 1];
    NearestWells walk = new NearestWells(all, NEAREST, WITHIN, own);
    for (int at = 0; at < own.length; at++) {
      int group = own[at];
      double ratio = group == none ? Double.NaN : ratio(walk, at, group);
      if (!Double.isNaN(ratio)) {
        ways[all.record(at)] = way(ratio);
        if (sizes[group] == ratios[group].length) {
          ratios[group] = Arrays.copyOf(ratios[group], Math.max(8, sizes[group] * 3 / 2));
        }
        ratios[group][sizes[group]++] = ratio;
      }
    }
    return new Found(tests(ratios, sizes), ways);
  }

  /** Logarithm of a depth over that of wells of other groups around it; NaN where too few are. */
  private double ratio(NearestWells walk, int at, int group) {
    int count = walk.nearest(at, group);
    if (count < LEAST_NEIGHBOURS) {
      return Double.NaN;
    }
    double[] theirs = new double[count];
    for (int n = 0; n < count; n++) {
      theirs[n] = depth[walk.near(n)];
    }
    return Math.log(depth[at] / Spread.median(theirs, count));
  }

  /** Which factor the logarithm of a depth over that of its neighbours is near to. */
  private static byte way(double ratio) {
    return Math.abs(ratio + FACTOR) < NEAR ? SHALLOW : Math.abs(ratio - FACTOR) < NEAR ? DEEP : 0;
  }

  private static List<Tried> tests(double[][] ratios, int[] sizes) {
    long[][] hits = new long[2][sizes.length];
    long[] totals = new long[2];
    long wells = 0;
    for (int g = 0; g < sizes.length; g++) {
      for (int i = 0; i < sizes[g]; i++) {
        byte way = way(ratios[g][i]);
        hits[0][g] += way == SHALLOW ? 1 : 0;
        hits[1][g] += way == DEEP ? 1 : 0;
      }
      totals[0] += hits[0][g];
      totals[1] += hits[1][g];
      wells += sizes[g];
    }
    List<Tried> tried = new ArrayList<>();
    for (int g = 0; g < sizes.length; g++) {
      int size = sizes[g];
      if (size < LEAST) {
        continue;
      }
      double ratio = Math.exp(Spread.median(ratios[g], size));
      for (int way = 0; way < 2; way++) {
        int own = (int) hits[way][g];
        double others = (totals[way] - own + 0.5) / (wells - size + 1.0);
        double p =
            own == 0 ? 1 : BinomialDistribution.of(size, others).survivalProbability(own - 1);
        tried.add(new Tried(g, own, size, way == 0, ratio, others, p, own >= LEAST_SHARE * size));
      }
    }
    return tried;
  }
}
