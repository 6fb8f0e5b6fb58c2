package org.wellcurb.report;

import java.util.List;

/**
 * Open findings by rule and by contractor: the rules with most findings, and the licences that
 * stand out most among all, first those with records enough.
 *
 * @param contractors the licences, one a column
 * @param rows the rules
 * @param licences licences with findings, shown or not
 * @param rules rules with findings, shown or not
 * @param records records of all licences, one that names two of them twice
 */
public record GridView(
    List<ContractorLine> contractors, List<Row> rows, int licences, int rules, long records) {
  /** Records of a licence below which its shares say little. */
  public static final int FEW = 20;

  public GridView {
    contractors = List.copyOf(contractors);
    rows = List.copyOf(rows);
  }

  /**
   * One rule.
   *
   * @param pack place of the pack in the run
   * @param rule place of the rule in it
   * @param all findings of all licences
   * @param counts findings by column
   */
  public record Row(int pack, int rule, long all, List<Long> counts) {
    public Row {
      counts = List.copyOf(counts);
    }
  }
}
