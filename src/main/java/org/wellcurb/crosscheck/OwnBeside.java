package org.wellcurb.crosscheck;

/**
 * How a group stands to a rule, beside all others where both are.
 *
 * @param hits records of the group that fall short
 * @param of its records of which the rule could be told
 * @param share share of all others that would fall short if they stood where those of the group do;
 *     never quite 0 nor 1
 * @param worth records of all others, as many as would tell as much if all weighed the same
 */
record OwnBeside(int hits, int of, double share, double worth) {
  /**
   * Sums over the strata of a group.
   *
   * @param expected shortfalls, were it like all others in each
   * @param squares the square of its records over those of all others, of each added up
   */
  static OwnBeside of(int hits, int of, double expected, double squares) {
    double worth = of == 0 ? 0 : (double) of * of / squares;
    double share = of == 0 ? 0 : expected / of;
    // Half a record more that falls short, of one more.
    return new OwnBeside(hits, of, (share * worth + 0.5) / (worth + 1), worth);
  }

  /** Whether there are enough of either, and the rule is not one that nobody falls short of. */
  boolean isAble() {
    return of >= RuleFloors.OF_GROUP
        && worth >= RuleFloors.OF_OTHERS
        && hits + share * (worth + 1) - 0.5 > 1e-9;
  }

  /**
   * How likely as many are by chance, where groups differ anyway and what is known of all others is
   * known from so many records only: that the shares of strata differ makes chance do less, not
   * more (W. Hoeffding, On the distribution of the number of successes in independent trials,
   * Annals of Mathematical Statistics 27 (1956), 713-721, from memory), so one tail does for all.
   *
   * @param between standard deviation of log odds between groups
   */
  double p(double between) {
    double ofOthers = 1 / (worth * share * (1 - share));
    return MixedTail.of(hits, of, share, Math.sqrt(between * between + ofOthers));
  }
}
