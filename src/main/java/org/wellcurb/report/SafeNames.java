package org.wellcurb.report;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Makes file names from texts that strangers wrote. A name holds only ASCII letters, digits, {@code
 * -}, {@code _} and single inner points, so that it cannot leave its folder or hide in it; no two
 * differ only in case; none is a name that some systems keep for devices. Given the same texts in
 * the same order it makes the same names.
 */
public final class SafeNames {
  private static final Set<String> DEVICES =
      Set.of(
          "con", "prn", "aux", "nul", "com0", "com1", "com2", "com3", "com4", "com5", "com6",
          "com7", "com8", "com9", "lpt0", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7",
          "lpt8", "lpt9");

  private final Set<String> taken = new HashSet<>();
  private final Map<String, Integer> last = new HashMap<>();

  /**
   * A name for this text that was not given before.
   *
   * @param ending put after it, such as {@code .html}
   */
  public String name(String text, String ending) {
    String safe = safe(text);
    String folded = safe.toLowerCase(Locale.ROOT);
    String name = safe + ending;
    while (!taken.add(name.toLowerCase(Locale.ROOT))) {
      name = safe + "-" + last.merge(folded, 2, (was, first) -> was + 1) + ending;
    }
    return name;
  }

  private static String safe(String text) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length() && out.length() < Cap.NAME_LETTERS.most(); i++) {
      char c = text.charAt(i);
      char last = out.isEmpty() ? '.' : out.charAt(out.length() - 1);
      if (isPlain(c)) {
        out.append(c);
      } else if (c == '.' && isPlain(last)) {
        out.append(c);
      } else if (last != '-' && last != '.') {
        out.append('-');
      }
    }
    while (!out.isEmpty() && (out.charAt(out.length() - 1) == '.' || endsWithDash(out))) {
      out.setLength(out.length() - 1);
    }
    if (out.isEmpty()) {
      return "record";
    }
    int point = out.indexOf(".");
    String stem = (point < 0 ? out.toString() : out.substring(0, point)).toLowerCase(Locale.ROOT);
    return DEVICES.contains(stem) ? "record-" + out : out.toString();
  }

  private static boolean isPlain(char c) {
    return c < 0x80 && (Character.isLetterOrDigit(c) || c == '_');
  }

  private static boolean endsWithDash(StringBuilder out) {
    return out.charAt(out.length() - 1) == '-';
  }
}
