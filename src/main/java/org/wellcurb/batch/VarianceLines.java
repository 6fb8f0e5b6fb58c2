package org.wellcurb.batch;

import org.wellcurb.record.WellRecord;
import org.wellcurb.report.Cap;
import org.wellcurb.report.IdleVariance;
import org.wellcurb.report.VariancesCsv;
import org.wellcurb.screening.Screener;
import org.wellcurb.screening.VarianceUse;
import org.wellcurb.screening.VarianceUse.Does;

/** What each variance of a record does; those that do nothing are named on the page too. */
final class VarianceLines {
  private VarianceLines() {}

  /**
   * Adds the lines of a record.
   *
   * @param screener the one that judged it last
   */
  static void put(PartResult into, WellRecord record, Screener screener) {
    for (VarianceUse use : screener.variances()) {
      VariancesCsv.put(into.variances, record, screener.pack().id(), use);
      if (use.does() == Does.WAIVES) {
        continue;
      }
      into.idleVarianceCount++;
      into.unknownVarianceCount += use.does() == Does.NO_RULE ? 1 : 0;
      if (into.idleVariances.size() < Cap.SIDE_LINES_ON_PAGE.most()) {
        into.idleVariances.add(
            new IdleVariance(
                record.id(),
                use.variance().rule(),
                use.variance().reference(),
                use.does(),
                use.near()));
      }
    }
  }
}
