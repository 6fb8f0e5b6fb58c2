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
 * What to ask for: the entries named by outcomes that cannot be told. Those come first that would
 * settle limits of what may soon hurt someone, then those that would settle most limits, then those
 * that would settle most.
 */
final class Asks {
  private static final int NOT_SOON = Harm.SLOW.ordinal();

  private Asks() {}

  static List<Ask> of(List<RuleResult> results) {
    Map<String, Integer> settles = new LinkedHashMap<>();
    Map<String, Integer> limits = new HashMap<>();
    Map<String, Integer> harms = new HashMap<>();
    for (RuleResult result : results) {
      if (result.outcome() == Outcome.CANNOT_TELL) {
        int isLimit = result.rule().kind() == FindingKind.DEFICIENCY ? 1 : 0;
        int harm = isLimit == 1 ? soon(Harm.of(result.rule())) : NOT_SOON;
        for (String key : result.explanation().needs()) {
          settles.merge(key, 1, Integer::sum);
          limits.merge(key, isLimit, Integer::sum);
          harms.merge(key, harm, Math::min);
        }
      }
    }
    List<Ask> asks = new ArrayList<>();
    settles.forEach((key, count) -> asks.add(new Ask(key, count)));
    // A stable sort: among equals the order in which rules name them.
    asks.sort(
        Comparator.comparingInt((Ask ask) -> harms.getOrDefault(ask.entry(), NOT_SOON))
            .thenComparingInt(ask -> -limits.getOrDefault(ask.entry(), 0))
            .thenComparingInt(ask -> -ask.settles()));
    return asks;
  }

  /** What makes ill over the years can wait for what settles more. */
  private static int soon(Harm harm) {
    return harm.compareTo(Harm.SLOW) < 0 ? harm.ordinal() : NOT_SOON;
  }
}
