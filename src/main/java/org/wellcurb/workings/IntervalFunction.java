package org.wellcurb.workings;

/**
 * The arithmetic of a working over ranges, for the few whose least and greatest values do not lie
 * at corners.
 */
@FunctionalInterface
public interface IntervalFunction {
  /**
   * @param lo least value of each input and then of each figure, as {@link Working.Function} takes
   *     them; NaN where an input is not given. Not to be changed or kept.
   * @param hi greatest value of each, NaN where {@code lo} is
   * @param out takes the least value of the working at 0 and the greatest at 1, in SI; NaN in both
   *     where it cannot be known. An end may be infinite.
   */
  void over(double[] lo, double[] hi, double[] out);
}
