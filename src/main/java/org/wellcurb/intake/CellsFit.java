package org.wellcurb.intake;

import java.util.Arrays;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/** Whether what stands in a column may be what an entry holds. */
final class CellsFit {
  /** Share of cells that must be of the entry's kind. */
  static final double OF_KIND = 0.5;

  /** Codes for choices are small numbers. */
  private static final int MOST_CODES = 9;

  private static final int MOST_DIFFERENT = 6;

  private CellsFit() {}

  /** True if nothing but yes and no stands in a column. */
  private static boolean isYesNo(ColumnSurvey column) {
    return column.filled() > 0
        && column.texts().keySet().stream()
            .allMatch(text -> text.matches("(?i)y|n|yes|no|t|f|true|false|oui|non"));
  }

  /**
   * True if what a column holds may be of the entry, and its header states no unit of another kind.
   */
  static boolean fits(Entry entry, ColumnSurvey column, HeaderWords header) {
    if (entry.kind() == Kind.LIST) {
      return false;
    }
    Unit unit = header.unit();
    if (unit != null && !(entry.kind().isAmount() && HeaderEntry.fits(entry, unit))) {
      return false;
    }
    if (column.filled() == 0) {
      return true;
    }
    return switch (entry.kind()) {
      case TEXT ->
          !isYesNo(column) && (entry.index() != 0 || column.filled() >= OF_KIND * column.rows());
      case CHOICE ->
          !isYesNo(column)
              && column.dated() < OF_KIND
              && (column.numeric() < OF_KIND || isCodes(column, MOST_CODES));
      case YES_NO -> column.dated() < OF_KIND && (column.numeric() < OF_KIND || isCodes(column, 1));
      case DATE ->
          column.dated() >= OF_KIND
              || column.numeric() >= OF_KIND
              || (!hasDigits(column) && !isYesNo(column))
              || haveYears(column);
      default ->
          column.dated() < OF_KIND
              && (column.numeric() >= OF_KIND || (isSome(column) && !haveYears(column)))
              && (!entry.key().equals("sample.ph") || isWater(column));
    };
  }

  /** Share of figures that must be what the entry may have, where its name is read by a letter. */
  private static final double BORNE_OUT = 0.9;

  /**
   * True if what stands in a column makes it likely that it is the entry: figures that it may have,
   * in a unit that it is usually in; words of its choices. Texts and days bear nothing out.
   *
   * @param most the system of most units of the table: where it is that of inches, a figure is no
   *     number of millimetres
   */
  static boolean bearOut(Entry entry, ColumnSurvey column, HeaderWords header, UnitSystem most) {
    if (entry.kind() == Kind.CHOICE) {
      return column.filled() > 0;
    }
    Unit us = entry.unit(UnitSystem.US);
    Unit metric = entry.unit(UnitSystem.METRIC);
    if (!entry.kind().isAmount() || us == null || metric == null) {
      return false;
    }
    if (us.symbol().isEmpty()) {
      return plausible(entry, us, column) >= BORNE_OUT
          && (entry.kind() != Kind.COUNT || isWhole(column));
    }
    @Nullable Unit stated = header.unit();
    boolean isSmall = us.symbol().equals("in") && most == UnitSystem.US;
    Unit usual = stated != null ? stated : us;
    Unit other = stated != null || isSmall ? usual : metric;
    return Math.max(plausible(entry, usual, column), plausible(entry, other, column)) >= BORNE_OUT;
  }

  private static boolean isWhole(ColumnSurvey column) {
    return Arrays.stream(column.numbers()).allMatch(number -> number == Math.rint(number));
  }

  /** Share of the figures, but for zeros, that the entry may have in a unit. */
  private static double plausible(Entry entry, Unit unit, ColumnSurvey column) {
    double[] numbers = Arrays.stream(column.numbers()).filter(number -> number != 0).toArray();
    if (numbers.length == 0 || unit.isReversed()) {
      return 0;
    }
    long inside =
        Arrays.stream(numbers)
            .map(unit::toSi)
            .filter(si -> si >= entry.plausible().lo() && si <= entry.plausible().hi())
            .count();
    return (double) inside / numbers.length;
  }

  /** True for what water may have: PH above 1 and 3 are the phases of a motor. */
  private static boolean isWater(ColumnSurvey column) {
    double[] numbers = column.numbers();
    long water = Arrays.stream(numbers).filter(n -> n > 4 && n < 11).count();
    return water >= OF_KIND * numbers.length;
  }

  private static boolean isMissing(String text) {
    return text.chars().noneMatch(c -> c >= '0' && c <= '9');
  }

  /** True for a few whole numbers, none above the greatest that a code is likely to be. */
  private static boolean isCodes(ColumnSurvey column, int greatest) {
    long codes = column.texts().keySet().stream().filter(text -> !isMissing(text)).count();
    return codes <= MOST_DIFFERENT
        && Arrays.stream(column.numbers())
            .allMatch(n -> n == Math.rint(n) && n >= 0 && n <= greatest);
  }

  private static final Pattern YEAR =
      Pattern.compile(
          "(^|\\D)(1[89]|20)\\d\\d(\\D|$)|\\d{1,2}[-/.]\\d{1,2}[-/.]\\d\\d$|\\p{L}{3,}\\.?[-"
              + " ,]+\\d\\d$");

  /** True if a year stands in most cells: {@code Pre 1928}, {@code 1940's}, {@code 12-May-04}. */
  private static boolean haveYears(ColumnSurvey column) {
    long years = 0;
    for (Map.Entry<String, Integer> text : column.texts().entrySet()) {
      years += YEAR.matcher(text.getKey()).find() ? text.getValue() : 0;
    }
    return years >= OF_KIND * column.filled();
  }

  private static boolean hasDigits(ColumnSurvey column) {
    return column.samples().stream().anyMatch(text -> text.matches(".*\\d.*"));
  }

  /** How an amount begins that is no plain number: {@code >14}, {@code est. 40}, {@code 12'}. */
  private static final Pattern AMOUNT =
      Pattern.compile(
          "(?i)([~<>+=(.\u2248\u2264\u2265-]|est|approx|about|ca|circa|env|over|under|min|max|up"
              + " to)*[. ]*\\d");

  /** Amounts may be written in ways that are no plain numbers. */
  private static boolean isSome(ColumnSurvey column) {
    long withDigits =
        column.texts().keySet().stream().filter(text -> AMOUNT.matcher(text).lookingAt()).count();
    return withDigits >= OF_KIND * column.texts().size();
  }
}
