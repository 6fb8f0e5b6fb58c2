package org.wellcurb.intake;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;

/**
 * Columns of a row that is one distance.
 *
 * @param from what it is measured from
 * @param distance the distance
 * @param words the texts of {@code from} in lower case, to keys without {@code setback.}
 * @param unit of bare numbers; null for that of the record
 */
public record SetbackColumns(
    ColumnName from, ColumnName distance, Map<String, String> words, @Nullable Unit unit) {
  public SetbackColumns {
    words = Map.copyOf(words);
  }
}
