package org.wellcurb.report;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a run was told beside the records, as the batch page shows it.
 *
 * @param settled findings that were settled, and so are not counted as open
 * @param settledUnmatched lines that settle no finding of this batch, at most {@link
 *     Cap#SIDE_LINES_ON_PAGE}
 * @param settledUnmatchedTotal how many there are
 * @param settledOtherwise findings that were settled when the record said something else, at most
 *     as many
 * @param settledOtherwiseTotal how many there are
 * @param corrections entries that were corrected by answers
 * @param correctedRecords records with one
 * @param corrected which entries, from what to what, at most {@link Cap#SIDE_LINES_ON_PAGE}
 * @param answersUnmatched records that are answered for and not in this batch, with the line, at
 *     most as many
 * @param answersUnmatchedTotal how many there are
 * @param explained what was said of findings in the table of answers, at most as many
 * @param explainedTotal how many there are
 * @param saidVoid answers that say of a blank entry that it does not apply, at most as many
 * @param saidVoidTotal how many there are
 * @param refused lines of these tables that name a record of this batch and were not applied, at
 *     most as many
 * @param refusedTotal how many there are
 * @param idleVariances variances that waive nothing, at most as many
 * @param idleVariancesTotal how many there are
 * @param unknownVariances how many of them name no rule of the pack
 * @param since what changed since an earlier report; null where none was given
 */
public record FollowUp(
    long settled,
    List<Settlement> settledUnmatched,
    long settledUnmatchedTotal,
    List<SettledOtherwise> settledOtherwise,
    long settledOtherwiseTotal,
    long corrections,
    long correctedRecords,
    List<Corrected> corrected,
    List<String> answersUnmatched,
    long answersUnmatchedTotal,
    List<Explained> explained,
    long explainedTotal,
    List<Explained> saidVoid,
    long saidVoidTotal,
    List<Refused> refused,
    long refusedTotal,
    List<IdleVariance> idleVariances,
    long idleVariancesTotal,
    long unknownVariances,
    @Nullable SinceCounts since) {
  /** Nothing was told. */
  public static final FollowUp NONE =
      new FollowUp(
          0, List.of(), 0, List.of(), 0, 0, 0, List.of(), List.of(), 0, List.of(), 0, List.of(), 0,
          List.of(), 0, List.of(), 0, 0, null);

  public FollowUp {
    settledUnmatched = List.copyOf(settledUnmatched);
    settledOtherwise = List.copyOf(settledOtherwise);
    corrected = List.copyOf(corrected);
    answersUnmatched = List.copyOf(answersUnmatched);
    explained = List.copyOf(explained);
    saidVoid = List.copyOf(saidVoid);
    refused = List.copyOf(refused);
    idleVariances = List.copyOf(idleVariances);
  }

  /** True where the page has nothing to say of it. */
  public boolean isEmpty() {
    return settled == 0
        && settledUnmatchedTotal == 0
        && corrections == 0
        && answersUnmatchedTotal == 0
        && refusedTotal == 0
        && explainedTotal == 0
        && idleVariancesTotal == 0
        && since == null;
  }
}
