package org.wellcurb.report;

import java.util.List;

/**
 * Something to ask for: entries that would help to settle the same rules.
 *
 * @param labels what pages call the entries
 * @param settles how many rules they would help to settle
 * @param rules titles of some of them
 */
public record AskView(List<String> labels, int settles, List<String> rules) {
  public AskView {
    labels = List.copyOf(labels);
    rules = List.copyOf(rules);
  }
}
