package org.wellcurb.screening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.FindingKind;

/**
 * What to ask for: the entries named by most outcomes that cannot be told. Those come first that
 * would settle limits, then those that would settle most.
 */
final class Asks {
  private Asks() {}

  static List<Ask> of(List<RuleResult> results) {
    Map<String, Integer> settles = new LinkedHashMap<>();
    Map<String, Integer> limits = new HashMap<>();
    for (RuleResult result : results) {
      if (result.outcome() == Outcome.CANNOT_TELL) {
        int isLimit = result.rule().kind() == FindingKind.DEFICIENCY ? 1 : 0;
        for (String key : result.explanation().needs()) {
          settles.merge(key, 1, Integer::sum);
          limits.merge(key, isLimit, Integer::sum);
        }
      }
    }
    List<Ask> asks = new ArrayList<>();
    settles.forEach((key, count) -> asks.add(new Ask(key, count)));
    // A stable sort: among equals the order in which rules name them.
    asks.sort(
        Comparator.comparingInt((Ask ask) -> -limits.getOrDefault(ask.entry(), 0))
            .thenComparingInt(ask -> -ask.settles()));
    return asks;
  }
}
