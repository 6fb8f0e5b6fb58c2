package org.wellcurb.intake;

/**
 * A header cell: a key with an optional unit in brackets, {@code pump.intake_depth [ft]}.
 *
 * @param key without outer blanks
 * @param unit what stands in the brackets; empty where there are none
 */
record HeaderKey(String key, String unit) {

  static HeaderKey of(String cell) {
    String text = strip(cell);
    int open = text.lastIndexOf('[');
    if (open > 0 && text.endsWith("]")) {
      return new HeaderKey(
          strip(text.substring(0, open)), strip(text.substring(open + 1, text.length() - 1)));
    }
    return new HeaderKey(text, "");
  }

  /** The text without outer blanks of any kind, and without a byte order mark. */
  static String strip(String text) {
    int from = 0;
    int to = text.length();
    while (from < to && isBlank(text.charAt(from))) {
      from++;
    }
    while (to > from && isBlank(text.charAt(to - 1))) {
      to--;
    }
    return text.substring(from, to);
  }

  private static boolean isBlank(char c) {
    return c <= ' '
        || Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || c == '\uFEFF'
        || c == '\u200B';
  }
}
