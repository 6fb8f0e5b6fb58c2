package org.wellcurb.report;

import java.util.List;

/**
 * A limit that a record does not meet if its rule applies, which cannot be told.
 *
 * @param title what the rule asks
 * @param sentence what the record has and what the limit is
 * @param entries the entries that would tell whether it applies
 */
public record OpenLimit(String title, String sentence, List<AskedEntry> entries) {
  public OpenLimit {
    entries = List.copyOf(entries);
  }
}
