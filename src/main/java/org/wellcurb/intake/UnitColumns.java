package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Entry;

/** A column in which nothing stands but names of units: it may say the units of its neighbours. */
final class UnitColumns {
  /** Words by which a header says that units stand below it. */
  private static final Set<String> SAYING =
      Set.of(
          "unit", "units", "u", "uom", "unite", "unites", "unidad", "unidades", "einheit", "msr");

  /** Words by which it says of what, where it means them all. */
  private static final Set<String> OF_ALL =
      Set.of("depth", "length", "level", "distance", "measure", "measurement", "all", "profondeur");

  /** Names of the units that a crew may change between. */
  private static final Set<String> UNIT_NAMES =
      Set.of("f", "ft", "feet", "m", "mt", "mtr", "metres", "meters", "metric", "or");

  private static final Set<String> SMALL = Set.of("in", "mm", "cm");

  private UnitColumns() {}

  /** The guesses; those without a unit take that of the nearest column of such units. */
  static List<ColumnGuess> beside(List<ColumnSurvey> columns, List<ColumnGuess> guesses) {
    Map<Integer, Dimension> units = new LinkedHashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      Dimension dimension = guesses.get(i).entry() == null ? dimension(columns.get(i)) : null;
      if (dimension != null) {
        units.put(i, dimension);
      }
    }
    if (units.isEmpty()) {
      return guesses;
    }
    Set<Integer> paired = new HashSet<>();
    for (int i : units.keySet()) {
      for (int c = 0; c < columns.size(); c++) {
        if (!units.containsKey(c) && isNamedAlike(columns.get(i), columns.get(c))) {
          paired.add(i);
        }
      }
    }
    List<ColumnGuess> all = new ArrayList<>(guesses);
    Map<Integer, List<String>> named = new TreeMap<>();
    for (int i = 0; i < guesses.size(); i++) {
      ColumnGuess guess = guesses.get(i);
      Unit unit = guess.unit();
      int from =
          unit != null && guess.written().isUnitUnsaid()
              ? of(i, guess, unit, columns, units, paired)
              : -1;
      if (from >= 0) {
        all.set(i, said(guess, columns.get(from), columns.get(i)));
        named.computeIfAbsent(from, key -> new ArrayList<>()).add(columns.get(i).name());
      }
    }
    named.forEach(
        (from, of) ->
            all.set(
                from,
                all.get(from)
                    .as(ColumnGuess.Role.UNITS, "it names the units of " + String.join(", ", of))));
    return all;
  }

  private static ColumnGuess said(ColumnGuess guess, ColumnSurvey from, ColumnSurvey column) {
    ColumnGuess said = guess.withUnitFrom(from);
    List<String> unknown =
        from.texts().keySet().stream().filter(text -> named(text, from).isEmpty()).toList();
    if (!unknown.isEmpty()) {
      said = said.withDoubt("no units in " + from.name() + ": " + String.join(", ", unknown));
    }
    return isNamedAlike(from, column)
        ? said
        : said.withDoubt("that " + from.name() + " names its unit, too, is a guess");
  }

  /** The column that names the unit of another: by its name, the next one, or the only one. */
  private static int of(
      int column,
      ColumnGuess guess,
      Unit unit,
      List<ColumnSurvey> columns,
      Map<Integer, Dimension> units,
      Set<Integer> paired) {
    List<Integer> fitting =
        units.keySet().stream()
            .filter(i -> unit.dimension().equals(units.get(i)))
            .filter(i -> namesUsual(columns.get(i), guess))
            .toList();
    for (int i : fitting) {
      if (isNamedAlike(columns.get(i), columns.get(column))) {
        return i;
      }
    }
    // One that is named after another measure is of that one only.
    List<Integer> free = fitting.stream().filter(i -> !paired.contains(i)).toList();
    if (free.contains(column + 1)) {
      return column + 1;
    }
    return free.size() == 1 && isOfAll(columns.get(free.get(0))) ? free.get(0) : -1;
  }

  /** True if its name is that of no measure in particular: such may be of columns far away. */
  private static boolean isOfAll(ColumnSurvey column) {
    return HeaderWords.of(column.name()).words().stream()
            .allMatch(word -> SAYING.contains(word) || OF_ALL.contains(word))
        || isNamedAfterUnits(column.name());
  }

  /** True for {@code M_F}, {@code ft/m}: a name of nothing but what stands below it. */
  private static boolean isNamedAfterUnits(String name) {
    List<String> parts = List.of(HeaderKey.strip(name).split("[^\\p{L}]+", -1));
    return parts.size() > 1 && parts.stream().allMatch(part -> UNIT_NAMES.contains(lower(part)));
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  /** False for diameters and slots beside feet and metres only: nobody gives them so. */
  private static boolean namesUsual(ColumnSurvey column, ColumnGuess guess) {
    @Nullable Entry entry = guess.entry();
    Unit us = entry == null ? null : entry.unit(UnitSystem.US);
    return us == null
        || !us.symbol().equals("in")
        || column.texts().keySet().stream()
            .map(text -> named(text, column).map(Unit::symbol).orElse(""))
            .anyMatch(SMALL::contains);
  }

  /**
   * True if all words of the one, but for those for units, are words of the other, or both begin
   * with the same word: {@code DEPTH_VAL}, {@code DEPTH_UOM}; {@code GROUND_Z}, {@code Z_U}.
   */
  private static boolean isNamedAlike(ColumnSurvey units, ColumnSurvey other) {
    List<String> all = HeaderWords.of(units.name()).words();
    List<String> a = all.stream().filter(word -> !SAYING.contains(word)).toList();
    List<String> b = HeaderWords.of(other.name()).words();
    return !a.isEmpty() && !b.isEmpty() && (b.containsAll(a) || a.get(0).equals(b.get(0)));
  }

  /** What the texts of a column of units stand for. */
  static Map<String, String> words(HeaderSurvey survey, String column) {
    Map<String, String> words = new LinkedHashMap<>();
    for (ColumnGuess guess : survey.columns()) {
      if (guess.survey().name().equals(column)) {
        for (String text : guess.survey().texts().keySet()) {
          named(text, guess.survey()).ifPresent(unit -> words.put(text, unit.symbol()));
        }
      }
    }
    return words;
  }

  /** The unit of a text; F is feet unless degrees of another kind stand beside it. */
  private static Optional<Unit> named(String text, ColumnSurvey column) {
    if (text.equalsIgnoreCase("F") && !column.texts().containsKey("C")) {
      return Units.named("ft");
    }
    return Units.named(text.toLowerCase(Locale.ROOT)).or(() -> Units.named(text));
  }

  /** What its units measure: all its texts are units, or its name says so and most of them are. */
  private static @Nullable Dimension dimension(ColumnSurvey column) {
    boolean says = HeaderWords.of(column.name()).words().stream().anyMatch(SAYING::contains);
    @Nullable Dimension found = null;
    long named = 0;
    for (Map.Entry<String, Integer> text : column.texts().entrySet()) {
      Unit unit = named(text.getKey(), column).orElse(null);
      if (unit == null && !says) {
        return null;
      }
      if (unit != null) {
        if (found != null && !found.equals(unit.dimension())) {
          return null;
        }
        found = unit.dimension();
        named += text.getValue();
      }
    }
    return (says && named * 2 >= column.filled()) || column.texts().size() > 1 ? found : null;
  }
}
