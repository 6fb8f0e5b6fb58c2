package org.wellcurb.record;

import java.util.Locale;

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

  private static boolean isUnseen(char c) {
    return c <= ' '
        || (c >= 0x7F
            && (Character.isISOControl(c)
                || Character.isWhitespace(c)
                || Character.isSpaceChar(c)
                || Character.getType(c) == Character.FORMAT));
  }
}
