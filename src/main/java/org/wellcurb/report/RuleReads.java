package org.wellcurb.report;

import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.rulepack.Rule;

/** Keys of the entries that a rule holds against something. */
final class RuleReads {
  private RuleReads() {}

  /** What its texts require, in order; not what says where it applies. */
  static Set<String> of(Rule rule) {
    Set<String> keys = new LinkedHashSet<>();
    for (DatedText text : rule.program().texts()) {
      @Nullable Formula require = text.require();
      if (require != null) {
        require.reads().forEach(entry -> keys.add(entry.key()));
      }
    }
    return keys;
  }
}
