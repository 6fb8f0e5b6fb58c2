package org.wellcurb.record;

import java.text.Normalizer;
import java.util.Locale;

/**
 * One form of a name, such as a licence or a zone, for all that count or look up by it: written in
 * either case, with blanks around it or several of them within, composed or decomposed (Unicode
 * Standard Annex 15, form NFC), it is one name.
 */
public final class NameFold {
  private NameFold() {}

  /** The form that is compared; never shown. Empty for a name of blanks only. */
  public static String of(String name) {
    if (isFolded(name)) {
      return name;
    }
    return isPlain(name) ? name.toLowerCase(Locale.ROOT) : folded(name);
  }

  /** True if both are one name. */
  public static boolean same(String one, String other) {
    if (one.equals(other)) {
      return true;
    }
    return (isPlain(one) && isPlain(other))
        ? one.equalsIgnoreCase(other)
        : of(one).equals(of(other));
  }

  /** True of what is all ASCII, without capitals, without blanks: most names, once folded. */
  private static boolean isFolded(String name) {
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (c <= ' ' || c >= 0x7F || (c >= 'A' && c <= 'Z')) {
        return false;
      }
    }
    return true;
  }

  /** True of what is all ASCII without blanks: only the case of its letters may differ. */
  private static boolean isPlain(String name) {
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (c <= ' ' || c >= 0x7F) {
        return false;
      }
    }
    return true;
  }

  private static String folded(String name) {
    // Lower case may decompose a letter, so it is composed after, not before.
    String composed =
        Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFC)
            .toLowerCase(Locale.ROOT);
    StringBuilder out = new StringBuilder(composed.length());
    boolean blank = false;
    for (int i = 0; i < composed.length(); i++) {
      char c = composed.charAt(i);
      if (c == '\u200B' || c == '\uFEFF') {
        continue;
      }
      if (c <= ' ' || Character.isWhitespace(c) || Character.isSpaceChar(c)) {
        blank = out.length() > 0;
        continue;
      }
      if (blank) {
        out.append(' ');
        blank = false;
      }
      out.append(c);
    }
    return out.toString();
  }
}
