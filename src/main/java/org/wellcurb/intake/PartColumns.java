package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/**
 * Columns that hold parts of one value: {@code LAT_DEG LAT_MIN LAT_SEC}, {@code TD_FT TD_IN}. The
 * first alone would be a value that is wrong by the rest.
 */
final class PartColumns {
  private static final Set<String> DEGREES = Set.of("deg", "degrees", "degree", "d", "dd");
  private static final List<Set<String>> BEHIND_DEGREES =
      List.of(
          Set.of("min", "minutes", "minute", "mn", "m", "mm"),
          Set.of("sec", "seconds", "second", "s", "ss"),
          Set.of("dir", "hemisphere", "hemi", "ns", "ew"));
  private static final Set<String> LATITUDE = Set.of("lat", "latitude");
  private static final Set<String> LONGITUDE = Set.of("lon", "long", "lng", "longitude");
  private static final Set<String> WEST = Set.of("w", "west", "westing", "ouest", "oeste");
  private static final Set<String> FEET = Set.of("ft", "feet", "foot");
  private static final Set<String> INCHES = Set.of("in", "inch", "inches");

  private PartColumns() {}

  /** The guesses, parts brought together. */
  static List<ColumnGuess> joined(Catalogue catalogue, List<ColumnGuess> guesses) {
    List<ColumnGuess> all = new ArrayList<>(guesses);
    for (int i = 0; i < all.size(); i++) {
      position(catalogue, all, i);
      ColumnGuess guess = all.get(i);
      @Nullable Entry entry = guess.entry();
      String last = last(guess);
      if (entry == null) {
        continue;
      }
      if (isPosition(entry) && DEGREES.contains(last)) {
        join(all, i, "degrees", BEHIND_DEGREES);
      } else if (FEET.contains(last)) {
        join(all, i, "feet and inches", List.of(INCHES));
      }
      if (isPosition(entry) && all.get(i).joined().isEmpty() && isWhole(guess.survey())) {
        all.set(i, all.get(i).withDoubt("whole degrees only: where are the minutes?"));
      }
      if (entry.key().endsWith("longitude") && !saysSide(all, i)) {
        all.set(
            i,
            all.get(i)
                .withDoubt(
                    WEST.contains(last)
                        ? "its name says west, but its figures are read as east until the line says"
                            + " \"scale\": -1"
                        : "nothing states east or west, so it is read as east; where it is west, add"
                            + " \"scale\": -1"));
      }
    }
    return all;
  }

  /** {@code LAT_D} beside {@code LAT_M}: the letters may be units elsewhere. */
  private static void position(Catalogue catalogue, List<ColumnGuess> all, int at) {
    List<String> words = words(all.get(at));
    if (all.get(at).entry() != null
        || words.size() != 2
        || !DEGREES.contains(words.get(1))
        || at + 1 == all.size()
        || !isBeside(all.get(at), all.get(at + 1))
        || !BEHIND_DEGREES.get(0).contains(last(all.get(at + 1)))) {
      return;
    }
    String key =
        LATITUDE.contains(words.get(0))
            ? "site.latitude"
            : LONGITUDE.contains(words.get(0)) ? "site.longitude" : "";
    boolean free =
        all.stream()
            .map(ColumnGuess::entry)
            .noneMatch(entry -> entry != null && entry.key().equals(key));
    if (!key.isEmpty() && free) {
      all.set(at, all.get(at).of(catalogue.entry(catalogue.index(key))));
    }
  }

  private static void join(List<ColumnGuess> all, int first, String how, List<Set<String>> behind) {
    List<String> names = new ArrayList<>();
    int at = first + 1;
    for (Set<String> marks : behind) {
      if (at < all.size()
          && isBeside(all.get(first), all.get(at))
          && marks.contains(last(all.get(at)))) {
        names.add(all.get(at).survey().name());
        all.set(at, all.get(at).joinedTo(all.get(first).survey().name()));
        at++;
      }
    }
    if (!names.isEmpty()) {
      all.set(first, all.get(first).withJoined(how, names));
    }
  }

  private static boolean isPosition(Entry entry) {
    return entry.key().endsWith("latitude") || entry.key().endsWith("longitude");
  }

  /** True of degrees of which one is negative or has a letter, be it in a column beside them. */
  private static boolean saysSide(List<ColumnGuess> all, int at) {
    ColumnSurvey degrees = all.get(at).survey();
    if (!(degrees.least() >= 0)) {
      return true;
    }
    return all.subList(at, at + 1 + all.get(at).joined().size()).stream()
        .flatMap(part -> part.survey().texts().keySet().stream())
        .anyMatch(text -> text.chars().anyMatch(Character::isLetter));
  }

  private static boolean isWhole(ColumnSurvey column) {
    double[] numbers = column.numbers();
    return numbers.length > 1 && Arrays.stream(numbers).allMatch(n -> n == Math.rint(n));
  }

  /** True if the names differ in their last word only. */
  private static boolean isBeside(ColumnGuess one, ColumnGuess other) {
    List<String> a = words(one);
    List<String> b = words(other);
    return a.size() == b.size() && a.subList(0, a.size() - 1).equals(b.subList(0, b.size() - 1));
  }

  private static String last(ColumnGuess guess) {
    List<String> words = words(guess);
    return words.size() < 2 ? "" : words.get(words.size() - 1);
  }

  private static List<String> words(ColumnGuess guess) {
    String name = guess.survey().name().replaceAll("([a-z])([A-Z])", "$1 $2");
    List<String> words = new ArrayList<>();
    for (String word : name.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+", -1)) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    return words;
  }
}
