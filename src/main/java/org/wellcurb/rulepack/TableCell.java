package org.wellcurb.rulepack;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.FormulaException;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.Nearest;

/**
 * Reads one value or range of a table's cell. A word is a word; for amounts and dates it is {@code
 * 6 ft}, {@code 6 ft to 10 ft} (both ends included), {@code >= 6 ft}, {@code < 4 in} or {@code >= 4
 * in and < 6 in}.
 */
final class TableCell {
  private static final Pattern BOUND = Pattern.compile("\\s*(>=|<=|>|<)(.*)");
  private static final Pattern TO = Pattern.compile("(.*?\\S)\\s+to\\s+(\\S.*)");
  private static final Pattern AND = Pattern.compile("(.*?\\S)\\s+and\\s+(\\S.*)");

  private TableCell() {}

  /**
   * What the text says of the entry.
   *
   * @throws FormulaException where it says nothing that can be read
   */
  static Table.Cell read(String text, Entry key) throws FormulaException {
    if (text.strip().equals("*")) {
      return new Table.Any();
    }
    return switch (key.kind()) {
      case TEXT -> text(text, key);
      case YES_NO -> word(text, List.of("yes", "no"), key);
      case CHOICE -> word(text, key.choices(), key);
      default -> range(text, key);
    };
  }

  private static Table.Cell text(String text, Entry key) throws FormulaException {
    if (BOUND.matcher(text).matches()) {
      throw new FormulaException(
          0,
          text.length(),
          key.key() + " holds words, of which none is more or less than another",
          "list those that are meant, such as [\"1\", \"2\"]");
    }
    return new Table.Words(List.of(fold(text)), List.of(text.strip()));
  }

  private static Table.Cell word(String text, List<String> choices, Entry key)
      throws FormulaException {
    String word = fold(text);
    for (String choice : choices) {
      if (fold(choice).equals(word)) {
        return new Table.Words(List.of(word));
      }
    }
    String nearest = Nearest.of(word, choices);
    throw new FormulaException(
        0,
        text.length(),
        key.key() + " is never '" + text.strip() + "'",
        nearest != null
            ? "did you mean '" + nearest + "'?"
            : "one of: " + String.join(", ", choices));
  }

  private static Table.Range range(String text, Entry key) throws FormulaException {
    Matcher to = TO.matcher(text);
    if (to.matches()) {
      @Nullable Unit unit = AmountText.unit(text, to.start(2), to.end(2));
      double low = point(text, to.start(1), to.end(1), key, unit);
      double high = point(text, to.start(2), to.end(2), key, null);
      return unit != null && unit.isReversed()
          ? range(text, high, low, true, true)
          : range(text, low, high, true, true);
    }
    Matcher and = AND.matcher(text);
    if (and.matches()) {
      Table.Range a = bound(text, and.start(1), and.end(1), key);
      Table.Range b = bound(text, and.start(2), and.end(2), key);
      boolean isLowFirst = a.range().lo() > Double.NEGATIVE_INFINITY;
      Table.Range low = isLowFirst ? a : b;
      Table.Range high = isLowFirst ? b : a;
      if (low.range().hi() < Double.POSITIVE_INFINITY
          || high.range().lo() > Double.NEGATIVE_INFINITY) {
        throw new FormulaException(
            0,
            text.length(),
            "a range has one end below and one above",
            "such as >= 4 in and < 6 in");
      }
      return range(text, low.range().lo(), high.range().hi(), low.loIncluded(), high.hiIncluded());
    }
    if (BOUND.matcher(text).matches()) {
      return bound(text, 0, text.length(), key);
    }
    double point = point(text, 0, text.length(), key, null);
    return range(text, point, point, true, true);
  }

  private static Table.Range bound(String text, int from, int to, Entry key)
      throws FormulaException {
    Matcher matcher = BOUND.matcher(text).region(from, to);
    if (!matcher.matches()) {
      throw new FormulaException(
          from, to, "an end of a range starts with >=, >, <= or <", "such as >= 4 in and < 6 in");
    }
    double end = point(text, matcher.start(2), matcher.end(2), key, null);
    String sign = matcher.group(1);
    boolean included = sign.endsWith("=");
    @Nullable Unit unit = AmountText.unit(text, matcher.start(2), matcher.end(2));
    // A thicker wire has a smaller gauge number.
    boolean reversed = unit != null && unit.isReversed();
    return sign.startsWith(">") != reversed
        ? new Table.Range(new Interval(end, Double.POSITIVE_INFINITY), included, false)
        : new Table.Range(new Interval(Double.NEGATIVE_INFINITY, end), false, included);
  }

  private static Table.Range range(
      String text, double low, double high, boolean lowIncluded, boolean highIncluded)
      throws FormulaException {
    if (!(low < high) && !(low == high && lowIncluded && highIncluded)) {
      throw new FormulaException(
          0, text.length(), "nothing is in this range", "put the smaller end first");
    }
    return new Table.Range(new Interval(low, high), lowIncluded, highIncluded);
  }

  private static double point(String text, int from, int to, Entry key, @Nullable Unit unit)
      throws FormulaException {
    if (key.kind() == Kind.DATE) {
      String day = text.substring(from, to).strip();
      try {
        return LocalDate.parse(day).toEpochDay();
      } catch (DateTimeException e) {
        throw new FormulaException(from, to, "this is not a day", "write it such as 2010-01-01");
      }
    }
    Dimension dimension = key.kind().dimension();
    if (dimension == null) {
      throw new FormulaException(
          from, to, key.key() + " is a list", "choose a row by another entry");
    }
    double value = AmountText.single(text, from, to, dimension, unit);
    if (key.kind() == Kind.COUNT && value != Math.rint(value)) {
      throw new FormulaException(
          from, to, key.key() + " is a whole number", "write it without a fraction");
    }
    return value;
  }

  /** As words are compared: without outer blanks and without case. */
  static String fold(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }
}
