package org.wellcurb.quantity;

import org.jspecify.annotations.Nullable;

/**
 * One number with its unit, or several of falling units that add up: {@code 5 ft 6 1/2 in}, {@code
 * 1 h 30 min}. Filled by {@link #read}.
 */
final class Quantity {
  private static final String[] GAUGE_SIGNS = {"#", "no", "awg"};

  private final String text;
  private final Expected expected;
  private final NumberText number;

  int end;

  /** The value in {@link #unit}, sign included. */
  double value;

  boolean negative;

  /** The unit as it is taken; null if none is written. */
  @Nullable Unit unit;

  Note problem = Note.NOT_A_NUMBER;

  private double halfPlace;
  private @Nullable Unit placeUnit;
  private boolean digitsOnly;

  Quantity(String text, Expected expected, Comma comma) {
    this.text = text;
    this.expected = expected;
    this.number = new NumberText(text, comma, expected);
  }

  /** The value in SI, in {@code bare} where no unit is written. */
  double si(Unit bare) {
    return (unit == null ? bare : unit).toSi(value);
  }

  /** Half a unit of the last written place, in SI. */
  double halfPlaceSi(Unit bare) {
    Unit of = placeUnit != null ? placeUnit : unit != null ? unit : bare;
    return of.isReversed()
        ? Math.abs(of.toSi(value + halfPlace) - of.toSi(value))
        : halfPlace * of.factor();
  }

  /** Reads at {@code from}; false with a {@link #problem} if that is not a quantity. */
  boolean read(int from) {
    int at = skip(from);
    char sign = at < text.length() ? text.charAt(at) : ' ';
    negative = sign == '-';
    problem = Note.NOT_A_NUMBER;
    if (sign == '+' && expected.plusUnclear()) {
      problem = Note.AMBIGUOUS_SIGN;
      return false;
    }
    if (negative || sign == '+') {
      at = skip(at + 1);
    }
    if (expected.dimension().equals(Dimension.WIRE_GAUGE)) {
      at = Math.max(at, new Words(text).anyShortened(GAUGE_SIGNS, at));
    }
    if (!number.read(at)) {
      problem = number.problem;
      return false;
    }
    if (negative && number.isAught) {
      return false;
    }
    value = number.value;
    halfPlace = number.halfPlace;
    digitsOnly = number.digitsOnly;
    end = number.end;
    if (!readUnit()) {
      return false;
    }
    if (unit != null && digitsOnly && !readSmaller()) {
      return false;
    }
    if (negative) {
      value = -value;
    }
    return true;
  }

  /** True if what follows is inches of a foot or more, minutes of an hour or more, and the like. */
  boolean isPartTooLarge;

  /** {@code 10'-6}: less than a foot more, the inches' mark left out. */
  boolean isFeetThenInches(Quantity second) {
    return Units.FOOT.equals(unit)
        && placeUnit == null
        && digitsOnly
        && !second.negative
        && second.value < 12;
  }

  void addInches(Quantity second) {
    value = value + (negative ? -second.value : second.value) / 12;
    halfPlace = second.halfPlace;
    placeUnit = Units.INCH;
  }

  private boolean readUnit() {
    int at = skip(end);
    int noun = noun(at);
    if (noun >= 0) {
      end = noun;
      unit = Units.ONE;
      return true;
    }
    int found = UnitNames.longest(text, at);
    if (found < 0) {
      return true;
    }
    Unit written = UnitNames.unit(found);
    @Nullable Unit taken = expected.taken(written);
    boolean bareDegrees =
        written.equals(Units.DEGREE) && expected.dimension().equals(Dimension.TEMPERATURE);
    if (taken == null && !bareDegrees) {
      problem = Note.WRONG_DIMENSION;
      return false;
    }
    unit = taken;
    end = UnitNames.end(found);
    return true;
  }

  /** A counted thing's own name, {@code 12 bags}. */
  private int noun(int at) {
    for (String noun : expected.nouns()) {
      int stop = at + noun.length();
      if (text.regionMatches(true, at, noun, 0, noun.length())
          && !(stop < text.length() && Character.isLetterOrDigit(text.charAt(stop)))) {
        return stop;
      }
    }
    return -1;
  }

  /** A number of a smaller unit of the same family behind the first. */
  private boolean readSmaller() {
    int start = skip(end);
    int next = joined(start);
    boolean joined = next > start;
    if (next >= text.length() || !startsNumber(next)) {
      return true;
    }
    Unit larger = java.util.Objects.requireNonNull(unit);
    if (!number.read(next)) {
      return true;
    }
    int after = skip(number.end);
    int found = UnitNames.longest(text, after);
    @Nullable Unit smaller =
        found >= 0 ? expected.taken(UnitNames.unit(found)) : inchesUnsaid(larger, joined, after);
    if (smaller == null
        || smaller.system() != larger.system()
        || smaller.factor() >= larger.factor()) {
      return true;
    }
    if (number.value * smaller.factor() >= larger.factor() * (1 - 1e-12)) {
      isPartTooLarge = found >= 0 && !joined;
      return true;
    }
    value += number.value * smaller.factor() / larger.factor();
    halfPlace = number.halfPlace;
    placeUnit = smaller;
    end = found >= 0 ? UnitNames.end(found) : number.end;
    return true;
  }

  /** Past a dash, a comma or an {@code and} between the parts. */
  private int joined(int at) {
    if (at < text.length() && "-,&".indexOf(text.charAt(at)) >= 0) {
      return skip(at + 1);
    }
    boolean and = text.regionMatches(true, at, "and ", 0, 4);
    return and ? skip(at + 4) : at;
  }

  /** {@code 5'6}: a number right behind feet, less than 12, at the end. */
  private @Nullable Unit inchesUnsaid(Unit larger, boolean joined, int after) {
    return larger.equals(Units.FOOT) && !joined && after == text.length() ? Units.INCH : null;
  }

  /**
   * A smaller part starts with a digit or a fraction, not with a point: {@code 9'.5"} is a slip.
   */
  private boolean startsNumber(int at) {
    char c = text.charAt(at);
    return c != '.' && (Character.isDigit(c) || Character.getType(c) == Character.OTHER_NUMBER);
  }

  private int skip(int from) {
    int at = from;
    while (at < text.length() && Glyphs.isBlank(text.charAt(at))) {
      at++;
    }
    return at;
  }
}
