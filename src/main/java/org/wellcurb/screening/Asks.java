package org.wellcurb.screening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.judgement.Outcome;

/** What to ask for: the entries named by most outcomes that cannot be told, most useful first. */
final class Asks {
  private Asks() {}

  static List<Ask> of(List<RuleResult> results) {
    Map<String, Integer> settles = new LinkedHashMap<>();
    for (RuleResult result : results) {
      if (result.outcome() == Outcome.CANNOT_TELL) {
        result.explanation().needs().forEach(key -> settles.merge(key, 1, Integer::sum));
      }
    }
    List<Ask> asks = new ArrayList<>();
    settles.forEach((key, count) -> asks.add(new Ask(key, count)));
    // A stable sort: among equals the order in which rules name them.
    asks.sort(Comparator.comparingInt(Ask::settles).reversed());
    return asks;
  }
}
