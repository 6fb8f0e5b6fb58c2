package org.wellcurb.intake;

import java.util.Locale;
import java.util.Set;

/**
 * A condition on the rows that a header map takes.
 *
 * @param column the column that decides
 * @param texts in lower case
 * @param wanted true if the cell must be one of the texts; false if it must be none of them
 */
public record RowFilter(ColumnName column, Set<String> texts, boolean wanted) {
  public RowFilter {
    texts = Set.copyOf(texts);
  }

  boolean takes(String cell) {
    return texts.contains(HeaderKey.strip(cell).toLowerCase(Locale.ROOT)) == wanted;
  }
}
