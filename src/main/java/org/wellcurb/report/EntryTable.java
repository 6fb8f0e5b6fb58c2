package org.wellcurb.report;

import java.util.List;

/**
 * The entries of one group of the form.
 *
 * @param heading key of the group's heading in the bundle
 * @param open true where the page shows them without being asked: something has to be said of them
 * @param lines entries with something written
 * @param blank names of the entries left blank
 */
public record EntryTable(String heading, boolean open, List<EntryLine> lines, List<String> blank) {
  public EntryTable {
    lines = List.copyOf(lines);
    blank = List.copyOf(blank);
  }
}
