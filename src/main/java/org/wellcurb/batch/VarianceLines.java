package org.wellcurb.batch;

import java.util.List;
import org.wellcurb.record.Variance;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.Cap;
import org.wellcurb.report.VariancesCsv;
import org.wellcurb.screening.Screener;

/** What each variance of a record does; those that do nothing are named on the page too. */
final class VarianceLines {
  private VarianceLines() {}

  /**
   * Adds the lines of a record.
   *
   * @param screener the one that judged it last
   */
  static void put(PartResult into, WellRecord record, Screener screener) {
    List<Variance> idle = screener.idleVariances();
    String pack = screener.pack().id();
    for (Variance variance : record.variances()) {
      if (!idle.contains(variance)) {
        VariancesCsv.put(into.variances, record, pack, variance, VariancesCsv.Does.WAIVES);
        continue;
      }
      boolean isKnown = screener.hasRule(variance.rule());
      VariancesCsv.Does does = isKnown ? VariancesCsv.Does.NOTHING : VariancesCsv.Does.NO_RULE;
      VariancesCsv.put(into.variances, record, pack, variance, does);
      into.idleVarianceCount++;
      if (into.idleVariances.size() < Cap.SIDE_LINES_ON_PAGE.most()) {
        String reference = variance.reference().isEmpty() ? "" : ": " + variance.reference();
        into.idleVariances.add(record.id() + ", " + variance.rule() + reference);
      }
    }
  }
}
