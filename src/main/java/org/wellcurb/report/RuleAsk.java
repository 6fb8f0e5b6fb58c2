package org.wellcurb.report;

import java.util.List;

/**
 * A rule that cannot be told of some records, and what would tell it.
 *
 * @param pack place of the pack in the run
 * @param rule place of the rule in it
 * @param records of how many records it cannot be told
 * @param entries the entries that would settle it, those of most records first
 */
public record RuleAsk(int pack, int rule, long records, List<AskLine> entries) {
  public RuleAsk {
    entries = List.copyOf(entries);
  }
}
