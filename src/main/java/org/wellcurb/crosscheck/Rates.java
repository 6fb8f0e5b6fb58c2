package org.wellcurb.crosscheck;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * How often a deficiency was found in each group, among records where it could be told, beside the
 * whole batch: with Wilson's interval, and with how likely a share as far from the batch's would be
 * by chance alone, widened by as much as groups differ anyway.
 */
final class Rates {
  /** Records below which a group is shown as small, and not tested. */
  static final int SMALL = 20;

  private static final double MEDIAN_OF_SQUARE = 0.45494;

  private Rates() {}

  /**
   * The rate of one group.
   *
   * @param group its code
   * @param share its share, with the interval
   * @param p how likely a share as far off is; NaN where the group is too small to be tested
   */
  record Rate(int group, Share share, double p) {}

  /**
   * Rates by group, most records first.
   *
   * @param groups code by record; negative for none
   * @param flags of the records
   */
  static List<Rate> of(int[] groups, byte[] flags) {
    int most = -1;
    for (int group : groups) {
      most = Math.max(most, group);
    }
    long[] told = new long[most + 1];
    long[] deficient = new long[most + 1];
    long allTold = 0;
    long allShort = 0;
    for (int i = 0; i < groups.length; i++) {
      if (groups[i] >= 0 && (flags[i] & SurveyRow.TOLD) != 0) {
        told[groups[i]]++;
        allTold++;
        if ((flags[i] & SurveyRow.DEFICIENT) != 0) {
          deficient[groups[i]]++;
          allShort++;
        }
      }
    }
    double[] squares = new double[told.length];
    int count = 0;
    for (int g = 0; g < told.length; g++) {
      double rest = rest(allShort - deficient[g], allTold - told[g]);
      if (told[g] >= SMALL) {
        double away = deficient[g] - told[g] * rest;
        squares[count++] = away * away / (told[g] * rest * (1 - rest));
      }
    }
    double spread =
        count < 5
            ? 1
            : Math.max(1, Spread.median(Arrays.copyOf(squares, count), count) / MEDIAN_OF_SQUARE);
    List<Rate> rates = new ArrayList<>();
    for (int g = 0; g < told.length; g++) {
      if (told[g] > 0) {
        double p = Double.NaN;
        if (told[g] >= SMALL && allTold > told[g]) {
          double rest = rest(allShort - deficient[g], allTold - told[g]);
          int of = (int) told[g];
          int hits = (int) deficient[g];
          double above = Copying.tail(hits, of, rest, spread);
          double below = Copying.tail(of - hits, of, 1 - rest, spread);
          p = Math.min(1, 2 * Math.min(above, below));
        }
        rates.add(new Rate(g, Share.of(deficient[g], told[g]), p));
      }
    }
    rates.sort(
        Comparator.comparingLong((Rate rate) -> -rate.share().of()).thenComparingInt(Rate::group));
    return rates;
  }

  private static double rest(long hits, long of) {
    return (hits + 0.5) / (of + 1.0);
  }
}
