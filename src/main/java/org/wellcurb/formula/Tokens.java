package org.wellcurb.formula;

import java.util.List;
import java.util.Set;
import org.wellcurb.formula.Lexer.Kind;
import org.wellcurb.formula.Lexer.Token;

/** The tokens of a formula, taken one by one; the last, its end, stays. */
final class Tokens {
  /** Words that join or compare what stands beside them, and so begin nothing. */
  private static final Set<String> JOINING =
      Set.of("and", "or", "is", "one", "of", "between", "then", "else");

  /** Words before which a part of a condition ends. */
  private static final Set<String> ENDING = Set.of("and", "or", "then", "else");

  private final List<Token> all;
  private int at;

  Tokens(Lexer lexer) {
    all = lexer.tokens();
  }

  /** The token at hand. */
  Token peek() {
    return all.get(at);
  }

  /** The token after the one at hand, which must not be the end. */
  Token second() {
    return all.get(at + 1);
  }

  /** The token so many after the one at hand, or the end. */
  Token ahead(int count) {
    return all.get(Math.min(at + count, all.size() - 1));
  }

  /** How many tokens were taken. */
  int taken() {
    return at;
  }

  /**
   * Goes on behind the part of an {@code and} or {@code or} that began after so many tokens: at the
   * word that joins it to the next, at the bracket that closes around it, or at the end.
   */
  void passPart(int start) {
    int brackets = 0;
    int betweens = 0;
    int ifs = 0;
    for (at = start; peek().kind() != Kind.END; at++) {
      Token token = peek();
      if (token.is("(")) {
        brackets++;
      } else if (token.is(")")) {
        if (brackets-- == 0) {
          return;
        }
      } else if (brackets == 0) {
        boolean isOwnAnd = token.is("and") && betweens > 0;
        if (ifs == 0 && !isOwnAnd && ENDING.contains(token.text()) && token.kind() == Kind.NAME) {
          return;
        }
        betweens += token.is("between") ? 1 : isOwnAnd ? -1 : 0;
        ifs += token.is("if") ? 1 : token.is("else") ? -1 : 0;
      }
    }
  }

  /** Takes the token at hand. */
  Token next() {
    Token token = peek();
    if (at < all.size() - 1) {
      at++;
    }
    return token;
  }

  /** Takes the token at hand if it is this word or sign. */
  boolean take(String word) {
    if (peek().is(word)) {
      at++;
      return true;
    }
    return false;
  }

  /**
   * Takes this word or sign.
   *
   * @throws FormulaException where something else stands
   */
  Token expect(String word) throws FormulaException {
    Token token = peek();
    if (!token.is(word)) {
      String found =
          token.kind() == Kind.END ? "the formula ends" : "'" + token.text() + "' stands";
      throw error(token, found + " where " + word + " must", "write " + word + " here");
    }
    return next();
  }

  /** True of a word that joins or compares what stands beside it, and so begins nothing. */
  static boolean isJoining(Token token) {
    return JOINING.contains(token.text());
  }

  /** That a token is wrong, and what would mend it. */
  static FormulaException error(Token token, String what, String mend) {
    return new FormulaException(token.from(), token.to(), what, mend);
  }
}
