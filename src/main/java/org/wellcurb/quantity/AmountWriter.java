package org.wellcurb.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Prints amounts so that {@link AmountReader} reads them back: {@code 212 ft}, {@code 10 to 15
 * gpm}, {@code >=100 gpm}, {@code 2/0 AWG}. Numbers have the shortest digits that agree with the
 * value to six significant ones, a point for decimals, no exponent and no grouping.
 */
public final class AmountWriter {
  private static final MathContext SIX = new MathContext(6, RoundingMode.HALF_UP);

  private AmountWriter() {}

  /**
   * The number of an SI value in a unit, without the unit.
   *
   * @param si finite value in SI
   */
  public static String number(double si, Unit unit) {
    return unit.equals(Units.AWG) ? gauge(si) : digits(unit.fromSi(si));
  }

  /**
   * The shortest digits that agree with {@code value} to six significant ones.
   *
   * @throws IllegalArgumentException if the value is not finite
   */
  public static String digits(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a number that can be printed: " + value);
    }
    BigDecimal rounded = new BigDecimal(value).round(SIX);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** The same with a comma for decimals, for pages in languages that write it so. */
  public static String digitsWithComma(double value) {
    return digits(value).replace('.', ',');
  }

  /** An SI value with its unit. */
  public static String amount(double si, Unit unit) {
    return withUnit(number(si, unit), unit);
  }

  /** An interval of SI values with its unit; empty where nothing at all is known. */
  public static String interval(double lo, double hi, Unit unit) {
    double first = unit.isReversed() ? hi : lo;
    double last = unit.isReversed() ? lo : hi;
    if (Double.isInfinite(first) && Double.isInfinite(last)) {
      return "";
    }
    if (first == Interval.MORE_THAN_NOTHING.lo() && Double.isInfinite(last)) {
      return ">" + amount(0, unit);
    }
    if (Double.isInfinite(last)) {
      return ">=" + amount(first, unit);
    }
    if (Double.isInfinite(first)) {
      return "<=" + amount(last, unit);
    }
    String from = number(first, unit);
    String to = number(last, unit);
    return from.equals(to) ? withUnit(from, unit) : withUnit(from + " to " + to, unit);
  }

  /** An interval of SI values with its unit; empty where nothing at all is known. */
  public static String interval(Interval interval, Unit unit) {
    return interval(interval.lo(), interval.hi(), unit);
  }

  private static String withUnit(String number, Unit unit) {
    return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
  }

  /** Gauges above 0 are written {@code 1/0} to {@code 4/0}. */
  private static String gauge(double number) {
    boolean aught = number <= 0 && number >= -3 && number == Math.rint(number);
    return aught ? Math.round(1 - number) + "/0" : digits(number);
  }
}
