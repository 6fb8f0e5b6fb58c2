package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.FormulaException;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Nearest;

/**
 * Reads an amount as a table or a figure writes it: {@code 6 ft}, {@code 6 1/2 in}, {@code 1/0
 * AWG}, {@code 6 ft (1.8 m)}.
 */
final class AmountText {
  private static final Pattern AMOUNT =
      Pattern.compile(
          "\\s*(?<number>-?[0-9]+(?:\\.[0-9]+)?(?:\\s+[0-9]+/[0-9]+|/[0-9]+)?)\\s*"
              + "(?<unit>[^0-9(][^(]*)?");
  private static final Pattern DUAL =
      Pattern.compile("(?<primary>[^(]*)\\((?<bracket>[^()]*)\\)\\s*");

  private AmountText() {}

  /** An amount, dual or not, of this dimension. */
  static Table.Amount read(String text, Dimension dimension) throws FormulaException {
    Matcher dual = DUAL.matcher(text);
    if (!dual.matches()) {
      One one = one(text, 0, text.length(), dimension, null);
      return new Table.Amount(one.si, one.unit, Double.NaN, null);
    }
    One primary = one(text, 0, dual.end("primary"), dimension, null);
    One bracket = one(text, dual.start("bracket"), dual.end("bracket"), dimension, null);
    if (primary.unit.system() == bracket.unit.system()
        || primary.unit.system() == UnitSystem.NEUTRAL
        || bracket.unit.system() == UnitSystem.NEUTRAL) {
      throw new FormulaException(
          dual.start("bracket"),
          dual.end("bracket"),
          "the bracket must give the amount in the other unit system",
          "write one side in US units and one in metric ones");
    }
    return new Table.Amount(primary.si, primary.unit, bracket.si, bracket.unit);
  }

  /**
   * A single amount that stands in part of a text.
   *
   * @param fallback the unit of a bare number; null if a number must have its unit
   * @return its value in SI
   */
  static double single(String text, int from, int to, Dimension dimension, @Nullable Unit fallback)
      throws FormulaException {
    return one(text, from, to, dimension, fallback).si;
  }

  /** The unit written in part of a text; null if none is. */
  static @Nullable Unit unit(String text, int from, int to) {
    Matcher matcher = AMOUNT.matcher(text).region(from, to);
    String unit = matcher.matches() ? matcher.group("unit") : null;
    return unit == null ? null : Units.named(unit.strip()).orElse(null);
  }

  private record One(double si, Unit unit) {}

  private static One one(
      String text, int from, int to, Dimension dimension, @Nullable Unit fallback)
      throws FormulaException {
    Matcher matcher = AMOUNT.matcher(text).region(from, to);
    if (!matcher.matches()) {
      throw new FormulaException(
          from,
          to,
          "this is not an amount",
          "write a number and its unit, such as "
              + example(dimension)
              + ", without thousands commas");
    }
    String written = matcher.group("unit");
    Unit unit = fallback;
    if (written != null && !written.isBlank()) {
      String name = written.strip();
      unit = Units.named(name).orElse(null);
      if (unit == null) {
        int start = matcher.start("unit");
        throw new FormulaException(
            start, start + name.length(), "there is no unit " + name, mend(name, dimension));
      }
    } else if (dimension.equals(Dimension.NUMBER)) {
      unit = Units.ONE;
    }
    if (unit == null) {
      throw new FormulaException(
          from, to, "the amount has no unit", "write one, such as " + example(dimension));
    }
    if (!unit.dimension().equals(dimension)) {
      throw new FormulaException(
          from,
          to,
          "this is an amount of " + unit.dimension().label() + ", not of " + dimension.label(),
          "write it such as " + example(dimension));
    }
    return new One(unit.toSi(number(matcher.group("number"), dimension, from, to)), unit);
  }

  private static double number(String written, Dimension dimension, int from, int to)
      throws FormulaException {
    int slash = written.indexOf('/');
    if (slash < 0) {
      return Double.parseDouble(written);
    }
    String[] parts = written.split("\\s+", -1);
    String fraction = parts[parts.length - 1];
    int bar = fraction.indexOf('/');
    String top = fraction.substring(0, bar);
    double below = Double.parseDouble(fraction.substring(bar + 1));
    if (dimension.equals(Dimension.WIRE_GAUGE) && parts.length == 1 && below == 0) {
      return 1 - Double.parseDouble(top);
    }
    if (below == 0 || top.contains(".") || (parts.length == 2 && parts[0].contains("."))) {
      throw new FormulaException(from, to, "this is not a fraction", "write it such as 6 1/2 in");
    }
    double value = Double.parseDouble(top) / below;
    if (parts.length == 1) {
      return value;
    }
    double whole = Double.parseDouble(parts[0]);
    return parts[0].startsWith("-") ? whole - value : whole + value;
  }

  private static String mend(String name, Dimension dimension) {
    List<String> symbols = new ArrayList<>();
    for (Unit unit : Units.all()) {
      if (unit.dimension().equals(dimension)) {
        symbols.add(unit.symbol());
        symbols.addAll(unit.aliases());
      }
    }
    String nearest = Nearest.of(name, symbols);
    if (nearest != null && !nearest.isEmpty()) {
      return "did you mean " + nearest + "?";
    }
    return "write it such as " + example(dimension);
  }

  /** An amount of this dimension, for a message. */
  static String example(Dimension dimension) {
    for (Unit unit : Units.all()) {
      if (unit.dimension().equals(dimension)) {
        return unit.symbol().isEmpty() ? "4" : "4 " + unit.symbol();
      }
    }
    return "4";
  }
}
