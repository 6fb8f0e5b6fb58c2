package org.wellcurb.intake;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;

/**
 * A column that states the units of another, row by row.
 *
 * @param column which
 * @param words what its texts mean, in lower case; others are read as units
 */
public record UnitColumn(ColumnName column, Map<String, Unit> words) {
  public UnitColumn {
    words = Map.copyOf(words);
  }

  /** The unit that a cell states; none if it is blank or not known. */
  Optional<Unit> unit(String cell) {
    String text = HeaderKey.strip(cell);
    Unit word = words.get(text.toLowerCase(Locale.ROOT));
    return word != null ? Optional.of(word) : text.isEmpty() ? Optional.empty() : Units.named(text);
  }
}
