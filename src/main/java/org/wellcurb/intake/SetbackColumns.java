package org.wellcurb.intake;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.CellStyle;

/**
 * Columns of a row that is one distance.
 *
 * @param from what it is measured from
 * @param distance the distance
 * @param words the texts of {@code from} in lower case, to keys without {@code setback.}
 * @param unit of bare numbers; null for that of the record
 * @param unitFrom the column that states the unit row by row; null if none does
 * @param style how the distances are written
 */
public record SetbackColumns(
    ColumnName from,
    ColumnName distance,
    Map<String, String> words,
    @Nullable Unit unit,
    @Nullable UnitColumn unitFrom,
    CellStyle style) {
  public SetbackColumns {
    words = Map.copyOf(words);
  }

  /** What a cell of {@code from} means: a word of the map, or the text itself. */
  String meant(String from) {
    return words.getOrDefault(from.toLowerCase(Locale.ROOT), from);
  }
}
