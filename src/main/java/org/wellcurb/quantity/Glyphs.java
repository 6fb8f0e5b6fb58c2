package org.wellcurb.quantity;

/**
 * Brings the many shapes of one sign to a single one before a number is read: blanks, minus signs,
 * quotes, digits. Nothing is dropped from the middle of a text: a control character becomes a
 * blank, so that two numbers never grow together.
 */
final class Glyphs {
  /** A blank that does not break a line: it may separate thousands. */
  static final char FIXED_BLANK = '\u00A0';

  private Glyphs() {}

  /** The text with its signs made alike and its outer blanks removed. */
  static String plain(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      out.append(plain(text.charAt(i)));
    }
    return trim(out.toString());
  }

  /** The text without one leading apostrophe, by which a spreadsheet marks a cell as text. */
  static String withoutMark(String plain) {
    return plain.length() > 1 && plain.charAt(0) == '\'' ? trim(plain.substring(1)) : plain;
  }

  /** The text without outer blanks. */
  static String trim(String text) {
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

  static boolean isBlank(char c) {
    return c == ' ' || c == FIXED_BLANK;
  }

  private static char plain(char c) {
    if (c > ' ' && c < 0x7F) {
      return c == '`' ? '\'' : c;
    }
    return switch (c) {
      case '\u00A0', '\u2007', '\u2009', '\u202F' -> FIXED_BLANK;
      case '\u2010',
          '\u2011',
          '\u2012',
          '\u2013',
          '\u2014',
          '\u2015',
          '\u2212',
          '\uFE58',
          '\uFE63',
          '\uFF0D' ->
          '-';
      case '\u2018', '\u2019', '\u201A', '\u201B', '\u02BC', '\u2032', '\u00B4', '\uFF07' -> '\'';
      case '\u201C', '\u201D', '\u201E', '\u201F', '\u2033', '\u02DD', '\uFF02' -> '"';
      case '\u2044', '\u2215', '\uFF0F' -> '/';
      case '\u00B2' -> '2';
      case '\u00B3' -> '3';
      case '\u00B5' -> '\u03BC';
      case '\u2126' -> '\u03A9';
      case '\u00BA', '\u02DA' -> '\u00B0';
      case '\uFF0C' -> ',';
      case '\uFF0E' -> '.';
      case '\u2248', '\u223C', '\uFF5E' -> '~';
      case '\uFF1C' -> '<';
      case '\uFF1E' -> '>';
      default -> other(c);
    };
  }

  private static char other(char c) {
    if (c >= '\uFF10' && c <= '\uFF19') {
      return (char) (c - '\uFF10' + '0');
    }
    boolean unseen =
        Character.isISOControl(c)
            || Character.isWhitespace(c)
            || Character.isSpaceChar(c)
            || Character.getType(c) == Character.FORMAT;
    return unseen ? ' ' : c;
  }
}
