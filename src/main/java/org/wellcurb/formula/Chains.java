package org.wellcurb.formula;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.formula.Lexer.Kind;
import org.wellcurb.formula.Lexer.Token;

/**
 * What a text says in one breath and the language in two conditions: an amount between two signs,
 * and two words after one entry. Told as what they are, and read over, so that reading goes on.
 */
final class Chains {
  private Chains() {}

  /**
   * {@code 20 ft < well.depth < 300 ft}.
   *
   * @param end where the last part ends
   */
  static FormulaException ofSigns(
      String text, Parser.Part first, Token sign, Parser.Part middle, Token next, int end) {
    String shared = text.substring(middle.from().from(), next.from()).strip();
    return Tokens.error(
        next,
        "a second comparison hangs on the first",
        "write "
            + text.substring(first.from().from(), sign.from())
            + sign.text()
            + " "
            + shared
            + " and "
            + shared
            + " "
            + text.substring(next.from(), end).strip());
  }

  /**
   * {@code well.use is 'household' or 'irrigation'}: takes the words after the first.
   *
   * @param shown the words before them
   * @param last the last token before them
   * @return the last token of them all
   */
  static Token ofWords(
      Parser.Part entry,
      Tokens tokens,
      List<String> shown,
      boolean isNegated,
      Token last,
      List<FormulaException> faults) {
    Token first = tokens.ahead(1);
    List<String> all = new ArrayList<>(shown);
    boolean isAnd = tokens.peek().is("and");
    Token end = last;
    while (isWord(tokens)) {
      tokens.next();
      end = tokens.next();
      all.add(end.text());
    }
    if (!end.equals(last)) {
      String list = "'" + String.join("', '", all) + "'";
      faults.add(
          Tokens.error(
              first,
              "a second word hangs on one comparison",
              isAnd && !isNegated
                  ? "no entry is both; for either of them write " + one(entry, false, list)
                  : "write " + one(entry, isNegated, list)));
    }
    return end;
  }

  private static String one(Parser.Part entry, boolean isNegated, String list) {
    return entry.from().text() + (isNegated ? " is not one of " : " is one of ") + list;
  }

  /** True if a word in quotes is joined on, and is not what another comparison begins with. */
  private static boolean isWord(Tokens tokens) {
    boolean isJoined = tokens.peek().is("and") || tokens.peek().is("or");
    Token after = tokens.ahead(2);
    return isJoined
        && tokens.ahead(1).kind() == Kind.TEXT
        && !after.is("is")
        && !after.is("=")
        && !after.is("<>");
  }
}
