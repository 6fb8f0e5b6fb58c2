package org.wellcurb.intake;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;

/**
 * How the cells of a column are probably written.
 *
 * @param unit the unit of its numbers; null where they need none
 * @param isUnitUnsaid true where nothing states that unit
 * @param unitFrom the column that names the unit row by row; empty where none does
 * @param dates the order of its dates, in words of a header map; empty where it cannot be told
 * @param pivot the first year of two-digit years; 0 where there are none
 * @param areDayNumbers true where its numbers are days as a spreadsheet counts them
 * @param unknown texts that look as if they meant unknown
 * @param words texts that are no choice of the entry, and the choice that is nearest; empty where
 *     none is
 */
public record WrittenGuess(
    @Nullable Unit unit,
    boolean isUnitUnsaid,
    String unitFrom,
    String dates,
    int pivot,
    boolean areDayNumbers,
    List<String> unknown,
    Map<String, String> words) {
  /** Nothing is known. */
  static final WrittenGuess NONE =
      new WrittenGuess(null, false, "", "", 0, false, List.of(), Map.of());

  public WrittenGuess {
    unknown = List.copyOf(unknown);
    words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
  }

  /** The same, with its units named by another column. */
  WrittenGuess withUnitFrom(String column) {
    return new WrittenGuess(unit, false, column, dates, pivot, areDayNumbers, unknown, words);
  }

  /** The same, its unit said by the columns that it is joined with. */
  WrittenGuess withUnitSaid() {
    return new WrittenGuess(unit, false, "", dates, pivot, areDayNumbers, unknown, words);
  }
}
