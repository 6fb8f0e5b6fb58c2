package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/**
 * Columns whose cells hold both ends of an interval, {@code 88 to 98}: as one entry they would be a
 * depth somewhere between.
 */
final class Intervals {
  /** What parts the ends; the first that fits counts. */
  static final List<String> SEPARATORS = List.of(" to ", " - ", "-", "/");

  private static final Pattern BOTH =
      Pattern.compile("[-+]?\\d[\\d.,]* ?\\p{L}*['\"]? ?(to|-|/) ?\\d[\\d.,]* ?\\p{L}*['\"]?");
  private static final List<String> TOPS =
      List.of("well.screen_top", "grout.top", "well.liner_top", "well.filter_pack_top");

  private Intervals() {}

  /** True if these are the two ends of one thing, and the cells of a column hold both. */
  static boolean fillBoth(Entry one, Entry other, ColumnSurvey column) {
    boolean areEnds =
        one.key().replace("bottom", "top").equals(other.key().replace("bottom", "top"));
    return areEnds && areIntervals(column);
  }

  /** The guesses; those of intervals fill both ends, unless another column fills one. */
  static List<ColumnGuess> parted(Catalogue catalogue, List<ColumnGuess> guesses) {
    List<ColumnGuess> all = new ArrayList<>();
    for (ColumnGuess guess : guesses) {
      @Nullable Entry entry = guess.entry();
      String top = entry == null ? "" : entry.key().replace("bottom", "top");
      if (entry == null || !TOPS.contains(top) || !areIntervals(guess.survey())) {
        all.add(guess);
        continue;
      }
      Entry upper = catalogue.entry(catalogue.index(top));
      Entry lower = catalogue.entry(catalogue.index(top.replace("top", "bottom")));
      boolean taken =
          guesses.stream()
              .map(ColumnGuess::entry)
              .anyMatch(
                  other ->
                      other != null
                          && other.index() != entry.index()
                          && (other.index() == upper.index() || other.index() == lower.index()));
      all.add(
          taken
              ? guess.withDoubt("its cells hold both ends, and another column holds one")
              : guess.withEnds(upper, lower));
    }
    return all;
  }

  private static boolean areIntervals(ColumnSurvey column) {
    long both = 0;
    for (Map.Entry<String, Integer> text : column.texts().entrySet()) {
      both += BOTH.matcher(text.getKey()).matches() ? text.getValue() : 0;
    }
    return both * 2 >= column.filled() && both > 0;
  }
}
