package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;

/** A column in which nothing stands but names of units: it may say the units of its neighbours. */
final class UnitColumns {
  private UnitColumns() {}

  /** The guesses; those without a unit take that of the one column of units of their dimension. */
  static List<ColumnGuess> beside(List<ColumnSurvey> columns, List<ColumnGuess> guesses) {
    @Nullable ColumnSurvey only = null;
    @Nullable Dimension measures = null;
    for (ColumnSurvey column : columns) {
      Dimension dimension = dimension(column);
      if (dimension != null) {
        if (only != null) {
          return guesses;
        }
        only = column;
        measures = dimension;
      }
    }
    if (only == null) {
      return guesses;
    }
    List<ColumnGuess> all = new ArrayList<>();
    for (ColumnGuess guess : guesses) {
      Unit unit = guess.unit();
      boolean takes = unit != null && unit.dimension().equals(measures) && guess.isUnitUnsaid();
      all.add(takes ? guess.withUnitFrom(only) : guess);
    }
    return all;
  }

  /** What the texts of a column of units stand for. */
  static Map<String, String> words(HeaderSurvey survey, String column) {
    Map<String, String> words = new LinkedHashMap<>();
    for (ColumnGuess guess : survey.columns()) {
      if (guess.survey().name().equals(column)) {
        for (String text : guess.survey().texts().keySet()) {
          named(text).ifPresent(unit -> words.put(text, unit.symbol()));
        }
      }
    }
    return words;
  }

  private static Optional<Unit> named(String text) {
    return Units.named(text.toLowerCase(Locale.ROOT)).or(() -> Units.named(text));
  }

  private static @Nullable Dimension dimension(ColumnSurvey column) {
    @Nullable Dimension found = null;
    for (String text : column.texts().keySet()) {
      Unit named = named(text).orElse(null);
      if (named == null || (found != null && !found.equals(named.dimension()))) {
        return null;
      }
      found = named.dimension();
    }
    return column.texts().size() > 1 ? found : null;
  }
}
