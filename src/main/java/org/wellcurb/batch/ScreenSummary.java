package org.wellcurb.batch;

import java.util.List;
import org.wellcurb.report.Cut;
import org.wellcurb.report.FollowUp;
import org.wellcurb.report.KindCounts;

/**
 * What came of a run.
 *
 * @param rowsRead rows met; always {@code screened + setAside}
 * @param screened rows screened
 * @param setAside rows set aside
 * @param filesSetAside files set aside whole
 * @param withFindings records with findings
 * @param findings findings by kind
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
    long withFindings,
    KindCounts findings,
    FollowUp followUp,
    long cannotTell,
    List<Cut> cuts,
    String recordId,
    List<String> sentences) {

  public ScreenSummary {
    cuts = List.copyOf(cuts);
    sentences = List.copyOf(sentences);
  }
}
