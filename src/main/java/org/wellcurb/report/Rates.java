package org.wellcurb.report;

import org.wellcurb.crosscheck.Share;
import org.wellcurb.report.words.Numerals;
import org.wellcurb.report.words.Words;

/** Shares in words. */
final class Rates {
  private Rates() {}

  /** How many of how many, in percent, with the interval. */
  static String words(Share rate, Words words) {
    return words.say(
        "rate",
        rate.hits(),
        rate.of(),
        percent(rate.share(), words),
        percent(rate.lo(), words),
        percent(rate.hi(), words));
  }

  /** In whole percent, with a decimal near the ends: only what is none or all is 0 or 100. */
  static String percent(double share, Words words) {
    double percent = 100 * share;
    if (percent <= 0 || percent >= 100) {
      return percent <= 0 ? "0" : "100";
    }
    if (percent < 1 || percent > 99) {
      return Numerals.of(
          Math.min(99.9, Math.max(0.1, Math.rint(percent * 10) / 10)), 3, words.language());
    }
    return Numerals.of(Math.rint(percent), 3, words.language());
  }
}
