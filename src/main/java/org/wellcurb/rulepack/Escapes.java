package org.wellcurb.rulepack;

/** Finds the place in the file of a character of a JSON text, escapes included. */
final class Escapes {
  private Escapes() {}

  /**
   * The place in the file of the character with this number.
   *
   * @param file the text of the file
   * @param start place after the opening quote
   * @param number number of the character in the text as read, from 0
   * @return its place; that of the closing quote if the text is not so long
   */
  static int offset(String file, int start, int number) {
    int at = start;
    for (int i = 0; i < number && at < file.length() && file.charAt(at) != '"'; i++) {
      at += width(file, at);
    }
    return Math.min(at, file.length());
  }

  /** The place of the quote that closes the text which opens here. */
  static int closing(String file, int openingQuote) {
    int at = openingQuote + 1;
    while (at < file.length() && file.charAt(at) != '"') {
      at += width(file, at);
    }
    return Math.min(at, file.length());
  }

  private static int width(String file, int at) {
    if (file.charAt(at) != '\\') {
      return 1;
    }
    return at + 1 < file.length() && file.charAt(at + 1) == 'u' ? 6 : 2;
  }
}
