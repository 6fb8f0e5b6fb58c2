package org.wellcurb.batch;

import java.util.List;
import org.wellcurb.report.Cut;
import org.wellcurb.report.Elsewhere;
import org.wellcurb.report.FollowUp;
import org.wellcurb.report.KindCounts;

/**
 * What came of a run.
 *
 * @param rowsRead rows met; always {@code screened + setAside}
 * @param screened rows screened
 * @param setAside rows set aside
 * @param filesSetAside files set aside whole
 * @param brokenOff files that break off, so that rows of theirs are missing
 * @param lost files of which most rows were set aside, with how many, and the first reason
 * @param notRead files that were met and passed over, with the reason
 * @param withFindings records with findings
 * @param findings findings by kind
 * @param elsewhere records judged by the only pack given, which is not for the place that they name
 * @param firstSetAside the first row set aside, with its reason, where no row could be screened;
 *     else empty
 * @param followUp what the run was told beside the records
 * @param cannotTell outcomes that cannot be told
 * @param cuts where a cap cut
 * @param recordId number of the record, where there was only one; empty otherwise
 * @param sentences its findings, a sentence each
 */
public record ScreenSummary(
    long rowsRead,
    long screened,
    long setAside,
    long filesSetAside,
    List<String> brokenOff,
    List<String> lost,
    List<String> notRead,
    long withFindings,
    KindCounts findings,
    Elsewhere elsewhere,
    String firstSetAside,
    FollowUp followUp,
    long cannotTell,
    List<Cut> cuts,
    String recordId,
    List<String> sentences) {

  public ScreenSummary {
    brokenOff = List.copyOf(brokenOff);
    lost = List.copyOf(lost);
    notRead = List.copyOf(notRead);
    cuts = List.copyOf(cuts);
    sentences = List.copyOf(sentences);
  }
}
