package org.wellcurb.quantity;

/** A text, and the finding of words and signs in it without regard to case. */
final class Words {
  private final String text;

  Words(String text) {
    this.text = text;
  }

  int length() {
    return text.length();
  }

  char at(int index) {
    return text.charAt(index);
  }

  /** The first place from here that is not blank. */
  int skip(int from) {
    int at = from;
    while (at < text.length() && Glyphs.isBlank(text.charAt(at))) {
      at++;
    }
    return at;
  }

  /** The place behind the first of these that stands here, blanks passed; -1 if none does. */
  int any(String[] candidates, int from) {
    int end = end(candidates, from);
    return end < 0 ? -1 : skip(end);
  }

  /** The same for words that may be shortened: a dot right behind one belongs to it. */
  int anyShortened(String[] candidates, int from) {
    int end = end(candidates, from);
    if (end < 0) {
      return -1;
    }
    boolean dot =
        end < text.length() && text.charAt(end) == '.' && Character.isLetter(text.charAt(end - 1));
    return skip(dot ? end + 1 : end);
  }

  private int end(String[] candidates, int from) {
    int at = skip(from);
    for (String candidate : candidates) {
      int end = at + candidate.length();
      if (text.regionMatches(true, at, candidate, 0, candidate.length())
          && !(isWord(candidate) && end < text.length() && Character.isLetter(text.charAt(end)))) {
        return end;
      }
    }
    return -1;
  }

  /** True if one of these is all that is left. */
  boolean isLast(String[] candidates, int from) {
    return anyShortened(candidates, from) == text.length();
  }

  private static boolean isWord(String candidate) {
    return Character.isLetter(candidate.charAt(candidate.length() - 1));
  }
}
