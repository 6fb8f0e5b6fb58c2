package org.wellcurb.formula;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Lexer.Kind;
import org.wellcurb.formula.Lexer.Token;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;

/**
 * Reads a limit of a formula: a number with its unit, and in brackets the same in the other unit
 * system. What is written in its place by mistake is refused with what would mend it.
 */
final class Limit {
  /** Of no one length. */
  private static final Set<String> SPANS = Set.of("month", "months", "year", "years");

  private static final Set<String> OF_WORK = Set.of("working", "business");

  private final Tokens tokens;

  private Limit(Tokens tokens) {
    this.tokens = tokens;
  }

  /** The limit that begins with the number at hand. */
  static Parser.Part read(Tokens tokens) throws FormulaException {
    return new Limit(tokens).read();
  }

  private Parser.Part read() throws FormulaException {
    Token token = tokens.next();
    double value = Double.parseDouble(token.text());
    refuseUnknownUnit(token);
    refuseThousands(token);
    if (tokens.peek().kind() == Kind.NUMBER) {
      throw Tokens.error(
          tokens.peek(), "two numbers stand here", "write one amount, such as 5.5 ft or 6.25 in");
    }
    Unit unit = token.unit() == null ? Units.ONE : token.unit();
    if (tokens.peek().is("of") && unit.dimension().equals(Dimension.NUMBER)) {
      throw Tokens.error(
          tokens.peek(),
          "'of' has no meaning here",
          "write a product, such as " + unit.toSi(value) + " * well.depth");
    }
    if (!tokens.peek().is("(") || tokens.second().kind() != Kind.NUMBER) {
      return new Parser.Part(new Expr.Literal(unit.toSi(value), unit), token, token);
    }
    tokens.next();
    Token inside = tokens.next();
    refuseUnknownUnit(inside);
    Token close = tokens.expect(")");
    @Nullable Unit other = inside.unit();
    if (other == null || !other.dimension().equals(unit.dimension())) {
      throw Tokens.error(
          inside,
          "the bracketed figure is "
              + (other == null ? "without a unit" : "a " + other.dimension().label())
              + ", the one before it a "
              + unit.dimension().label(),
          "give both in units of one dimension, such as 50 ft (15 m)");
    }
    if (unit.system() == other.system()
        || unit.system() == UnitSystem.NEUTRAL
        || other.system() == UnitSystem.NEUTRAL) {
      throw Tokens.error(
          inside,
          unit.symbol() + " and " + other.symbol() + " are not of two unit systems",
          "state the limit once in each system, such as 50 ft (15 m)");
    }
    return new Parser.Part(
        new Expr.Dual(unit.toSi(value), unit, other.toSi(Double.parseDouble(inside.text())), other),
        token,
        close);
  }

  /** {@code 1,000 ft} and {@code 10,5 ft}: so that nobody reads them as two amounts. */
  private void refuseThousands(Token number) throws FormulaException {
    Token comma = tokens.peek();
    if (number.unit() != null || !comma.is(",") || comma.from() != number.to()) {
      return;
    }
    Token rest = tokens.second();
    boolean isJoined = rest.kind() == Kind.NUMBER && rest.from() == comma.to();
    if (isJoined && rest.unit() != null) {
      Unit unit = rest.unit();
      throw Tokens.error(
          comma,
          "a number has no comma in it here",
          rest.text().matches("[0-9]{3}")
              ? "write it without, such as 1000 ft"
              : "write a point: "
                  + number.text()
                  + "."
                  + rest.text()
                  + " "
                  + unit.symbol()
                  + "; of two numbers, give each its unit");
    }
  }

  /** A unit of which the words were written out, by its letters. */
  private static String inShort(String written) {
    return written
        .replaceFirst("^(?i)micrograms?\\b", "ug")
        .replaceFirst("^(?i)milligrams?\\b", "mg")
        .replace(" per ", "/");
  }

  /** A unit with those below its stroke. */
  private Token whole(Token name) {
    StringBuilder text = new StringBuilder(name.text());
    Token last = name;
    for (int i = 1; tokens.ahead(i + 1).kind() == Kind.NAME; i += 2) {
      Token stroke = tokens.ahead(i);
      boolean isPer = stroke.is("per");
      Token below = tokens.ahead(i + 1);
      if ((!isPer && !stroke.is("/")) || below.text().contains(".")) {
        break;
      }
      text.append(isPer ? " per " : "/").append(below.text());
      last = below;
    }
    return new Token(name.kind(), text.toString(), name.from(), last.to(), null);
  }

  /** A name right after a bare number was meant for its unit. */
  private void refuseUnknownUnit(Token number) throws FormulaException {
    Token name = tokens.peek();
    if (number.unit() == null && name.kind() == Kind.NAME && !Tokens.isJoining(name)) {
      name = whole(name);
      @Nullable String nearest = Lexer.nearestUnit(inShort(name.text()));
      String mend =
          nearest == null
              ? "write one such as ft, m, psi or mg/L, or join conditions with and, or"
              : "did you mean " + nearest + "?";
      if (SPANS.contains(name.text())) {
        mend = "a span is written in days, such as 60 days";
      } else if (OF_WORK.contains(name.text())) {
        mend = "write it in days of the calendar, such as 42 days";
      }
      throw Tokens.error(name, "'" + name.text() + "' is not a unit", mend);
    }
  }
}
