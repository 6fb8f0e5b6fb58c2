package org.wellcurb.record;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The text of a cell: outer blanks, and the form in which texts are compared. */
final class CellText {
  private CellText() {}

  /** Without outer blanks, control characters and characters that do not show. */
  static String trim(String text) {
    int from = 0;
    int to = text.length();
    while (from < to && isUnseen(text.charAt(from))) {
      from++;
    }
    while (to > from && isUnseen(text.charAt(to - 1))) {
      to--;
    }
    return text.substring(from, to);
  }

  /** For comparison: lower case (root locale), without a spreadsheet's leading apostrophe. */
  static String fold(String trimmed) {
    boolean marked = trimmed.length() > 1 && trimmed.charAt(0) == '\'';
    return (marked ? trim(trimmed.substring(1)) : trimmed).toLowerCase(Locale.ROOT);
  }

  /**
   * The same of bytes whose outer blanks are off, if all of them are ASCII that shows and the first
   * is a letter or a figure; null for others, which want more thought.
   */
  static @Nullable String foldPlain(byte[] source, int from, int to) {
    byte first = source[from];
    boolean isName =
        (first >= '0' && first <= '9') || ((first | 0x20) >= 'a' && (first | 0x20) <= 'z');
    if (!isName) {
      return null;
    }
    byte[] folded = new byte[to - from];
    for (int i = from; i < to; i++) {
      byte b = source[i];
      if (b < ' ' || b == 0x7F) {
        return null;
      }
      folded[i - from] = (byte) (b >= 'A' && b <= 'Z' ? b + 32 : b);
    }
    return new String(folded, StandardCharsets.ISO_8859_1);
  }

  private static boolean isUnseen(char c) {
    return c <= ' '
        || (c >= 0x7F
            && (Character.isISOControl(c)
                || Character.isWhitespace(c)
                || Character.isSpaceChar(c)
                || Character.getType(c) == Character.FORMAT));
  }
}
