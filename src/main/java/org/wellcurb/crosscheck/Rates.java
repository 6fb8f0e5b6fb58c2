package org.wellcurb.crosscheck;

import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * How often a deficiency was found in each group, among records where it could be told, beside what
 * the rules that could be told of those records would lead one to expect: with Wilson's interval,
 * the limits of a funnel around the expected share, and with how likely a share as far off would be
 * by chance alone, widened by as much as groups differ anyway.
 *
 * <p>Funnel limits: D. J. Spiegelhalter, Funnel plots for comparing institutional performance,
 * Statistics in Medicine 24 (2005), 1185-1202 (from memory): 99.8 % limits, widened by the square
 * root of the spread between groups.
 */
final class Rates {
  /** Records below which a group is shown as small, and not tested. */
  static final int SMALL = 20;

  /** Normal quantile of 0.999: 99.8 % lies between the limits. */
  private static final double Z = 3.090232306167813;

  /**
   * The most that groups are taken to differ anyway, in variances: where they differ more, some of
   * them are apart, and are said to be.
   */
  static final double MOST_SPREAD = 9;

  private Rates() {}

  /**
   * The rate of one group.
   *
   * @param group its code
   * @param share its share, with the interval
   * @param expected the share that was to be expected
   * @param low lower limit of the funnel
   * @param high upper limit of the funnel
   * @param p how likely a share as far off is; NaN where the group is too small to be tested
   * @param spread by how much groups differ more than by chance, in variances
   */
  record Rate(
      int group, Share share, double expected, double low, double high, double p, double spread) {}

  /**
   * Rates by group, most records first.
   *
   * @param groups code by record; negative for none
   * @param flags of the records
   * @param likely how likely a deficiency is on each record, up to a common factor
   * @param off records that are no measure of what is to be expected of any group
   */
  static List<Rate> of(IntBuffer groups, ByteBuffer flags, FloatBuffer likely, BitSet off) {
    int most = Columns.greatest(groups);
    long[] told = new long[most + 1];
    long[] deficient = new long[most + 1];
    double[] expected = new double[most + 1];
    long everybody = 0;
    long all = 0;
    long allTold = 0;
    double allLikely = 0;
    for (int i = 0; i < groups.capacity(); i++) {
      int group = groups.get(i);
      if (group >= 0 && (flags.get(i) & SurveyRow.TOLD) != 0) {
        int isDeficient = (flags.get(i) & SurveyRow.DEFICIENT) != 0 ? 1 : 0;
        told[group]++;
        everybody++;
        deficient[group] += isDeficient;
        expected[group] += likely.get(i);
        if (!off.get(i)) {
          all += isDeficient;
          allTold++;
          allLikely += likely.get(i);
        }
      }
    }
    if (allTold == 0) {
      // All are off: then there is nobody else to lay them beside.
      return off.isEmpty() ? List.of() : of(groups, flags, likely, new BitSet());
    }
    // Never quite 0 nor 1: half a record in all.
    double least = 0.5 / (allTold + 1.0);
    double[] squares = new double[told.length];
    int count = 0;
    for (int g = 0; g < told.length; g++) {
      double share = expected[g] * all / Math.max(allLikely * told[g], 1e-9);
      expected[g] = Math.min(1 - least, Math.max(least, share));
      if (told[g] >= SMALL) {
        squares[count++] = Copying.square((int) deficient[g], (int) told[g], expected[g]);
      }
    }
    double spread = Math.min(MOST_SPREAD, Copying.spread(squares, count));
    List<Rate> rates = new ArrayList<>();
    for (int g = 0; g < told.length; g++) {
      if (told[g] > 0) {
        boolean hasOthers = told[g] < everybody;
        rates.add(rate(g, (int) deficient[g], (int) told[g], expected[g], spread, hasOthers));
      }
    }
    rates.sort(
        Comparator.comparingLong((Rate rate) -> -rate.share().of()).thenComparingInt(Rate::group));
    return rates;
  }

  private static Rate rate(
      int group, int hits, int of, double expected, double spread, boolean hasOthers) {
    double p = Double.NaN;
    if (of >= SMALL && hasOthers) {
      double above = Copying.tail(hits, of, expected, spread);
      double below = Copying.tail(of - hits, of, 1 - expected, spread);
      p = Math.min(1, 2 * Math.min(above, below));
    }
    double half = Z * Math.sqrt(expected * (1 - expected) / of * spread);
    return new Rate(
        group,
        Share.of(hits, of),
        expected,
        Math.max(0, expected - half),
        Math.min(1, expected + half),
        p,
        spread);
  }
}
