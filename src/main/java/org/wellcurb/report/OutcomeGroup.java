package org.wellcurb.report;

import java.util.List;

/**
 * Rules with one outcome.
 *
 * @param key key of its heading in the bundle
 * @param open true where the page shows it without being asked
 * @param lines the rules, in the pack's order
 */
public record OutcomeGroup(String key, boolean open, List<OutcomeLine> lines) {
  public OutcomeGroup {
    lines = List.copyOf(lines);
  }
}
