package org.wellcurb.formula;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Lexer.Kind;
import org.wellcurb.formula.Lexer.Token;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;

/**
 * Reads a condition by recursive descent, resolving names and checking dimensions as it goes.
 *
 * <p>The grammar (ISO 14977):
 *
 * <pre>
 * condition   = disjunction | "if", condition, "then", condition, "else", condition ;
 * disjunction = conjunction, { "or", conjunction } ;
 * conjunction = negation, { "and", negation } ;
 * negation    = "not", negation | comparison ;
 * comparison  = sum, ( relation, sum | "between", sum, "and", sum )
 *             | word, ( "is" | "is", "not" ), ( text | number | word )
 *             | word, ( "is" | "is", "not" ), "one", "of", ( text | number ), { ",", ( text | number ) }
 *             | entry, [ ( "is" | "is", "not" | "=" | "&lt;&gt;" ), ( "yes" | "no" ) ]
 *             | "known", "(", entry, ")" | "applies", "(", entry, { ",", entry }, ")" | "yes" | "no" | "(", condition, ")" ;
 * relation    = "=" | "&lt;&gt;" | "&lt;" | "&lt;=" | "&gt;" | "&gt;=" ;
 * sum         = product, { ( "+" | "-" ), product } ;
 * product     = factor, { ( "*" | "/" ), factor } ;
 * factor      = "-", factor | limit | date | "as_of" | entry | "workings.", name | "figures.", name
 *             | "table", "(", table, ")" | ( "min" | "max" ), "(", sum, { ",", sum }, ")"
 *             | "abs", "(", sum, ")" | "round", "(", sum, ",", limit, ")"
 *             | "(", sum, ")" | "if", condition, "then", sum, "else", sum ;
 * table       = name, { "-", ( name | number ) } ;
 * limit       = number, [ unit ], [ "(", number, unit, ")" ] ;
 * </pre>
 */
final class Parser {
  private static final int DEEPEST = 20;

  /** Words by which a text compares what the language compares by a sign. */
  private static final Set<String> COMPARING =
      Set.of(
          "not", "no", "at", "more", "less", "greater", "over", "above", "below", "under",
          "exceeds", "equals", "must", "shall", "to");

  /** Words that stand after {@code is} where a text compares amounts. */
  private static final Set<String> MEASURING =
      Set.of(
          "at", "more", "less", "in", "greater", "larger", "longer", "deeper", "higher", "smaller",
          "shorter", "fewer", "over", "above", "below", "under");

  private final String text;
  private final Tokens tokens;
  private final Names names;
  private final List<FormulaException> faults = new ArrayList<>();
  private int negations;
  private int depth;

  private Parser(String text, Lexer lexer, Scope scope) {
    this.text = text;
    tokens = new Tokens(lexer);
    names = new Names(scope);
  }

  static Expr.Condition condition(String text, Scope scope) throws FormulaException {
    Lexer lexer = Lexer.of(text);
    Parser parser = new Parser(text, lexer, scope);
    if (parser.tokens.peek().kind() == Kind.END && lexer.faults().isEmpty()) {
      throw new FormulaException(
          0, text.length(), "there is no condition", "write one, such as well.depth > 20 ft");
    }
    try {
      Expr.Condition condition = parser.whole();
      if (parser.faults.isEmpty() && lexer.faults().isEmpty()) {
        return condition;
      }
    } catch (FormulaException e) {
      // What is wrong with the whole may come of its faulty parts.
      if (parser.faults.isEmpty()) {
        parser.faults.add(e);
      }
    }
    List<FormulaException> all = new ArrayList<>(lexer.faults());
    parser.faults.stream()
        .filter(fault -> lexer.faults().isEmpty() || lexer.isApart(fault))
        .forEach(all::add);
    all.sort(Comparator.comparingInt(FormulaException::from));
    throw FormulaException.of(all);
  }

  private Expr.Condition whole() throws FormulaException {
    Part whole = expression();
    Token rest = tokens.peek();
    if (whole.expr instanceof Expr.Amount && COMPARING.contains(rest.text())) {
      throw Tokens.error(
          rest, "'" + rest.text() + "' has no meaning here", "write a sign, such as >= or <");
    }
    Expr.Condition condition = conditionOf(whole);
    if (rest.kind() != Kind.END) {
      throw Tokens.error(
          rest, "'" + rest.text() + "' was not expected here", "join conditions with and, or");
    }
    return condition;
  }

  /**
   * One part of an {@code and} or {@code or}. Where it is faulty it is passed over, and what stands
   * beside it is read all the same, so that its faults are told too: but one fault of each part
   * only, since others may come of it.
   *
   * @param isJoined true if it must be a condition, since one stands before it
   */
  private Part part(boolean isJoined) {
    int start = tokens.taken();
    int told = faults.size();
    int outerDepth = depth;
    int outerNegations = negations;
    try {
      Part part = negation();
      if (isJoined && told > 0 && part.expr instanceof Expr.Amount) {
        // The rest of a fault before it: the greater of 50 ft or 60 ft.
        return passed();
      }
      if (isJoined || tokens.peek().is("and") || tokens.peek().is("or")) {
        conditionOf(part);
      }
      return part;
    } catch (FormulaException e) {
      if (faults.size() == told) {
        faults.add(e);
      }
      depth = outerDepth;
      negations = outerNegations;
      tokens.passPart(start);
      return passed();
    }
  }

  /** What stands in place of a faulty part, so that reading goes on. */
  private Part passed() {
    Token here = tokens.peek();
    return new Part(new Expr.Constant(true), here, here);
  }

  /**
   * A sign belongs to the number, not to its SI value: -3 degC lies below the zero of its scale.
   */
  private static Expr.Amount opposite(Expr.Amount a) {
    if (a instanceof Expr.Literal l) {
      return new Expr.Literal(opposite(l.value(), l.unit()), l.unit());
    }
    if (a instanceof Expr.Dual d) {
      return new Expr.Dual(
          opposite(d.primary(), d.unit()),
          d.unit(),
          opposite(d.bracket(), d.bracketUnit()),
          d.bracketUnit());
    }
    return new Expr.Negative(a);
  }

  private static double opposite(double si, Unit unit) {
    return unit.toSi(-unit.fromSi(si));
  }

  // An expression keeps the tokens it was read from, to say where a fault lies.
  record Part(Expr expr, Token from, Token to) {}

  private Part expression() throws FormulaException {
    deeper();
    Part part = tokens.peek().is("if") ? conditional() : disjunction();
    depth--;
    return part;
  }

  /** Nesting is bounded, so that no text can exhaust the stack or the slots of a frame. */
  private void deeper() throws FormulaException {
    if (++depth > DEEPEST) {
      throw Tokens.error(
          tokens.peek(), "this is nested more than " + DEEPEST + " deep", "state it more simply");
    }
  }

  private Part disjunction() throws FormulaException {
    Part first = conjunction(false);
    if (!tokens.peek().is("or")) {
      return first;
    }
    List<Expr.Condition> any = new ArrayList<>(List.of(conditionOf(first)));
    Part last = first;
    while (tokens.take("or")) {
      last = conjunction(true);
      any.add(conditionOf(last));
    }
    return new Part(new Expr.Or(any), first.from, last.to);
  }

  private Part conditional() throws FormulaException {
    Token start = tokens.next();
    Expr.Condition test = conditionOf(expression());
    tokens.expect("then");
    Part then = expression();
    tokens.expect("else");
    Part otherwise = expression();
    if (then.expr instanceof Expr.Condition a && otherwise.expr instanceof Expr.Condition b) {
      return new Part(new Expr.ConditionIf(test, a, b), start, otherwise.to);
    }
    Expr.Amount a = amountOf(then);
    Expr.Amount b = amountOf(otherwise);
    sameDimension(a, b, then, otherwise, "both branches of if");
    return new Part(new Expr.AmountIf(test, a, b), start, otherwise.to);
  }

  private Part conjunction(boolean isJoined) throws FormulaException {
    Part first = part(isJoined);
    if (!tokens.peek().is("and")) {
      return first;
    }
    List<Expr.Condition> all = new ArrayList<>(List.of(conditionOf(first)));
    Part last = first;
    while (tokens.take("and")) {
      last = part(true);
      all.add(conditionOf(last));
    }
    return new Part(new Expr.And(all), first.from, last.to);
  }

  private Part negation() throws FormulaException {
    if (!tokens.peek().is("not")) {
      return comparison();
    }
    Token start = tokens.next();
    deeper();
    negations++;
    Part part = negation();
    negations--;
    depth--;
    return new Part(new Expr.Not(conditionOf(part)), start, part.to);
  }

  private Part comparison() throws FormulaException {
    Part left = sum();
    Token sign = tokens.peek();
    if (sign.is("is")) {
      return is(left);
    }
    if (sign.is("between")) {
      tokens.next();
      Part least = sum();
      tokens.expect("and");
      Part greatest = sum();
      Expr.Amount a = amountOf(left);
      Expr.Amount lo = amountOf(least);
      Expr.Amount hi = amountOf(greatest);
      sameDimension(a, lo, left, least, "between");
      sameDimension(a, hi, left, greatest, "between");
      return new Part(new Expr.Between(a, lo, hi, negations > 0), left.from, greatest.to);
    }
    if (sign.is("within")) {
      throw Tokens.error(
          sign,
          "'within' has no meaning here",
          "write between, such as dates.sampled between dates.completed and dates.completed + 30"
              + " days");
    }
    @Nullable Relation relation = relation(sign);
    if (relation == null) {
      return left;
    }
    tokens.next();
    if (left.expr instanceof Expr.Word && tokens.peek().kind() == Kind.TEXT) {
      refuseSign(left, relation, tokens.peek());
    }
    if (left.expr instanceof Expr.Word word
        && (relation == Relation.EQUAL || relation == Relation.NOT_EQUAL)) {
      boolean isEqual = relation == Relation.EQUAL;
      BareWord.refuse(word, "write " + left.from.text() + (isEqual ? " is " : " is not "), tokens);
    }
    if (tokens.peek().is("=") || tokens.peek().is(">") || tokens.peek().is("<")) {
      String both = sign.text() + tokens.peek().text();
      throw Tokens.error(
          tokens.peek(),
          "two signs stand here",
          switch (both) {
            case "==" -> "write = for an amount, is for a word";
            case "=<" -> "write <=";
            case "=>" -> "write >=";
            default -> "write one, such as >= without a blank";
          });
    }
    Part right = sum();
    if (left.expr instanceof Expr.YesNo
        || left.expr instanceof Expr.Word
        || right.expr instanceof Expr.Word) {
      if (relation != Relation.EQUAL && relation != Relation.NOT_EQUAL) {
        throw Tokens.error(
            sign,
            "words and yes-no are not more or less than others",
            "use is, is not or is one of");
      }
      return same(left, right, relation == Relation.NOT_EQUAL);
    }
    Expr.Amount a = amountOf(left);
    Expr.Amount b = amountOf(right);
    Token second = tokens.peek();
    if (relation(second) != null) {
      tokens.next();
      Part third = sum();
      faults.add(Chains.ofSigns(text, left, sign, right, second, tokens.peek().from()));
      return new Part(new Expr.Constant(true), left.from, third.to);
    }
    sameDimension(a, b, left, right, relation.sign());
    return new Part(new Expr.Compare(relation, a, b, negations > 0), left.from, right.to);
  }

  /** A word is compared by is; and whether anything is written, by known. */
  private static void refuseSign(Part left, Relation relation, Token text) throws FormulaException {
    boolean isEqual = relation == Relation.EQUAL;
    if (!isEqual && relation != Relation.NOT_EQUAL) {
      return;
    }
    refuseNothing(left, !isEqual, text);
    throw Tokens.error(
        text,
        "a word stands alone",
        "write " + (isEqual ? "is in place of =" : "is not in place of <>"));
  }

  /** An empty text is no word: what is asked for is whether anything is given. */
  private static void refuseNothing(Part left, boolean isNegated, Token text)
      throws FormulaException {
    if (text.kind() == Kind.TEXT && text.text().isBlank()) {
      throw Tokens.error(
          text, "there is no word between the quotes", "write " + known(left, isNegated));
    }
  }

  private static String known(Part left, boolean isGiven) {
    return (isGiven ? "known(" : "not known(") + left.from.text() + ")";
  }

  private static @Nullable Relation relation(Token token) {
    if (token.kind() == Kind.SIGN) {
      for (Relation relation : Relation.values()) {
        if (relation.sign().equals(token.text())) {
          return relation;
        }
      }
    }
    return null;
  }

  private Part is(Part left) throws FormulaException {
    tokens.expect("is");
    boolean isNegated = tokens.take("not");
    Token token = tokens.peek();
    if (MEASURING.contains(token.text()) && token.kind() == Kind.NAME) {
      throw Tokens.error(
          token,
          "'" + token.text() + "' has no meaning here",
          token.is("in") ? "write is one of 'word', 'word'" : "write a sign, such as >= or <");
    }
    boolean isGiven = token.is("given") || token.is("known");
    if (isGiven || token.is("blank") || token.is("empty")) {
      throw Tokens.error(
          token,
          "'" + token.text() + "' has no meaning here",
          "write " + known(left, isGiven != isNegated));
    }
    refuseNothing(left, isNegated, token);
    if (tokens.take("one")) {
      tokens.expect("of");
      Expr.Word word = wordOf(left);
      List<String> words = new ArrayList<>();
      List<String> shown = new ArrayList<>();
      Token last;
      do {
        BareWord.refuse(word, "put each word in quotes, such as ", tokens);
        last = tokens.next();
        words.add(names.word(word, last));
        shown.add(shown(word, last));
      } while (tokens.take(","));
      last = Chains.ofWords(left, tokens, shown, isNegated, last, faults);
      return new Part(new Expr.IsOneOf(word, words, shown, isNegated), left.from, last);
    }
    if (token.kind() == Kind.TEXT || token.kind() == Kind.NUMBER) {
      tokens.next();
      Expr.Word word = wordOf(left);
      List<String> shown = List.of(shown(word, token));
      List<String> words = List.of(names.word(word, token));
      Token last = Chains.ofWords(left, tokens, shown, isNegated, token, faults);
      return new Part(new Expr.IsOneOf(word, words, shown, isNegated), left.from, last);
    }
    if (left.expr instanceof Expr.Word word) {
      BareWord.refuse(
          word, "write " + left.from.text() + (isNegated ? " is not " : " is "), tokens);
    }
    return same(left, factor(), isNegated);
  }

  /** A choice as the catalogue writes it, whose words are small; other words as the pack does. */
  private static String shown(Expr.Word word, Token token) {
    boolean isChoice = word instanceof Expr.EntryWord of && !of.entry().choices().isEmpty();
    String text = token.text().trim();
    return isChoice ? text.toLowerCase(Locale.ROOT) : text;
  }

  /** {@code x is y} for yes-no and for two words. */
  private Part same(Part left, Part right, boolean isNegated) throws FormulaException {
    if (right.expr instanceof Expr.Constant constant) {
      if (left.expr instanceof Expr.YesNo yesNo) {
        return new Part(
            new Expr.YesNo(yesNo.entry(), constant.value() != isNegated), left.from, right.to);
      }
      throw Tokens.error(
          left.from, "only a yes-no entry is yes or no", "compare it with a word in quotes");
    }
    if (left.expr instanceof Expr.YesNo) {
      throw Tokens.error(
          right.from, "a yes-no entry is compared with yes or no", "write is yes or is no");
    }
    return new Part(new Expr.SameWord(wordOf(left), wordOf(right), isNegated), left.from, right.to);
  }

  private Part sum() throws FormulaException {
    Part left = product();
    while (tokens.peek().is("+") || tokens.peek().is("-")) {
      Token sign = tokens.next();
      Part right = product();
      left = new Part(names.sum(sign, amountOf(left), amountOf(right)), left.from, right.to);
    }
    return left;
  }

  private Part product() throws FormulaException {
    Part left = factor();
    while (tokens.peek().is("*") || tokens.peek().is("/")) {
      Token sign = tokens.next();
      Part right = factor();
      left = new Part(names.product(sign, amountOf(left), amountOf(right)), left.from, right.to);
    }
    return left;
  }

  private Part factor() throws FormulaException {
    Token token = tokens.peek();
    switch (token.kind()) {
      case NUMBER:
        return Limit.read(tokens);
      case DATE:
        tokens.next();
        return new Part(new Expr.Day(day(token)), token, token);
      case NAME:
        if (Tokens.isJoining(token)) {
          break;
        }
        return token.is("if") ? expression() : named();
      case SIGN:
        if (tokens.take("-")) {
          deeper();
          Part a = factor();
          depth--;
          Expr.Amount amount = amountOf(a);
          if (amount.dimension().equals(Dimension.DATE)) {
            throw Tokens.error(a.from, "a date has no opposite", "take the sign away");
          }
          if (!(amount instanceof Expr.Literal)) {
            refuseTemperature(amount, a);
          }
          return new Part(opposite(amount), token, a.to);
        }
        if (tokens.take("(")) {
          Part inner = expression();
          Token close = tokens.expect(")");
          return new Part(inner.expr, token, close);
        }
        break;
      case TEXT:
        boolean isYesNo = token.text().equals("yes") || token.text().equals("no");
        boolean isDay = token.text().matches("[0-9]{4}-[0-9]{2}-[0-9]{2}");
        throw Tokens.error(
            token,
            isDay ? "a day stands in quotes" : "a word stands alone",
            isYesNo
                ? "write is " + token.text() + ", without quotes"
                : isDay
                    ? "take the quotes away: " + token.text()
                    : "write entry is '" + token.text() + "'");
      case END:
        throw Tokens.error(token, "the formula ends too soon", "add what is to be compared");
    }
    throw Tokens.error(
        token, "'" + token.text() + "' was not expected here", "put an entry or an amount here");
  }

  private static double day(Token token) throws FormulaException {
    try {
      return LocalDate.parse(token.text()).toEpochDay();
    } catch (DateTimeException e) {
      throw Tokens.error(token, token.text() + " is not a day", "write YYYY-MM-DD");
    }
  }

  /** Each of the entries that stand in the brackets. */
  private Part applies(Token token) throws FormulaException {
    tokens.expect("(");
    List<Expr.Condition> all = new ArrayList<>();
    do {
      all.add(new Expr.IsApplicable(entryWithin("applies")));
    } while (tokens.take(","));
    return new Part(all.size() == 1 ? all.get(0) : new Expr.And(all), token, tokens.expect(")"));
  }

  private Entry entryWithin(String word) throws FormulaException {
    Token name = tokens.peek();
    if (name.kind() != Kind.NAME) {
      throw Tokens.error(
          name, "an entry must stand here", "write one, such as " + word + "(well.tag)");
    }
    tokens.next();
    return names.entry(name);
  }

  private Part named() throws FormulaException {
    Token token = tokens.next();
    switch (token.text()) {
      case "yes":
      case "no":
        return new Part(new Expr.Constant(token.is("yes")), token, token);
      case "as_of":
        return new Part(new Expr.AsOf(), token, token);
      case "known":
        {
          tokens.expect("(");
          Entry entry = entryWithin("known");
          return new Part(new Expr.Known(entry), token, tokens.expect(")"));
        }
      case "applies":
        return applies(token);
      case "table":
        {
          tokens.expect("(");
          Token name = tableName();
          Token close = tokens.expect(")");
          return new Part(names.table(name), token, close);
        }
      case "min":
      case "max":
        return extreme(token);
      case "abs":
        {
          tokens.expect("(");
          deeper();
          Part inner = sum();
          Expr.Amount a = amountOf(inner);
          refuseTemperature(a, inner);
          depth--;
          Token close = tokens.expect(")");
          return new Part(new Expr.Absolute(a), token, close);
        }
      case "round":
        return rounded(token);
      default:
        return new Part(names.named(token), token, token);
    }
  }

  /** A table's name may hold dashes, as names in a pack do. */
  private Token tableName() {
    Token first = tokens.next();
    Token last = first;
    StringBuilder name = new StringBuilder(first.text());
    while (tokens.take("-")) {
      last = tokens.next();
      name.append('-').append(last.text());
    }
    return new Token(first.kind(), name.toString(), first.from(), last.to(), null);
  }

  private Part extreme(Token name) throws FormulaException {
    tokens.expect("(");
    deeper();
    List<Expr.Amount> all = new ArrayList<>();
    Part first = sum();
    all.add(amountOf(first));
    while (tokens.take(",")) {
      Part more = sum();
      Expr.Amount amount = amountOf(more);
      sameDimension(all.get(0), amount, first, more, name.text());
      all.add(amount);
    }
    depth--;
    Token close = tokens.expect(")");
    return new Part(new Expr.Extreme(name.is("max"), all), name, close);
  }

  private Part rounded(Token name) throws FormulaException {
    tokens.expect("(");
    deeper();
    Part a = sum();
    depth--;
    tokens.expect(",");
    Part step = sum();
    Token close = tokens.expect(")");
    if (!(step.expr instanceof Expr.Literal literal) || literal.value() <= 0) {
      throw Tokens.error(
          step.from, "the step is not an amount above nothing", "write round(x, 1 ft)");
    }
    Expr.Amount amount = amountOf(a);
    sameDimension(amount, literal, a, step, "round");
    refuseTemperature(amount, a);
    return new Part(new Expr.Rounded(amount, literal), name, close);
  }

  /** A temperature has no zero of its own: its scales differ in where they begin. */
  private static void refuseTemperature(Expr.Amount amount, Part part) throws FormulaException {
    if (amount.dimension().equals(Dimension.TEMPERATURE)) {
      throw new FormulaException(
          part.from.from(),
          part.to.to(),
          "a temperature has no opposite, no size and no steps",
          "compare it with a limit instead");
    }
  }

  private void sameDimension(Expr.Amount a, Expr.Amount b, Part left, Part right, String sign)
      throws FormulaException {
    if (!a.dimension().equals(b.dimension())) {
      throw Names.dimensions(left.from.from(), right.to.to(), sign, a, b);
    }
  }

  private Expr.Condition conditionOf(Part part) throws FormulaException {
    if (part.expr instanceof Expr.Condition condition) {
      return condition;
    }
    boolean isAmount = part.expr instanceof Expr.Amount;
    String what = part.expr instanceof Expr.Amount a ? "a " + a.dimension().label() : "a word";
    throw new FormulaException(
        part.from.from(),
        part.to.to(),
        what + " stands where a condition must",
        isAmount
            ? "compare it with something, on either side of and, or"
            : "write is 'word', or is one of 'word', 'word'");
  }

  private Expr.Amount amountOf(Part part) throws FormulaException {
    if (part.expr instanceof Expr.Amount amount) {
      return amount;
    }
    String what = part.expr instanceof Expr.Word ? "a word" : "a condition";
    throw new FormulaException(
        part.from.from(),
        part.to.to(),
        what + " stands where an amount must",
        part.expr instanceof Expr.Word ? "compare words with is" : "compare amounts here");
  }

  private Expr.Word wordOf(Part part) throws FormulaException {
    if (part.expr instanceof Expr.Word word) {
      return word;
    }
    String mend =
        part.expr instanceof Expr.YesNo
            ? "write is yes or is no"
            : "compare amounts with = or between";
    throw new FormulaException(
        part.from.from(), part.to.to(), "only a choice or a text can be a word in quotes", mend);
  }
}
