package org.wellcurb.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Nearest;

/**
 * Cuts a formula into tokens. A number takes its unit with it. What cannot be read is told, and
 * read as what it was probably meant for.
 */
final class Lexer {
  enum Kind {
    NUMBER,
    DATE,
    TEXT,
    NAME,
    SIGN,
    END
  }

  /**
   * @param text the token as written; for a text without its quotes
   * @param unit unit of a number, null if it has none
   */
  record Token(Kind kind, String text, int from, int to, @Nullable Unit unit) {
    boolean is(String word) {
      return (kind == Kind.NAME || kind == Kind.SIGN) && text.equals(word);
    }
  }

  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}(?![0-9])");
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");
  private static final Pattern NAME =
      Pattern.compile("[A-Za-z_][A-Za-z0-9_]*(\\.[A-Za-z_][A-Za-z0-9_]*)*");

  /** What would be taken for the name of an entry if it were written in capitals. */
  private static final Set<String> WORDS =
      Set.of(
          "and", "or", "not", "is", "one", "of", "between", "if", "then", "else", "known",
          "applies", "as_of", "table", "min", "max", "abs", "round", "yes", "no");

  private static final Pattern SIGN = Pattern.compile("<=|>=|<>|[-+*/<>=(),%]");

  /** One way to write a unit. */
  private record Spelling(String text, Unit unit) {}

  private static final List<Spelling> SPELLINGS = spellings();

  private static final Pattern MARKED_BLANK = Pattern.compile("[\\u00a0\\u2007\\u202f\\ufeff]");
  private static final Pattern MU = Pattern.compile("[\\u00b5\\u03bc]");

  private final String text;

  /** The same with a plain letter for the sign of a millionth, as units are spelled. */
  private final String plain;

  private final List<Token> tokens = new ArrayList<>();
  private final List<FormulaException> faults = new ArrayList<>();

  /** From where on other faults may come of one that was told here. */
  private int unsureFrom = Integer.MAX_VALUE;

  private int at;

  private Lexer(String text) {
    // A blank that does not break the line looks like any other.
    this.text = MARKED_BLANK.matcher(text).replaceAll(" ");
    plain = MU.matcher(this.text).replaceAll("u");
  }

  /** Cuts a formula, and keeps what is wrong with its letters. */
  static Lexer of(String text) {
    Lexer lexer = new Lexer(text);
    boolean isEnd = false;
    while (!isEnd) {
      @Nullable Token token = lexer.next();
      if (token != null) {
        lexer.tokens.add(token);
        isEnd = token.kind == Kind.END;
      }
    }
    return lexer;
  }

  /** The tokens; the last is the end. */
  List<Token> tokens() {
    return List.copyOf(tokens);
  }

  /** What is wrong with the letters of the formula, in the order of their places. */
  List<FormulaException> faults() {
    return List.copyOf(faults);
  }

  /**
   * True if another fault comes of none that was told here: it stands before all that is unsure,
   * and is not about what was read in place of a mark.
   */
  boolean isApart(FormulaException other) {
    return other.to() < unsureFrom
        && faults.stream().noneMatch(f -> f.from() == other.from() && f.to() >= other.to());
  }

  private void unsure(int from) {
    unsureFrom = Math.min(unsureFrom, from);
  }

  /** The next token; null where what stands there is passed over. */
  private @Nullable Token next() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    if (at == text.length()) {
      return new Token(Kind.END, "", at, at, null);
    }
    char c = text.charAt(at);
    boolean isAfterDigit = at > 0 && Character.isDigit(text.charAt(at - 1));
    if (isAfterDigit && (c == '\'' || c == '"')) {
      return marked(c);
    }
    if (c == '\'') {
      return quoted();
    }
    int from = at;
    // Only what the first letter may begin is tried: packs hold some thousands of tokens.
    boolean isDigit = c >= '0' && c <= '9';
    @Nullable String date = isDigit ? match(DATE) : null;
    if (date != null) {
      return new Token(Kind.DATE, date, from, at, null);
    }
    @Nullable String number = isDigit ? match(NUMBER) : null;
    if (number != null) {
      return new Token(Kind.NUMBER, number, from, at, unit());
    }
    @Nullable String name = match(NAME);
    if (name != null) {
      String small = name.toLowerCase(Locale.ROOT);
      if (!small.equals(name) && WORDS.contains(small)) {
        faults.add(
            new FormulaException(
                from, at, "the words of the language are in small letters", "write " + small));
        return new Token(Kind.NAME, small, from, at, null);
      }
      return new Token(Kind.NAME, name, from, at, null);
    }
    @Nullable String sign = match(SIGN);
    if (sign != null) {
      return new Token(Kind.SIGN, sign, from, at, null);
    }
    return stray(c);
  }

  /** A mark for feet or inches after a number, which is read with that unit. */
  private @Nullable Token marked(char mark) {
    Unit unit = mark == '"' ? Units.INCH : Units.FOOT;
    faults.add(
        new FormulaException(
            at, at + 1, "'" + mark + "' is no unit here", "write " + unit.symbol()));
    at++;
    int last = tokens.size() - 1;
    @Nullable Token number = last < 0 ? null : tokens.get(last);
    if (number != null && number.kind == Kind.NUMBER) {
      tokens.set(last, new Token(number.kind, number.text, number.from, at, unit));
    }
    return null;
  }

  private @Nullable Token stray(char c) {
    Stray stray = Stray.at(text, at);
    // A bracket that closes is mended with the one that opens.
    boolean isTold = c == ']' && text.lastIndexOf('[', at) >= 0;
    if (!isTold) {
      faults.add(new FormulaException(at, at + 1, "'" + c + "' has no meaning here", stray.mend()));
    }
    if (!stray.isSure()) {
      unsure(at);
    }
    at = stray.to();
    tokens.addAll(stray.meant());
    return null;
  }

  private Token quoted() {
    int end = text.indexOf('\'', at + 1);
    if (end < 0) {
      faults.add(
          new FormulaException(
              at, text.length(), "the quote is not closed", "add ' after the word"));
      unsure(at);
      end = text.length();
      Token rest = new Token(Kind.TEXT, text.substring(at + 1), at, end, null);
      at = end;
      return rest;
    }
    Token token = new Token(Kind.TEXT, text.substring(at + 1, end), at, end + 1, null);
    at = end + 1;
    return token;
  }

  private @Nullable String match(Pattern pattern) {
    Matcher matcher = pattern.matcher(plain).region(at, text.length());
    if (!matcher.lookingAt()) {
      return null;
    }
    at = matcher.end();
    return matcher.group();
  }

  /** The longest unit that stands here as a whole word. */
  private @Nullable Unit unit() {
    int start = at;
    while (start < text.length() && text.charAt(start) == ' ') {
      start++;
    }
    @Nullable Unit best = null;
    int end = at;
    for (Spelling spelling : SPELLINGS) {
      int to = start + spelling.text.length();
      if (to > end && plain.startsWith(spelling.text, start) && !continues(spelling.text, to)) {
        best = spelling.unit;
        end = to;
      }
    }
    at = end;
    return best;
  }

  private static List<Spelling> spellings() {
    List<Spelling> all = new ArrayList<>();
    for (Unit unit : Units.all()) {
      unit.aliases().forEach(alias -> all.add(new Spelling(alias, unit)));
      all.add(new Spelling(unit.symbol(), unit));
    }
    // Quotes are words here, not feet; and the unit of a bare number is not written.
    all.removeIf(s -> s.text.equals("'") || s.text.equals("\"") || s.text.isEmpty());
    return List.copyOf(all);
  }

  /** The spelling of a unit nearest to what was written; null if none is near. */
  static @Nullable String nearestUnit(String written) {
    String small = letters(written);
    if (small.isEmpty()) {
      return null;
    }
    @Nullable Spelling best = null;
    int least = Math.max(1, written.length() / 3) + 1;
    for (Spelling spelling : SPELLINGS) {
      String letters = letters(spelling.text);
      int distance = Nearest.distance(small, letters);
      boolean isNearer =
          distance < least
              || (distance == least && best != null && isLikelier(spelling, best, small));
      // A unit that begins otherwise is another one, as like as they look: ug is not mg.
      if (isNearer && letters.startsWith(small.substring(0, 1))) {
        least = distance;
        best = spelling;
      }
    }
    if (best == null) {
      return null;
    }
    String symbol = best.unit.symbol();
    return symbol.contains("/") ? symbol : best.text;
  }

  /** Of two as near, what was begun is likelier, and of those the usual sign of a unit. */
  private static boolean isLikelier(Spelling one, Spelling best, String small) {
    boolean isBegun = letters(one.text).startsWith(small);
    boolean isBestBegun = letters(best.text).startsWith(small);
    return isBegun != isBestBegun
        ? isBegun
        : one.text.equals(one.unit.symbol()) && !best.text.equals(best.unit.symbol());
  }

  /** True of a word of the language. */
  static boolean isWord(String name) {
    return WORDS.contains(name);
  }

  /** True if this is how a unit is written. */
  static boolean isUnit(String written) {
    return SPELLINGS.stream().anyMatch(spelling -> spelling.text.equals(written));
  }

  private static String letters(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]", "");
  }

  private boolean continues(String spelling, int to) {
    if (to >= text.length() || !Character.isLetterOrDigit(spelling.charAt(spelling.length() - 1))) {
      return false;
    }
    char next = text.charAt(to);
    // A point that ends a word belongs to no name.
    boolean isPoint = next == '.' && to + 1 < text.length() && isOfName(text.charAt(to + 1));
    return isOfName(next) || isPoint;
  }

  private static boolean isOfName(char c) {
    return Character.isLetterOrDigit(c) || c == '_';
  }
}
