package org.wellcurb.report;

import java.util.List;

/**
 * Something to ask for.
 *
 * @param label what pages call the entry
 * @param settles how many rules it would help to settle
 * @param rules titles of some of them
 */
public record AskView(String label, int settles, List<String> rules) {
  public AskView {
    rules = List.copyOf(rules);
  }
}
