package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.wellcurb.quantity.AmountReader;
import org.wellcurb.quantity.Comma;
import org.wellcurb.quantity.DayNumbers;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Expected;
import org.wellcurb.quantity.PlainNumber;
import org.wellcurb.quantity.Reading;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;

/** What stands in one column of a table, counted cell by cell. */
public final class ColumnSurvey {
  /** A day whose month is named and whose year has two digits: {@code 12-May-04}. */
  private static final Pattern NAMED_MONTH =
      Pattern.compile("^\\d{1,2}[-. /]*\\p{L}{3,}\\.?[-. ,/]+\\d\\d$");

  /** The usual words for nothing: they say nothing of the kind of a column. */
  private static final Set<String> MISSING =
      Set.of("n/a", "na", "unknown", "not known", "?", "-", "none", "nil", "null", "n.d.", "nd");

  private static final Pattern UNSURE = Pattern.compile("[-\u2212]?[1-9]\\d{0,2},\\d{3}");
  private static final Pattern DECIMAL = Pattern.compile("[-\u2212]?\\d+,(\\d{1,2}|\\d{4,})");
  private static final Pattern THOUSANDS =
      Pattern.compile("[-\u2212]?\\d{1,3}(,\\d{3})+(\\.\\d+)?");

  /** Fractions are figures, whatever the unit; in metres they stay as they are. */
  private static final Expected FIGURE = Expected.of(Dimension.LENGTH, false);

  /** Texts of a column that are counted one by one. */
  private static final int MOST_TEXTS = 2000;

  /** Texts that are shown. */
  private static final int SHOWN = 4;

  /** Numbers that are kept, from the first rows on: enough to see where they lie. */
  private static final int MOST_NUMBERS = 200_000;

  private final String name;
  private final Comma comma;
  private final String thousandPoint;
  private final Map<String, Integer> texts = new LinkedHashMap<>();
  private final Map<Unit, Integer> units = new LinkedHashMap<>();
  private final PlainNumber plain = new PlainNumber();
  private double[] numbers = new double[64];
  private int numberCount;
  private long rows;
  private long filled;
  private long missing;
  private long textNumbers;
  private long unsureCommas;
  private boolean isManyTexts;
  private boolean isCounting = true;
  private long isoDates;
  private long dayFirst;
  private long monthFirst;
  private long eitherFirst;
  private long years;
  private int mostTwoDigitYears;

  /**
   * @param comma what a comma means in its numbers
   * @param thousandPoint a number whose point may part thousands; empty if there is none
   */
  ColumnSurvey(String name, Comma comma, String thousandPoint) {
    this.name = name;
    this.comma = comma;
    this.thousandPoint = thousandPoint;
  }

  void add(String cell) {
    rows++;
    String text = HeaderKey.strip(cell);
    if (text.isEmpty()) {
      return;
    }
    filled++;
    missing += MISSING.contains(text.toLowerCase(Locale.ROOT)) ? 1 : 0;
    if (texts.size() < MOST_TEXTS || texts.containsKey(text)) {
      texts.merge(text, 1, Integer::sum);
    } else {
      isManyTexts = true;
    }
    if (isNumber(text)) {
      number(isNegative(text) ? -plain.value() : plain.value());
    } else if (!fraction(text) && !date(text)) {
      amount(text);
      years += NAMED_MONTH.matcher(text).find() ? 1 : 0;
    }
  }

  private boolean isNumber(String text) {
    int from = isNegative(text) ? 1 : 0;
    if (text.indexOf(',') < 0) {
      return plain.read(text, from, text.length());
    }
    if (UNSURE.matcher(text).matches() && (comma == Comma.EITHER || comma == Comma.NEITHER)) {
      unsureCommas++;
    }
    String point =
        comma == Comma.THOUSANDS
            ? THOUSANDS.matcher(text).matches() ? text.replace(",", "") : text
            : text.replace(".", "").replace(',', '.');
    return point.indexOf(',') < 0
        && point.indexOf('.') == point.lastIndexOf('.')
        && plain.read(point, from, point.length());
  }

  private static boolean isNegative(String text) {
    return text.charAt(0) == '-' || text.charAt(0) == '\u2212';
  }

  private void number(double value) {
    if (numberCount == MOST_NUMBERS) {
      return;
    }
    isCounting &=
        numberCount == 0 ? value == Math.rint(value) : value == numbers[numberCount - 1] + 1;
    if (numberCount == numbers.length) {
      numbers = Arrays.copyOf(numbers, 2 * numberCount);
    }
    numbers[numberCount++] = value;
  }

  /** A mixed number or a fraction, {@code 10 1/8}; false if it is none. */
  private boolean fraction(String text) {
    char last = text.charAt(text.length() - 1);
    boolean mayBe = text.indexOf('/') > 0 ? Character.isDigit(last) : last > '\u007F';
    if (!mayBe
        || !(AmountReader.read(text, FIGURE, Units.METRE, comma) instanceof Reading.Amount amount)
        || amount.lo() != amount.hi()
        || !amount.unit().equals(Units.METRE)) {
      return false;
    }
    number(amount.lo());
    return true;
  }

  /** A number with a unit behind it. */
  private void amount(String text) {
    int at = 0;
    while (at < text.length() && "0123456789.,- ".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    if (at > 0 && at < text.length() && Character.isDigit(text.charAt(0))) {
      Optional<Unit> unit = Units.named(HeaderKey.strip(text.substring(at)));
      unit.ifPresent(
          found -> {
            units.merge(found, 1, Integer::sum);
            textNumbers++;
          });
    }
  }

  /** Counts a date of three numbers, by which of them can be the day. */
  private boolean date(String text) {
    String[] parts = text.split("[-/.]", -1);
    int end = parts.length == 3 ? parts[2].indexOf(' ') : -1;
    if (parts.length != 3) {
      return false;
    }
    int a = small(parts[0]);
    int b = small(parts[1]);
    int c = small(end < 0 ? parts[2] : parts[2].substring(0, end));
    if (a < 0 || b < 0 || c < 0) {
      return false;
    }
    if (a > 1000) {
      isoDates++;
    } else if (a > 12 && a <= 31 && b <= 12) {
      dayFirst++;
    } else if (b > 12 && b <= 31 && a <= 12) {
      monthFirst++;
    } else if (a <= 12 && b <= 12) {
      eitherFirst++;
    } else {
      return false;
    }
    if (a <= 1000 && c < 100) {
      years++;
      mostTwoDigitYears = Math.max(mostTwoDigitYears, c);
    }
    return true;
  }

  private static int small(String text) {
    if (text.isEmpty() || text.length() > 4) {
      return -1;
    }
    int value = 0;
    for (int i = 0; i < text.length(); i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      value = 10 * value + digit;
    }
    return value;
  }

  /** A number of it with a decimal comma; empty where it has none. */
  public String decimalComma() {
    return texts.keySet().stream()
        .filter(text -> DECIMAL.matcher(text).matches())
        .findFirst()
        .orElse("");
  }

  /** What a comma means in its numbers. */
  Comma comma() {
    return comma;
  }

  /** A number whose point may part thousands; empty if there is none. */
  String thousandPoint() {
    return thousandPoint;
  }

  /** Its header as written. */
  public String name() {
    return name;
  }

  public long rows() {
    return rows;
  }

  /** Cells in which anything stands. */
  public long filled() {
    return filled;
  }

  /** The texts met most often, as many as a line takes. */
  public List<String> samples() {
    return mostCommon().stream().limit(SHOWN).map(Map.Entry::getKey).toList();
  }

  /** Texts by how often, most first, then as met. */
  List<Map.Entry<String, Integer>> mostCommon() {
    List<Map.Entry<String, Integer>> all = new ArrayList<>(texts.entrySet());
    all.sort(Comparator.comparingInt(each -> -each.getValue()));
    return all;
  }

  /** True where each text stands once, so far as they were counted. */
  boolean isAllDifferent() {
    return filled > 1 && (isManyTexts || texts.size() == filled);
  }

  /** True for whole numbers one after the other, row by row, of at least so many rows. */
  boolean counts(int least) {
    return isCounting
        && numberCount >= least
        && (numberCount == rows || numberCount == MOST_NUMBERS);
  }

  /** Different texts, in the order met; not all where there are very many. */
  Map<String, Integer> texts() {
    return texts;
  }

  boolean isManyTexts() {
    return isManyTexts;
  }

  /** Cells in which something is said. */
  private long told() {
    return filled - missing;
  }

  /** Share of filled cells that are numbers, with or without a unit. */
  double numeric() {
    return told() == 0 ? 0 : (double) (numberCount + textNumbers) / told();
  }

  /** Share of filled cells that are dates of three numbers. */
  double dated() {
    return told() == 0 ? 0 : (double) (isoDates + dayFirst + monthFirst + eitherFirst) / told();
  }

  /** Plain numbers, in row order. */
  double[] numbers() {
    return Arrays.copyOf(numbers, numberCount);
  }

  /**
   * Cells with a number and more, such as a unit: {@link #least} and {@link #most} leave them out.
   */
  public long textNumbers() {
    return textNumbers;
  }

  /** The least plain number; NaN if there is none. */
  public double least() {
    return Arrays.stream(numbers()).min().orElse(Double.NaN);
  }

  /** The greatest plain number; NaN if there is none. */
  public double most() {
    return Arrays.stream(numbers()).max().orElse(Double.NaN);
  }

  /** Units written in cells, with how many cells. */
  Map<Unit, Integer> units() {
    return java.util.Collections.unmodifiableMap(units);
  }

  /** Numbers such as {@code 1,250}, of which nothing tells what their comma is. */
  long unsureCommas() {
    return unsureCommas;
  }

  boolean hasBothDateOrders() {
    return dayFirst > 0 && monthFirst > 0;
  }

  /** The order of its dates in words of a header map; empty where it cannot be told. */
  String dateOrder() {
    if (isoDates > 0 && dayFirst + monthFirst + eitherFirst == 0) {
      return "iso";
    }
    if (hasBothDateOrders() || dayFirst + monthFirst == 0) {
      return "";
    }
    return dayFirst > 0 ? "day first" : "month first";
  }

  /**
   * True for days of some year of the last hundred, as spreadsheets number them from 1900. A 0 is
   * none: programs write it for a blank.
   */
  boolean areDayNumbers() {
    double[] days = Arrays.stream(numbers()).filter(number -> number != 0).toArray();
    long others = filled - (numberCount - days.length);
    return days.length * 2L >= others
        && days.length > 0
        && Arrays.stream(days).allMatch(DayNumbers::mayBe);
  }

  boolean hasTwoDigitYears() {
    return years > 0;
  }

  /** The numbers of the first and the last third lie a factor of feet to metres apart. */
  boolean changesUnit() {
    int third = numberCount / 3;
    if (third < 10) {
      return false;
    }
    double above = median(0, third);
    double below = median(numberCount - third, numberCount);
    double ratio = below > 0 ? above / below : 0;
    double factor = ratio > 1 ? ratio : ratio > 0 ? 1 / ratio : 0;
    return factor > 2.6 && factor < 4.1;
  }

  private double median(int from, int to) {
    double[] sorted = Arrays.copyOfRange(numbers, from, to);
    Arrays.setAll(sorted, i -> Math.abs(sorted[i]));
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
