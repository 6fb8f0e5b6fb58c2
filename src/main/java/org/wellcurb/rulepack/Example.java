package org.wellcurb.rulepack;

import java.util.Map;
import org.wellcurb.judgement.Outcome;

/**
 * A worked example that proves a rule.
 *
 * @param given entries by key, as a form would write them
 * @param expect the outcome that the rule must have on them
 */
public record Example(Map<String, String> given, Outcome expect) {
  public Example {
    given = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(given));
  }
}
