package org.wellcurb.report;

import org.wellcurb.crosscheck.Share;
import org.wellcurb.report.words.Words;

/**
 * One contractor's licence as the batch page shows it.
 *
 * @param line what was counted
 * @param rate which share of its records has a finding that falls to it, with the interval, in
 *     words; empty where it has no record
 * @param bar the same as a bar, to look at
 */
public record ContractorRow(ContractorLine line, String rate, String bar) {
  static ContractorRow of(ContractorLine line, Words words) {
    Share rate = Share.of(line.withFindings(), line.records());
    return new ContractorRow(
        line, rate.of() == 0 ? "" : Rates.words(rate, words), RateBar.of(rate));
  }
}
