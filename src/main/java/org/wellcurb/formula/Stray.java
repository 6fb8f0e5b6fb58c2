package org.wellcurb.formula;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Lexer.Kind;
import org.wellcurb.formula.Lexer.Token;

/**
 * A mark that has no meaning in a formula, and what it was probably meant for: reading goes on with
 * that, so that the faults behind it are told at once.
 *
 * @param mend what to write in its place
 * @param meant what is read in its place; none where it is passed over
 * @param to character after the last that it takes the place of
 * @param isSure false where what stands behind it may come out as faulty because of it
 */
record Stray(String mend, List<Token> meant, int to, boolean isSure) {
  private static final String STRAIGHT = "\"";
  private static final String CURLY = "‘’‚“”„«»";

  /** The mark that stands at this place. */
  static Stray at(String text, int at) {
    char c = text.charAt(at);
    boolean isAfterUnit = c == '.' && at > 0 && Character.isLetter(text.charAt(at - 1));
    if (isAfterUnit) {
      return new Stray("take it away: a unit has no point after it", List.of(), at + 1, true);
    }
    return switch (c) {
      case '!' -> unequal(text, at);
      case '&' -> word("write and", "and", text, at);
      case '|' -> word("write or", "or", text, at);
      case '.' -> new Stray("begin a number with a digit, such as 0.5", List.of(), at + 1, true);
      case '[', ']' ->
          sign(
              "write the figure of the other system in round brackets: 50 ft (15 m)",
              c == '[' ? "(" : ")",
              at);
      case '≥' -> sign("write >=", ">=", at);
      case '≤' -> sign("write <=", "<=", at);
      case '≠' -> unequalSign(text, at, at + 1, "write <> for amounts, is not for words");
      case '−', '–' -> sign("write -", "-", at);
      case '×', '·' -> sign("write *", "*", at);
      case '÷' -> sign("write /", "/", at);
      default -> other(text, at);
    };
  }

  private static Stray other(String text, int at) {
    char c = text.charAt(at);
    if (STRAIGHT.indexOf(c) >= 0) {
      return quoted("put words in single quotes", STRAIGHT, text, at);
    }
    return CURLY.indexOf(c) >= 0
        ? quoted("write ' in place of it, at both ends", CURLY, text, at)
        : new Stray("take it out", List.of(), at + 1, false);
  }

  private static Stray sign(String mend, String sign, int at) {
    return new Stray(
        mend, List.of(new Token(Kind.SIGN, sign, at, at + 1, null)), at + 1, /* isSure= */ true);
  }

  /** A word for a mark that may be doubled. */
  private static Stray word(String mend, String word, String text, int at) {
    int to = at + 1;
    while (to < text.length() && text.charAt(to) == text.charAt(at)) {
      to++;
    }
    return new Stray(mend, List.of(new Token(Kind.NAME, word, at, at + 1, null)), to, true);
  }

  private static Stray unequal(String text, int at) {
    String mend = "write <> for not equal, or not";
    boolean isEqual = at + 1 < text.length() && text.charAt(at + 1) == '=';
    return isEqual
        ? unequalSign(text, at, at + 2, mend)
        : new Stray(mend, List.of(new Token(Kind.NAME, "not", at, at + 1, null)), at + 1, true);
  }

  /** Not equal: of a word in quotes that is said in words. */
  private static Stray unequalSign(String text, int at, int to, String mend) {
    List<Token> meant =
        text.substring(to).stripLeading().startsWith("'")
            ? List.of(
                new Token(Kind.NAME, "is", at, to, null), new Token(Kind.NAME, "not", at, to, null))
            : List.of(new Token(Kind.SIGN, "<>", at, to, null));
    return new Stray(mend, meant, to, true);
  }

  /** A word in other quotes than the language has, up to the next of them. */
  private static Stray quoted(String mend, String marks, String text, int at) {
    int end = at + 1;
    while (end < text.length() && marks.indexOf(text.charAt(end)) < 0) {
      end++;
    }
    boolean isClosed = end < text.length();
    @Nullable Token word =
        isClosed ? new Token(Kind.TEXT, text.substring(at + 1, end), at, end + 1, null) : null;
    return new Stray(
        mend, word == null ? List.of() : List.of(word), isClosed ? end + 1 : end, isClosed);
  }
}
