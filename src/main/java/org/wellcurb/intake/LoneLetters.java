package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Kind;

/**
 * Letters that stand alone in a header. {@code D} may be a depth, a diameter, a distance or days:
 * each is tried, and what stands in the column has to agree.
 */
final class LoneLetters {
  /** Letters that are a unit only beside such words: {@code TANK_L}, but no litres of wire. */
  private static final Map<String, Set<String>> UNITS =
      Map.of(
          "a",
          Set.of(
              "current",
              "courant",
              "amperage",
              "running",
              "motor",
              "moteur",
              "fl",
              "sf",
              "load",
              "breaker",
              "brkr",
              "bkr",
              "fuse",
              "svc",
              "service"),
          "l",
          Set.of(
              "tank",
              "tnk",
              "volume",
              "vol",
              "capacity",
              "storage",
              "cistern",
              "reservoir",
              "reserv",
              "acceptance",
              "dose",
              "water",
              "eau"),
          "w",
          Set.of("power", "motor", "moteur", "puissance", "puiss", "pump", "pmp"),
          "d",
          Set.of("age", "duration", "days"));

  /** What the last word of a header may be short for. */
  private static final Map<String, List<String>> LAST =
      Map.ofEntries(
          Map.entry("d", List.of("depth", "diameter", "distance")),
          Map.entry("l", List.of("length", "level")),
          Map.entry("t", List.of("top", "type")),
          Map.entry("b", List.of("bottom")),
          Map.entry("n", List.of("number")),
          Map.entry("w", List.of("water")),
          Map.entry("id", List.of("inside diameter")),
          Map.entry("od", List.of("outside diameter")),
          Map.entry("wt", List.of("wall thickness", "weight")),
          Map.entry("len", List.of("length")));

  /** What the first may be. */
  private static final Map<String, List<String>> FIRST =
      Map.ofEntries(
          Map.entry("d", List.of("distance", "depth", "diameter")),
          Map.entry("t", List.of("total", "top", "test")),
          Map.entry("b", List.of("bottom", "bore")),
          Map.entry("c", List.of("casing")),
          Map.entry("g", List.of("grout")),
          Map.entry("s", List.of("static", "screen")),
          Map.entry("p", List.of("pump", "pumping")),
          Map.entry("w", List.of("well", "water")),
          Map.entry("v", List.of("voltage")),
          Map.entry("a", List.of("current")));

  private LoneLetters() {}

  /** False if the last part of a header is a letter that is no unit beside the others. */
  static boolean mayBeUnit(List<String> parts) {
    Set<String> beside = UNITS.get(parts.get(parts.size() - 1).toLowerCase(Locale.ROOT));
    return beside == null
        || parts.stream().anyMatch(part -> beside.contains(part.toLowerCase(Locale.ROOT)));
  }

  /** An L behind a name, by itself: in brackets, or as a word, it would be a unit. */
  private static final Pattern BARE_L = Pattern.compile("(?i).*[^\\p{L}(\\[/]L$");

  /**
   * True if nothing but a letter says litres, in a table whose other units are US ones: {@code
   * TANK_L} may be gallons, too.
   */
  static boolean mayBeNoLitres(String name, ColumnMatch match, UnitSystem most) {
    return match.entry().kind() == Kind.VOLUME
        && most == UnitSystem.US
        && match.header().unit() != null
        && BARE_L.matcher(HeaderKey.strip(name)).matches();
  }

  /** The header with what its first or last letters may stand for; none if it has none. */
  static List<HeaderWords> readings(HeaderWords header) {
    List<String> words = header.words();
    if (words.size() < 2) {
      return List.of();
    }
    List<HeaderWords> all = new ArrayList<>();
    List<String> before = words.subList(0, words.size() - 1);
    for (String last : LAST.getOrDefault(words.get(words.size() - 1), List.of())) {
      List<String> read = new ArrayList<>(before);
      read.addAll(List.of(last.split(" ", -1)));
      all.add(new HeaderWords(read, header.unit()));
    }
    for (String first : FIRST.getOrDefault(words.get(0), List.of())) {
      List<String> read = new ArrayList<>(List.of(first));
      read.addAll(words.subList(1, words.size()));
      all.add(new HeaderWords(read, header.unit()));
    }
    return all;
  }
}
