package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.Screener;

/**
 * Puts findings into the words of the pages; what other programs read is in plain English. A record
 * is judged once more for it, so only what someone will read should come here.
 */
final class Speakers {
  private final List<Screener> speakers = new ArrayList<>();

  Speakers(Plan plan) {
    for (Pack pack : plan.packs()) {
      speakers.add(
          new Screener(pack, plan.request().asOf(), plan.request().output().style().speech()));
    }
  }

  /** The same findings of a record, in the same order. */
  List<Finding> said(WellRecord record, int pack, List<Finding> findings) {
    if (findings.stream().noneMatch(Speakers::hasWords)) {
      return findings;
    }
    Screener speaker = speakers.get(pack);
    speaker.outcomes(record);
    IdentityHashMap<Rule, Finding> said = new IdentityHashMap<>();
    speaker.findings().forEach(finding -> said.put(finding.rule(), finding));
    return findings.stream().map(each -> said.getOrDefault(each.rule(), each)).toList();
  }

  /** Whether words were made of it: the rest is numbers, which a page prints in its own way. */
  private static boolean hasWords(Finding finding) {
    Deciding deciding = finding.deciding();
    boolean isRange =
        !(deciding.valueText().isEmpty() && deciding.limitText().isEmpty())
            && (deciding.isDate() || deciding.unit() != null);
    return isRange
        || !deciding.subject().isEmpty()
        || !deciding.limitName().isEmpty()
        || (finding.rule().kind() == FindingKind.DISCREPANCY && !deciding.beside().isEmpty())
        || !finding.possibleReading().isEmpty();
  }
}
