package org.wellcurb.report;

import java.util.Locale;
import org.wellcurb.crosscheck.Share;

/** A share as a bar, with its interval as a whisker. Its numbers stand beside it in words. */
final class RateBar {
  private static final int WIDTH = 140;

  private RateBar() {}

  static String of(Share rate) {
    if (rate.of() == 0) {
      return "";
    }
    return String.format(
        Locale.ROOT,
        "<svg class=\"bar\" viewBox=\"0 0 %d 18\" width=\"%d\" height=\"18\" aria-hidden=\"true\""
            + " focusable=\"false\"><rect class=\"track\" x=\"0.5\" y=\"3.5\" width=\"%d\""
            + " height=\"11\"/><rect class=\"share\" x=\"0.5\" y=\"3.5\" width=\"%.1f\""
            + " height=\"11\"/><path class=\"span\" d=\"M%.1f 9H%.1fM%.1f 5V13M%.1f 5V13\"/></svg>",
        WIDTH,
        WIDTH,
        WIDTH - 1,
        (WIDTH - 1) * rate.share(),
        at(rate.lo()),
        at(rate.hi()),
        at(rate.lo()),
        at(rate.hi()));
  }

  private static double at(double share) {
    return 1 + (WIDTH - 2) * share;
  }
}
