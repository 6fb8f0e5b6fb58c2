package org.wellcurb.report;

import java.util.List;

/**
 * Something to ask for: entries that would help to settle the same rules.
 *
 * @param entries the entries
 * @param settles how many rules they would help to settle
 * @param rules titles of some of them
 */
public record AskView(List<AskedEntry> entries, int settles, List<String> rules) {
  public AskView {
    entries = List.copyOf(entries);
    rules = List.copyOf(rules);
  }
}
