package org.wellcurb.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds units by their spellings, without allocation: a tree of letters.
 *
 * <p>Dots and the number of blanks do not count ({@code U.S. gal}, {@code ft.}), nor does case, but
 * where it would change the meaning: a spelling of one letter that is a prefix too ({@code m},
 * {@code g}, {@code s}, {@code d}, {@code h}) is read as it stands only, and the first letter of
 * those that begin with milli or mega must be right ({@code mohm} is not {@code Mohm}).
 */
final class UnitNames {
  private static final int LETTERS = 128;
  private static final int NONE = -1;
  private static final UnitNames STANDARD = new UnitNames(Units.all());

  private final List<short[]> next = new ArrayList<>();
  private short[][] nodes = new short[0][];
  private byte[] unit = new byte[64];
  private char[] mustStart = new char[64];

  private UnitNames(List<Unit> units) {
    grow();
    for (Unit u : units) {
      add(u.symbol(), u);
      for (String alias : u.aliases()) {
        add(alias, u);
        if (alias.indexOf('/') > 0) {
          add(alias.replace("/", " per "), u);
        }
      }
    }
    nodes = next.toArray(new short[0][]);
  }

  /** The unit that the whole of {@code source[from, to)} (ASCII) spells; null if none does. */
  static @Nullable Unit find(byte[] source, int from, int to) {
    return STANDARD.walk(source, from, to);
  }

  /** The unit that the whole text spells; null if none does. */
  static @Nullable Unit find(String text) {
    int found = longest(text, 0);
    return found >= 0 && end(found) == text.length() ? unit(found) : null;
  }

  /**
   * The longest spelling of a unit at {@code from} that does not end inside a word or a number: see
   * {@link #end} and {@link #unit}; negative if there is none.
   */
  static int longest(CharSequence text, int from) {
    return STANDARD.walk(text, from);
  }

  /** Where the spelling found ends. */
  static int end(int found) {
    return found >> 8;
  }

  /** The unit found. */
  static Unit unit(int found) {
    return Units.at(found & 0xFF);
  }

  private @Nullable Unit walk(byte[] source, int from, int to) {
    int node = 0;
    int last = 0;
    boolean blank = false;
    for (int i = from; i < to; i++) {
      int c = source[i];
      if (c == '.' && i > from && !(i + 1 < to && Character.isDigit(source[i + 1]))) {
        continue;
      }
      if (c == ' ') {
        blank = true;
        continue;
      }
      int letter = c < 0 ? NONE : c >= 'A' && c <= 'Z' ? c + 32 : c;
      if (blank && i > from && last != '/' && letter != '/') {
        node = step(node, ' ');
      }
      blank = false;
      node = step(node, letter);
      last = letter;
    }
    int id = node < 0 ? NONE : unit[node];
    return id < 0 || !startsRight(node, (char) source[from]) ? null : Units.at(id);
  }

  private int walk(CharSequence text, int from) {
    int node = 0;
    int last = 0;
    int found = NONE;
    boolean blank = false;
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '.' && i > from && !isDigit(text, i + 1)) {
        found = found >= 0 && end(found) == i ? found + (1 << 8) : found;
        continue;
      }
      if (Glyphs.isBlank(c)) {
        blank = true;
        continue;
      }
      int letter = fold(c);
      if (blank && i > from && last != '/' && letter != '/') {
        node = step(node, ' ');
      }
      blank = false;
      node = step(node, letter);
      last = letter;
      if (node < 0) {
        break;
      }
      if (unit[node] >= 0
          && startsRight(node, text.charAt(from))
          && endsThere(c, i + 1 < text.length() ? text.charAt(i + 1) : ' ')) {
        found = ((i + 1) << 8) | unit[node];
      }
    }
    return found;
  }

  private static boolean isDigit(CharSequence text, int at) {
    return at < text.length() && Character.isDigit(text.charAt(at));
  }

  private int step(int node, int letter) {
    return node < 0 || letter < 0 ? NONE : nodes[node][letter];
  }

  private boolean startsRight(int node, char first) {
    return mustStart[node] == 0 || mustStart[node] == first;
  }

  /** True unless the next character goes on with the same word or number. */
  private static boolean endsThere(char c, char following) {
    if (Character.isLetter(following)) {
      return !Character.isLetterOrDigit(c);
    }
    return !(Character.isDigit(following) && Character.isDigit(c));
  }

  private static int fold(char c) {
    if (c < LETTERS) {
      return c >= 'A' && c <= 'Z' ? c + 32 : c;
    }
    return switch (c) {
      case '\u03A9', '\u03C9' -> 1;
      case '\u03BC' -> 2;
      case '\u00B0' -> 3;
      default -> NONE;
    };
  }

  private void add(String name, Unit u) {
    if (name.isEmpty()) {
      return;
    }
    int node = 0;
    for (int i = 0; i < name.length(); i++) {
      int letter = fold(name.charAt(i));
      if (letter < 0) {
        throw new IllegalStateException("a spelling that cannot be read: " + name);
      }
      int following = next.get(node)[letter];
      if (following < 0) {
        following = grow();
        next.get(node)[letter] = (short) following;
      }
      node = following;
    }
    if (unit[node] >= 0 && unit[node] != u.id()) {
      throw new IllegalStateException("a spelling of two units: " + name);
    }
    unit[node] = (byte) u.id();
    mustStart[node] = caseMatters(name) ? name.charAt(0) : 0;
  }

  private static boolean caseMatters(String name) {
    return (name.length() == 1 && "mgsdh".contains(name))
        || name.startsWith("Mo")
        || name.startsWith("MPa")
        || name.startsWith("M\u03A9")
        || name.equals("mL")
        || name.startsWith("Go")
        || name.startsWith("G\u03A9");
  }

  private int grow() {
    short[] fresh = new short[LETTERS];
    Arrays.fill(fresh, (short) NONE);
    next.add(fresh);
    int node = next.size() - 1;
    if (node >= unit.length) {
      unit = Arrays.copyOf(unit, unit.length * 2);
      mustStart = Arrays.copyOf(mustStart, mustStart.length * 2);
    }
    unit[node] = NONE;
    return node;
  }
}
