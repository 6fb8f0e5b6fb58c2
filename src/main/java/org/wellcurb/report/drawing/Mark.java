package org.wellcurb.report.drawing;

import java.util.List;

/**
 * The sign of a finding in a drawing.
 *
 * @param letter the letter that names the finding on the page
 * @param anchor the finding's place on the page
 * @param sentence what is wrong
 * @param entries keys of the entries that it is about, the one that decided first
 */
public record Mark(String letter, String anchor, String sentence, List<String> entries) {
  public Mark {
    entries = List.copyOf(entries);
  }

  /** Key of the entry that decided it, which is the only one that falls short; empty for none. */
  String decided() {
    return entries.isEmpty() ? "" : entries.get(0);
  }
}
