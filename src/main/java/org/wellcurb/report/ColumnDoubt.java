package org.wellcurb.report;

import java.util.List;

/**
 * Something that makes one doubt that a column was read as it was meant. It is said, and changes
 * nothing.
 *
 * @param kind what, as the bundles and {@code run.json} name it: {@code doubt.KIND}
 * @param cells how many cells; 0 where it is the column as a whole
 * @param of what the sentence names beside the count
 */
public record ColumnDoubt(String kind, long cells, List<String> of) {
  public ColumnDoubt {
    of = List.copyOf(of);
  }
}
