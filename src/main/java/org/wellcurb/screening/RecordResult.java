package org.wellcurb.screening;

import java.util.List;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;

/**
 * Everything that a record sheet shows of one record.
 *
 * @param record the record, a copy of its own
 * @param pack the pack that judged it
 * @param results every rule, in the pack's order
 * @param findings the shortfalls, in the pack's order
 * @param asks what to ask for, most useful first
 * @param readings possible readings
 * @param workings every working that the record's entries give, or nearly give
 * @param idleVariances variances that waive nothing
 * @param cautions keys of the cautions that apply (see the report's bundle)
 */
public record RecordResult(
    WellRecord record,
    Pack pack,
    List<RuleResult> results,
    List<Finding> findings,
    List<Ask> asks,
    List<PossibleReading> readings,
    List<WorkingShown> workings,
    List<VarianceUse> idleVariances,
    List<String> cautions) {

  public RecordResult {
    results = List.copyOf(results);
    findings = List.copyOf(findings);
    asks = List.copyOf(asks);
    readings = List.copyOf(readings);
    workings = List.copyOf(workings);
    idleVariances = List.copyOf(idleVariances);
    cautions = List.copyOf(cautions);
  }
}
