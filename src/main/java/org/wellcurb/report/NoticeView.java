package org.wellcurb.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.Harm;

/**
 * What one contractor is asked to correct or explain.
 *
 * @param licence the licence number, as written; empty for findings that fall to none
 * @param asOf as-of date of the run
 * @param replyBy day by which an answer is asked for
 * @param packs packs that judged
 * @param findings findings that fall to the licence (see {@link Whose}), record by record, the
 *     record with the gravest first, of each the gravest first (see {@link Harm}), at most {@link
 *     Cap#FINDINGS_IN_NOTICE}
 * @param total how many there are
 * @param advisories points of common practice that fall to the licence and are not asked about
 * @param table name of the table to fill in and return, beside the notice; empty if there is none
 * @param waters what must be done about the water, by key of its words (see {@link Urgent}), of the
 *     records whose sample asks for it, by {@link #where}
 * @param elsewhere the jurisdictions that records name which the only pack given is not for, by
 *     {@link #where}
 * @param cautions keys of cautions that apply to any of the records
 */
public record NoticeView(
    String licence,
    LocalDate asOf,
    LocalDate replyBy,
    List<Pack> packs,
    List<Finding> findings,
    long total,
    long advisories,
    String table,
    Map<String, String> waters,
    Map<String, String> elsewhere,
    List<String> cautions) {

  public NoticeView {
    packs = List.copyOf(packs);
    findings = List.copyOf(findings);
    waters = Map.copyOf(waters);
    elsewhere = Map.copyOf(elsewhere);
    cautions = List.copyOf(cautions);
  }

  /** The record that a finding is of: its number alone may stand on several rows. */
  public static String where(Finding finding) {
    return finding.file() + "\n" + finding.row() + "\n" + finding.recordId();
  }
}
