package org.wellcurb.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Lexer.Kind;
import org.wellcurb.formula.Lexer.Token;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Nearest;

/** Words to compare with that were written without their quotes. */
final class BareWord {
  private BareWord() {}

  /**
   * Refuses words that stand here without quotes; whatever may be the name of something is left.
   *
   * @param word what they are compared with
   * @param mend what would mend it, up to the word in quotes
   */
  static void refuse(Expr.Word word, String mend, Tokens tokens) throws FormulaException {
    List<Token> run = new ArrayList<>();
    for (Token token = tokens.peek(); isBare(token); token = tokens.ahead(run.size())) {
      run.add(token);
    }
    if (run.isEmpty()) {
      return;
    }
    @Nullable Entry entry =
        word instanceof Expr.EntryWord of && !of.entry().choices().isEmpty() ? of.entry() : null;
    int count = run.size();
    while (count > 1 && entry != null && entry.choice(joined(run, count)) < 0) {
      count--;
    }
    String written = joined(run, count);
    @Nullable String meant =
        entry == null || entry.choice(written) >= 0
            ? written
            : Nearest.of(joined(run, run.size()).toLowerCase(Locale.ROOT), entry.choices());
    throw new FormulaException(
        run.get(0).from(),
        run.get(count - 1).to(),
        written + " stands without quotes",
        meant == null && entry != null
            ? "the choices are " + String.join(", ", entry.choices())
            : mend + "'" + meant + "'");
  }

  private static boolean isBare(Token token) {
    return token.kind() == Kind.NAME
        && !token.text().contains(".")
        && !token.text().equals("layers")
        && !Lexer.isWord(token.text());
  }

  private static String joined(List<Token> run, int count) {
    return String.join(" ", run.subList(0, count).stream().map(Token::text).toList());
  }
}
