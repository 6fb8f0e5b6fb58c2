package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;

/**
 * Finds the columns of a driller's log: {@code LYR1_TOP LYR1_BTM LYR1_DESC LYR2_TOP ...} in one
 * row, or {@code FROM TO FORMATION} where each row is a layer.
 */
final class LayerGroups {
  private static final Set<String> TOPS =
      Set.of("top", "from", "start", "upper", "de", "haut", "desde", "von");
  private static final Set<String> BOTTOMS =
      Set.of("bottom", "to", "base", "end", "lower", "bas", "hasta", "bis");
  private static final Set<String> MATERIALS =
      Set.of(
          "desc",
          "descr",
          "description",
          "material",
          "lithology",
          "lith",
          "litho",
          "formation",
          "strata",
          "stratum",
          "soil",
          "geology",
          "descripcion");

  /** Words by which a column says that it is of a log, beside what it is there. */
  private static final Set<String> LOGS =
      Set.of(
          "layer",
          "lyr",
          "lay",
          "strata",
          "stratum",
          "strat",
          "lith",
          "litho",
          "lithology",
          "formation",
          "fmtn",
          "fm",
          "geology",
          "geol",
          "log",
          "bed",
          "couche",
          "depth");

  private static final Pattern NUMBERED = Pattern.compile("(\\p{L}*)0*([0-9]{1,3})");

  private enum Part {
    TOP,
    BOTTOM,
    MATERIAL
  }

  /** Where a column stands in which layer; 0 for one without a number. */
  private record Place(int number, Part part) {}

  private LayerGroups() {}

  /** The layers that the columns hold; none if it is not sure that they do. */
  static List<LayerGuess> of(List<ColumnGuess> guesses) {
    return of(guesses, isOnSeveralRows(guesses));
  }

  /** The same of a table of which it is known that its rows belong to records. */
  static List<LayerGuess> ofRows(List<ColumnGuess> guesses) {
    return of(guesses, true);
  }

  private static List<LayerGuess> of(List<ColumnGuess> guesses, boolean mayBeRows) {
    TreeMap<Integer, int[]> layers = new TreeMap<>();
    for (int i = 0; i < guesses.size(); i++) {
      @Nullable Place place = place(guesses.get(i).survey());
      if (place != null) {
        int[] columns = layers.computeIfAbsent(place.number(), n -> new int[] {-1, -1, -1});
        if (columns[place.part().ordinal()] < 0) {
          columns[place.part().ordinal()] = i;
        }
      }
    }
    layers
        .values()
        .removeIf(
            columns -> columns[Part.BOTTOM.ordinal()] < 0 || columns[Part.MATERIAL.ordinal()] < 0);
    int[] ofRow = layers.remove(0);
    if (layers.size() > 1) {
      return layers.values().stream().map(columns -> layer(columns, false, guesses)).toList();
    }
    return ofRow != null && mayBeRows ? List.of(layer(ofRow, true, guesses)) : List.of();
  }

  /** The guesses; the columns of layers say what they are there. */
  static List<ColumnGuess> said(List<ColumnGuess> guesses, List<LayerGuess> layers) {
    List<ColumnGuess> all = new ArrayList<>(guesses);
    for (int i = 0; i < layers.size(); i++) {
      LayerGuess layer = layers.get(i);
      String of = layer.isOfRow() ? "the layer that the row is" : "layer " + (i + 1);
      said(all, layer.from(), "it is the top of " + of);
      said(all, layer.to(), "it is the bottom of " + of);
      said(all, layer.material(), "it is the material of " + of);
    }
    return all;
  }

  private static void said(List<ColumnGuess> all, int column, String what) {
    if (column >= 0) {
      all.set(column, all.get(column).as(ColumnGuess.Role.LAYER, what));
    }
  }

  private static LayerGuess layer(int[] columns, boolean isOfRow, List<ColumnGuess> guesses) {
    Unit stated = HeaderWords.of(guesses.get(columns[1]).survey().name()).unit();
    if (stated != null) {
      return new LayerGuess(columns[0], columns[1], columns[2], isOfRow, stated, "", false);
    }
    @Nullable ColumnGuess depth = null;
    for (ColumnGuess guess : guesses) {
      Entry entry = guess.entry();
      boolean isDepth = entry != null && entry.key().equals("well.depth");
      boolean isLength = entry != null && DEPTHS.contains(entry.key());
      depth = isDepth || (depth == null && isLength) ? guess : depth;
    }
    WrittenGuess like = depth == null ? WrittenGuess.NONE : depth.written();
    boolean unsaid = like.unitFrom().isEmpty();
    return new LayerGuess(
        columns[0], columns[1], columns[2], isOfRow, like.unit(), like.unitFrom(), unsaid);
  }

  /** Depths that are likely to be in the unit of the log. */
  private static final Set<String> DEPTHS =
      Set.of("well.drilled_depth", "well.casing_depth", "grout.bottom");

  private static boolean isOnSeveralRows(List<ColumnGuess> guesses) {
    return guesses.stream()
        .anyMatch(
            guess -> {
              Entry entry = guess.entry();
              return entry != null && entry.index() == 0 && !guess.survey().isAllDifferent();
            });
  }

  private static @Nullable Place place(ColumnSurvey column) {
    int number = 0;
    List<String> words = new ArrayList<>();
    for (String word : HeaderWords.of(column.name()).words()) {
      Matcher numbered = NUMBERED.matcher(word);
      if (numbered.matches()) {
        if (number > 0) {
          return null;
        }
        number = Integer.parseInt(numbered.group(2));
      }
      String plain = numbered.matches() ? numbered.group(1) : word;
      if (!plain.isEmpty()) {
        words.add(plain);
      }
    }
    // LYR_TOP, and TOP_LAYER too.
    for (int at : words.isEmpty() ? new int[0] : new int[] {words.size() - 1, 0}) {
      @Nullable Part part = part(words.get(at), column);
      List<String> others = new ArrayList<>(words);
      others.remove(at);
      if (part != null && LOGS.containsAll(others)) {
        return new Place(number, part);
      }
    }
    return null;
  }

  private static @Nullable Part part(String word, ColumnSurvey column) {
    boolean isText = column.numeric() < 0.5;
    if (MATERIALS.contains(word)) {
      return isText && !isOfCasing(column) ? Part.MATERIAL : null;
    }
    if (isText && column.filled() > 0) {
      return null;
    }
    return TOPS.contains(word) ? Part.TOP : BOTTOMS.contains(word) ? Part.BOTTOM : null;
  }

  /** What strings of casing are made of; no ground is. */
  private static final Set<String> CASINGS =
      Set.of(
          "steel",
          "stl",
          "st",
          "stainless",
          "stainless steel",
          "ss",
          "galv",
          "galvanized",
          "iron",
          "pvc",
          "abs",
          "plastic",
          "pl",
          "poly",
          "pe",
          "hdpe",
          "fibreglass",
          "fiberglass",
          "acier",
          "fonte",
          "plastique");

  /** True where each row is a string of casing, a liner or a screen, and no layer. */
  private static boolean isOfCasing(ColumnSurvey column) {
    return column.filled() > 0
        && column.texts().keySet().stream()
            .allMatch(text -> CASINGS.contains(text.toLowerCase(Locale.ROOT)));
  }
}
