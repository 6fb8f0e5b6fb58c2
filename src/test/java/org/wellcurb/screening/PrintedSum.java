package org.wellcurb.screening;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Does a printed sum again, as a reader with a pocket calculator would, in SI: of the program's own
 * code it uses nothing. What stands after a semicolon is a remark. What is not known is left out of
 * a least, a greatest and an alternative, and anywhere else makes the sum unknown (NaN).
 */
final class PrintedSum {
  private static final double GALLON = 0.003785411784;
  private static final double GRAVITY = 9.80665;
  private static final double POUND = 0.45359237;

  private static final Map<String, Double> UNITS =
      Map.ofEntries(
          Map.entry("ft", 0.3048),
          Map.entry("in", 0.0254),
          Map.entry("m", 1.0),
          Map.entry("mm", 0.001),
          Map.entry("ft2", 0.3048 * 0.3048),
          Map.entry("m2", 1.0),
          Map.entry("ft3", 0.3048 * 0.3048 * 0.3048),
          Map.entry("m3", 1.0),
          Map.entry("gal", GALLON),
          Map.entry("L", 0.001),
          Map.entry("gpm", GALLON / 60),
          Map.entry("L/min", 0.001 / 60),
          Map.entry("gpd", GALLON / 86400),
          Map.entry("L/d", 0.001 / 86400),
          Map.entry("gpm/ft", GALLON / 60 / 0.3048),
          Map.entry("L/min/m", 0.001 / 60),
          Map.entry("ft/s", 0.3048),
          Map.entry("m/s", 1.0),
          Map.entry("m/s2", 1.0),
          Map.entry("psi", POUND * GRAVITY / (0.0254 * 0.0254)),
          Map.entry("kPa", 1000.0),
          Map.entry("lb", POUND),
          Map.entry("kg", 1.0),
          Map.entry("lb/gal", POUND / GALLON),
          Map.entry("kg/m3", 1.0),
          Map.entry("g/L", 1.0),
          Map.entry("mg/L", 0.001),
          Map.entry("mg h/L", 3.6),
          Map.entry("hp", 550 * POUND * GRAVITY * 0.3048),
          Map.entry("kW", 1000.0),
          Map.entry("V", 1.0),
          Map.entry("A", 1.0),
          Map.entry("ohm", 1.0),
          Map.entry("%", 0.01),
          Map.entry("s", 1.0),
          Map.entry("min", 60.0),
          Map.entry("h", 3600.0),
          Map.entry("day", 86400.0),
          Map.entry("days", 86400.0));

  private static final Pattern TOKEN =
      Pattern.compile(
          "\\s*(\\d{4}-\\d\\d-\\d\\d|\\d+(?:\\.\\d+)?|not known|none|, or\\b|[-+x/^(),]"
              + "|(?:max|min|ln|floor)(?=\\()|pi|[A-Za-z%][A-Za-z0-9/%]*(?: h/L)?)");

  private final List<String> tokens = new ArrayList<>();
  private int at;

  /** Place of the figure that is moved by half of its fifth digit; -1 for none. */
  private int moved = -1;

  private PrintedSum(String text) {
    Matcher matcher = TOKEN.matcher(text);
    int end = 0;
    while (end < text.length() && matcher.find(end) && matcher.start() == end) {
      tokens.add(matcher.group(1));
      end = matcher.end();
    }
    if (!text.substring(end).isBlank()) {
      throw new IllegalArgumentException("cannot be done by hand at: " + text.substring(end));
    }
  }

  /**
   * What the sum comes to in SI, and how far that may be off because sheets print five digits: each
   * figure is moved by half of its fifth.
   */
  static double[] of(String printed) {
    PrintedSum sum = new PrintedSum(printed.split(";", 2)[0]);
    double value = sum.value(-1);
    double slack = 1e-9 * Math.abs(value);
    for (int i = 0; i < sum.tokens.size(); i++) {
      if (sum.tokens.get(i).matches("\\d+(\\.\\d+)?")) {
        double moved = Math.abs(sum.value(i) - value);
        slack += Double.isNaN(moved) ? 0 : moved;
      }
    }
    return new double[] {value, slack};
  }

  /** Half of the fifth digit of a figure. */
  private static double halfFifth(double figure) {
    return figure == 0 ? 0 : 0.5 * Math.pow(10, Math.floor(Math.log10(figure)) - 4);
  }

  private double value(int moved) {
    at = 0;
    this.moved = moved;
    double value = alternatives();
    if (at < tokens.size()) {
      throw new IllegalArgumentException(tokens.subList(at, tokens.size()) + " left");
    }
    return value;
  }

  private boolean take(String token) {
    if (at < tokens.size() && tokens.get(at).equals(token)) {
      at++;
      return true;
    }
    return false;
  }

  private double alternatives() {
    double first = sum();
    while (take(", or")) {
      double next = sum();
      first = Double.isNaN(first) ? next : first;
    }
    return first;
  }

  private double sum() {
    double value = product();
    while (true) {
      double sign = take("+") ? 1 : take("-") ? -1 : 0;
      if (sign == 0) {
        return value;
      }
      double next = product();
      value += sign * next;
    }
  }

  private double product() {
    double value = power();
    while (true) {
      if (take("x")) {
        value = times(value, power());
      } else if (take("/")) {
        value /= power();
      } else {
        return value;
      }
    }
  }

  /** Nothing of something unknown is nothing. */
  private static double times(double a, double b) {
    return a == 0 || b == 0 ? 0 : a * b;
  }

  private double power() {
    double value = part();
    return take("^") ? Math.pow(value, part()) : value;
  }

  private double part() {
    if (take("-")) {
      return -power();
    }
    if (take("(")) {
      double value = alternatives();
      close();
      return value;
    }
    if (take("not known") || take("none")) {
      return Double.NaN;
    }
    if (take("pi")) {
      return Math.PI;
    }
    for (String name : List.of("ln", "floor")) {
      if (take(name)) {
        take("(");
        double value = sum();
        close();
        return name.equals("ln") ? Math.log(value) : Math.floor(value + 1e-9);
      }
    }
    for (String name : List.of("max", "min")) {
      if (take(name)) {
        return outermost(name.equals("max") ? 1 : -1);
      }
    }
    return figure();
  }

  private double outermost(int sign) {
    take("(");
    double best = Double.NaN;
    do {
      double next = sum();
      best = Double.isNaN(best) || sign * next > sign * best ? next : best;
    } while (take(","));
    close();
    return best;
  }

  private void close() {
    if (!take(")")) {
      throw new IllegalArgumentException(
          "no closing bracket before " + tokens.subList(at, tokens.size()));
    }
  }

  private double figure() {
    String token = tokens.get(at++);
    if (token.matches("\\d{4}-\\d\\d-\\d\\d")) {
      return LocalDate.parse(token).toEpochDay() * 86400.0;
    }
    double value = Double.parseDouble(token);
    value += at - 1 == moved ? halfFifth(value) : 0;
    Double unit = at < tokens.size() ? UNITS.get(tokens.get(at)) : null;
    if (unit == null) {
      return value;
    }
    at++;
    return value * unit;
  }
}
