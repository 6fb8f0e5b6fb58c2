package org.wellcurb.report;

import java.util.Comparator;

/**
 * One contractor's licence in the batch page.
 *
 * @param licence the licence number, as first written; empty for records that give none
 * @param records records that name it as driller or installer
 * @param withFindings of these, how many have a finding that falls to it (see {@link Whose})
 * @param kinds findings that fall to it
 * @param notice address of its notice from the batch page; empty if none was written
 */
public record ContractorLine(
    String licence, long records, long withFindings, KindCounts kinds, String notice) {

  /** The same, with the address of its notice. */
  public ContractorLine withNotice(String address) {
    return new ContractorLine(licence, records, withFindings, kinds, address);
  }

  /** The order of the list: most records with findings, then by licence (code point). */
  public static final Comparator<ContractorLine> MOST_FIRST =
      Comparator.<ContractorLine>comparingLong(line -> -line.withFindings)
          .thenComparingLong(line -> -line.kinds.total())
          .thenComparing(ContractorLine::licence);
}
