package org.wellcurb.report;

import java.util.List;
import java.util.Set;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.screening.RuleResult;
import org.wellcurb.screening.UnfitWater;

/**
 * Which rules are met by a water sample that another rule says does not count: a bacteria test of
 * before the disinfection or with chlorine in it, and any test of water that was treated. A sample
 * with bacteria in it counts however it was taken.
 */
final class SampleDoubts {
  private static final Set<String> TAKEN = Set.of("dates.sampled", "dates.sampled_again");
  private static final String SAMPLE = "sample.";
  private static final String TAP = "sample.tap";
  private static final String CHLORINE = "sample.chlorine_residual";

  private String ofBacteria = "";
  private String ofAll = "";

  SampleDoubts(List<FindingView> findings) {
    for (FindingView finding : findings) {
      if (finding.kind().equals("omission")) {
        continue;
      }
      if (finding.entry().equals(TAP) && ofAll.isEmpty()) {
        ofAll = finding.letter();
      }
      boolean isTooSoon =
          TAKEN.contains(finding.entry()) && finding.reads().contains("dates.disinfected");
      if ((isTooSoon || finding.entry().equals(CHLORINE)) && ofBacteria.isEmpty()) {
        ofBacteria = finding.letter();
      }
    }
  }

  /** The letter of the finding that makes this outcome worth nothing; empty where none does. */
  String letter(RuleResult result) {
    if (result.outcome() != Outcome.MEETS) {
      return "";
    }
    Set<String> reads = result.rule().required();
    if (!ofBacteria.isEmpty() && reads.stream().anyMatch(UnfitWater.BACTERIA::contains)) {
      return ofBacteria;
    }
    boolean isTest =
        reads.stream()
            .anyMatch(key -> key.startsWith(SAMPLE) && !key.equals(TAP) && !key.equals(CHLORINE));
    return isTest ? ofAll : "";
  }
}
