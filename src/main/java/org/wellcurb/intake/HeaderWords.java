package org.wellcurb.intake;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Nearest;

/**
 * The words of a header: {@code TotDepth_FT} says total, depth, and its unit is ft. Capitals,
 * accents, separators and the usual abbreviations of the trade do not matter.
 *
 * @param words its words in lower case, abbreviations written out, in order
 * @param unit the unit that it states; null if it states none
 */
record HeaderWords(List<String> words, @Nullable Unit unit) {
  /** Words that say nothing by themselves. */
  private static final Set<String> EMPTY =
      Set.of(
          "of", "the", "in", "is", "de", "du", "la", "des", "cd", "code", "flg", "flag", "yn",
          "below", "bgl", "bgs", "btoc", "toc", "bmp", "mp");

  /** What a depth is measured from stands behind its unit: {@code STATIC_M_BGL}. */
  private static final Set<String> DATUMS =
      Set.of("bgl", "bgs", "btoc", "toc", "bmp", "agl", "below", "ags", "mp", "asl", "amsl");

  /** Units that are that in the midst of a header, too: {@code SWL ft below TOC}. */
  private static final Set<String> INSIDE = Set.of("ft", "feet", "psi", "kpa", "gpm", "lpm", "mm");

  /** Texts that are units in a header though they are words elsewhere. */
  private static final Map<String, String> UNITS =
      Map.ofEntries(
          Map.entry("feet", "ft"),
          Map.entry("inches", "in"),
          Map.entry("inch", "in"),
          Map.entry("metres", "m"),
          Map.entry("meters", "m"),
          Map.entry("mg", "mg/L"),
          Map.entry("ug", "ug/L"),
          Map.entry("mgl", "mg/L"),
          Map.entry("ugl", "ug/L"),
          Map.entry("utn", "NTU"));

  /** The first of several of a kind: {@code CSG1_DIA}, where the second may be any. */
  private static final Pattern FIRST =
      Pattern.compile("^(csg|csng|case|casing|scrn|screen|pmp|pump|grt|grout|liner)1$");

  /** A later one: it says another thing than the first, and what it is of. */
  private static final Pattern LATER =
      Pattern.compile("^(csg|csng|case|casing|scrn|screen|pmp|pump|grt|grout|liner)([2-9])$");

  /** A pressure switch cuts in and out: no inches there. */
  private static final Pattern CUT = Pattern.compile("(?i)\\bcut[ _.-]?(in|out)(?![A-Za-z])");

  static HeaderWords of(String header) {
    String plain =
        Normalizer.normalize(HeaderKey.strip(header), Normalizer.Form.NFD)
            .replaceAll("[\\p{M}'’.]", "")
            .replaceAll("(?<=[a-z]{2})(?=[A-Z])", " ");
    plain = CUT.matcher(plain.replace('_', ' ')).replaceAll("cut$1");
    @Nullable Unit unit = bracketed(plain);
    List<String> parts = new ArrayList<>();
    for (String part : plain.split("[^A-Za-z0-9/]+", -1)) {
      if (!part.isEmpty()) {
        parts.add(part);
      }
    }
    // MG_L, GAL_MIN: no slash may stand in a name.
    @Nullable Unit ratio = parts.size() < 3 ? null : ratio(parts);
    if (unit == null && ratio != null) {
      unit = ratio;
      parts.subList(parts.size() - 2, parts.size()).clear();
    }
    String last = parts.isEmpty() ? "" : parts.get(parts.size() - 1);
    if (unit == null && parts.size() > 1 && LoneLetters.mayBeUnit(parts)) {
      unit = unit(last);
    }
    int before = parts.size() - 2;
    if (unit == null
        && before > 0
        && DATUMS.contains(parts.get(before + 1).toLowerCase(Locale.ROOT))) {
      unit = unit(parts.get(before));
    }
    for (int i = 0; i < parts.size() && parts.size() > 1 && unit == null; i++) {
      unit = INSIDE.contains(parts.get(i).toLowerCase(Locale.ROOT)) ? unit(parts.get(i)) : null;
    }
    List<String> words = new ArrayList<>();
    for (String part : parts) {
      String lower = part.toLowerCase(Locale.ROOT);
      boolean isUnit = unit != null && unit.equals(unit(part)) && parts.size() > 1;
      // BGS below ground surface, but sacks beside GRT.
      boolean areBags = lower.equals("bgs") && words.equals(List.of("grout"));
      if (areBags) {
        words.add("bags");
      } else if (!isUnit && !EMPTY.contains(lower)) {
        String bare = FIRST.matcher(lower).replaceAll("$1");
        Matcher later = LATER.matcher(bare);
        String name = later.matches() ? later.group(1) : bare;
        words.addAll(List.of(Abbreviations.writtenOut(name).split(" ", -1)));
        if (later.matches()) {
          words.add(later.group(2));
        }
      }
    }
    return new HeaderWords(words, unit);
  }

  private static @Nullable Unit ratio(List<String> parts) {
    String of = parts.get(parts.size() - 2);
    String by = parts.get(parts.size() - 1);
    return Units.named((of + "/" + by).toLowerCase(Locale.ROOT)).orElse(null);
  }

  private static @Nullable Unit bracketed(String header) {
    int open = Math.max(header.lastIndexOf('('), header.lastIndexOf('['));
    int close = Math.max(header.lastIndexOf(')'), header.lastIndexOf(']'));
    if (open < 0 || close < open) {
      return null;
    }
    // A datum may follow the unit: (m bgl), (ft below casing top).
    String inside = header.substring(open + 1, close).strip();
    @Nullable Unit unit = unit(inside);
    int blank = inside.indexOf(' ');
    return unit != null || blank < 0 ? unit : unit(inside.substring(0, blank));
  }

  private static @Nullable Unit unit(String text) {
    String known = UNITS.getOrDefault(text.toLowerCase(Locale.ROOT), text);
    Optional<Unit> unit = Units.named(known);
    return unit.isPresent() ? unit.get() : Units.named(known.toLowerCase(Locale.ROOT)).orElse(null);
  }

  /** Words that say what is measured of a thing, and not of which: a header may leave them out. */
  private static final Set<String> OF_ANY =
      Set.of(
          "distance",
          "to",
          "from",
          "at",
          "on",
          "set",
          "date",
          "depth",
          "profondeur",
          "number",
          "nb",
          "nombre",
          "level",
          "niveau",
          "type",
          "material",
          "diameter",
          "size",
          "length",
          "rate",
          "pressure",
          "volume",
          "value",
          "result",
          "test",
          "well",
          "water",
          "total",
          "by",
          "current",
          "voltage",
          "power",
          "concentration",
          "temperature",
          "dose",
          "hours",
          "time");

  /** Words that change nothing of what a header says. */
  private static final Set<String> BESIDE =
      Set.of(
          "well",
          "water",
          "lab",
          "result",
          "results",
          "measured",
          "reported",
          "value",
          "val",
          "reading",
          "sample",
          "analysis",
          "total",
          "test",
          "number",
          "units",
          "thou",
          "puits",
          "eau");

  /**
   * How much of this header and a phrase agree. Words of five letters and more may differ in one.
   *
   * @param slips the words that one may be a slip of; none for a word that is meant as it stands
   */
  Likeness likeness(List<String> phrase, Function<String, Set<String>> slips) {
    Set<Integer> taken = new HashSet<>();
    int common = 0;
    int telling = 0;
    boolean isPart = false;
    for (String word : phrase) {
      boolean isSaid = false;
      for (int i = 0; i < words.size() && !isSaid; i++) {
        isSaid =
            !taken.contains(i)
                && (word.equals(words.get(i)) || slips.apply(words.get(i)).contains(word));
        if (isSaid) {
          taken.add(i);
          common++;
          telling += OF_ANY.contains(word) ? 0 : 1;
        }
      }
      isPart |= !isSaid && !OF_ANY.contains(word);
    }
    boolean isMore = false;
    for (int i = 0; i < words.size(); i++) {
      isMore |= !taken.contains(i) && !BESIDE.contains(words.get(i));
    }
    double value = words.isEmpty() ? 0 : 2.0 * common / (words.size() + phrase.size());
    return new Likeness(value, value < 1 && (isPart || (isMore && (common < 2 || telling < 1))));
  }

  /**
   * How alike a header and a phrase are.
   *
   * @param value 1 where all words agree, 0 where none does
   * @param isWeak true where the header leaves out what tells the phrase from others, or has a word
   *     more and hardly one in common: {@code DIST_FOSSE} of a septic tank, {@code D_FIELD}
   */
  record Likeness(double value, boolean isWeak) {
    static final Likeness NONE = new Likeness(0, true);

    /** The better of two: what is sure goes before what is not. */
    Likeness or(Likeness other, double least) {
      boolean isSure = !isWeak && value >= least;
      boolean isOtherSure = !other.isWeak && other.value >= least;
      if (isSure != isOtherSure) {
        return isSure ? this : other;
      }
      return other.value > value ? other : this;
    }
  }

  static boolean isSlip(String a, String b) {
    return Math.min(a.length(), b.length()) >= 5
        && Math.abs(a.length() - b.length()) <= 1
        && Nearest.distance(a, b) <= 1;
  }
}
