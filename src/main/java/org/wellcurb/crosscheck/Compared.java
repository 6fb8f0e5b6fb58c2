package org.wellcurb.crosscheck;

/**
 * What is kept of the habits of one contractor in a zone: what the tests need, and no more, since
 * all contractors are known before the first is tested.
 *
 * @param contractor its code
 * @param zone code of the zone
 * @param size figures of its own that are compared
 * @param worth figures of all others, as {@link Habits} has it
 * @param figures its figures, in ascending order
 * @param counts how often each stands there
 * @param othersShares the share of each among the figures of all others
 * @param longest length of the longest row of equal figures
 * @param longestFigure the figure of it, one of its own
 * @param round figures that are multiples of fifty
 * @param othersRound share of such among those of all others
 * @param digits its last digits
 */
record Compared(
    int contractor,
    int zone,
    int size,
    double worth,
    float[] figures,
    int[] counts,
    double[] othersShares,
    int longest,
    float longestFigure,
    int round,
    double othersRound,
    LastDigits digits) {

  static Compared of(int contractor, int zone, Habits habits) {
    int count = habits.own.size();
    float[] figures = new float[count];
    int[] counts = new int[count];
    double[] shares = new double[count];
    for (int i = 0; i < count; i++) {
      figures[i] = habits.own.figure(i);
      counts[i] = (int) habits.own.count(i);
      shares[i] = habits.othersShare(figures[i]);
    }
    return new Compared(
        contractor,
        zone,
        habits.size,
        habits.worth,
        figures,
        counts,
        shares,
        habits.longest(),
        habits.longestFigure(),
        habits.ownRound(Copying.ROUND),
        habits.othersRound(Copying.ROUND),
        new LastDigits(habits));
  }

  /** How much wider the variance is because others' share is only known from so many figures. */
  double widened(double spread) {
    return spread * (1 + size / worth);
  }
}
