package org.wellcurb.intake;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Entry;

/**
 * Where a text goes and how it is to be understood.
 *
 * @param entry the entry that it fills
 * @param unit the unit of a bare number; null if neither map nor header says it
 * @param style commas, dates, what means unknown
 * @param words what stands for what, by text in lower case: {@code s} for {@code steel}
 * @param scale what amounts are multiplied with after they are read; 1 for nothing
 * @param ofSeveral which row counts where several make one record
 */
public record Target(
    Entry entry,
    @Nullable Unit unit,
    CellStyle style,
    Map<String, String> words,
    double scale,
    OfSeveral ofSeveral) {

  public Target {
    words = Map.copyOf(words);
  }

  /** The same, with cells written in another way. */
  Target withStyle(CellStyle other) {
    return new Target(entry, unit, other, words, scale, ofSeveral);
  }

  /** True if the cell can be read as it stands. */
  boolean isPlain() {
    return words.isEmpty() && scale == 1;
  }
}
