package org.wellcurb.quantity;

/**
 * One reading of a text, made plain, as an amount without brackets: a point, a bound, a range or a
 * list. Used once.
 */
final class AmountText {
  private static final String[] ABOUT = {
    "~",
    "approximately",
    "approx",
    "estimated",
    "est",
    "about",
    "abt",
    "around",
    "circa",
    "ca",
    "environ",
    "env",
    "+/-",
    "+-",
    "\u00B1",
    "c."
  };
  private static final String[] ABOUT_AFTER = {
    "~", "approximately", "approx", "estimated", "estimate", "est", "+/-", "+-", "\u00B1", "env"
  };
  private static final String[] AT_LEAST = {
    ">=",
    "=>",
    "\u2265",
    ">",
    "more than",
    "greater than",
    "over",
    "at least",
    "not less than",
    "plus de"
  };
  private static final String[] AT_MOST = {
    "<=",
    "=<",
    "\u2264",
    "<",
    "less than",
    "fewer than",
    "under",
    "below",
    "at most",
    "up to",
    "not more than",
    "moins de"
  };
  private static final String[] OR_MORE = {
    "+", "or more", "and more", "and up", "and over", "plus"
  };
  private static final String[] OR_LESS = {"or less", "or under", "and under"};
  private static final String[] TO = {"to", "thru", "through", "-", "\u00E0"};
  private static final String[] AND = {",", ";", "&", "and", "or", "et", "ou"};

  private final Words words;
  private final Quantity first;
  private final Quantity second;
  private final Expected expected;
  private final Unit bare;

  private Note note = Note.NONE;

  AmountText(String text, Expected expected, Unit bare, Comma comma) {
    this.words = new Words(text);
    this.first = new Quantity(text, expected, comma);
    this.second = new Quantity(text, expected, comma);
    this.expected = expected;
    this.bare = bare;
  }

  /** True if a unit stands in the text. */
  boolean statesUnit() {
    return first.unit != null || second.unit != null;
  }

  Reading read() {
    int at = about(0, ABOUT);
    int least = words.any(AT_LEAST, at);
    if (least >= 0) {
      return bound(about(least, ABOUT), true);
    }
    int most = words.any(AT_MOST, at);
    if (most >= 0) {
      return bound(about(most, ABOUT), false);
    }
    int between = words.any(new String[] {"between", "entre", "from", "de"}, at);
    return between < 0 ? plainOrRange(at) : between(between);
  }

  /** What follows is taken as it stands, and flagged. */
  private int about(int at, String[] signs) {
    int next = words.anyShortened(signs, at);
    if (next < 0) {
      return words.skip(at);
    }
    note = Note.APPROXIMATE;
    return next;
  }

  private Reading bound(int at, boolean lower) {
    if (!first.read(at)) {
      return failure(first);
    }
    int end = about(first.end, ABOUT_AFTER);
    return end == words.length() ? bounded(lower) : notANumber();
  }

  private Reading bounded(boolean lower) {
    double si = first.si(bare);
    boolean up = lower != unit(first, bare).isReversed();
    return up
        ? amount(si, Double.POSITIVE_INFINITY, 0)
        : amount(
            unit(first, bare).isReversed() ? Double.NEGATIVE_INFINITY : expected.floor(), si, 0);
  }

  private Reading between(int at) {
    if (!first.read(at)) {
      return failure(first);
    }
    int to = words.any(AND, first.end);
    if (to < 0) {
      to = words.any(TO, first.end);
    }
    return to < 0 ? notANumber() : range(to, Note.NONE, false);
  }

  private Reading plainOrRange(int at) {
    if (!first.read(at)) {
      return failure(first);
    }
    int end = words.skip(first.end);
    if (end == words.length()) {
      return point();
    }
    int to = words.any(TO, end);
    if (to >= 0) {
      return range(to, Note.NONE, words.at(end) == '-');
    }
    int spread = words.any(new String[] {"+/-", "+-", "\u00B1"}, end);
    if (spread >= 0 && spread < words.length()) {
      return spread(spread);
    }
    if (words.isLast(OR_MORE, end)) {
      return bounded(true);
    }
    if (words.isLast(OR_LESS, end)) {
      return bounded(false);
    }
    int after = about(end, ABOUT_AFTER);
    if (after == words.length()) {
      return point();
    }
    int and = words.any(AND, end);
    if (and < 0 && first.isPartTooLarge) {
      return new Reading.Unreadable(Note.PART_TOO_LARGE);
    }
    return and < 0 ? stray(end) : range(and, Note.SEVERAL, false);
  }

  private Reading point() {
    double si = first.si(bare);
    return amount(si, si, first.halfPlaceSi(bare));
  }

  /** {@code 40 +/- 2}. */
  private Reading spread(int at) {
    if (!second.read(at) || words.skip(second.end) != words.length()) {
      return notANumber();
    }
    if (first.unit == null) {
      first.unit = second.unit;
    }
    if (second.unit == null) {
      second.unit = first.unit;
    }
    Unit unit = unit(first, bare);
    if (!unit.equals(unit(second, bare)) || second.negative) {
      return notANumber();
    }
    double lo = unit.toSi(first.value - second.value);
    double hi = unit.toSi(first.value + second.value);
    return amount(Math.min(lo, hi), Math.max(lo, hi), 0);
  }

  private Reading range(int at, Note kind, boolean hyphen) {
    if (!second.read(at)) {
      return failure(second);
    }
    int end = about(second.end, ABOUT_AFTER);
    if (end != words.length()) {
      return notANumber();
    }
    if (first.unit == null) {
      first.unit = second.unit;
    }
    if (second.unit == null) {
      if (first.isFeetThenInches(second)) {
        // 5'-11 has lost the mark of its inches; 5 ft - 11 may as well run from 5 to 11 ft.
        boolean tight = hyphen && first.end + 1 == at;
        boolean falling = (hyphen || kind != Note.NONE) && second.value <= first.value;
        if (tight || falling) {
          first.addInches(second);
          return point();
        }
        if (hyphen) {
          return notANumber();
        }
      }
      second.unit = first.unit;
    }
    Unit one = unit(first, bare);
    Unit two = unit(second, bare);
    if (!one.equals(two) && one.system() != two.system()) {
      return new Reading.Unreadable(Note.UNITS_DISAGREE);
    }
    double lo = first.si(bare);
    double hi = second.si(bare);
    if (kind != Note.NONE) {
      note = note == Note.NONE ? kind : note;
    }
    boolean either = kind == Note.SEVERAL || one.dimension().equals(Dimension.WIRE_GAUGE);
    if (lo > hi && !either) {
      return new Reading.Unreadable(Note.REVERSED);
    }
    return amount(Math.min(lo, hi), Math.max(lo, hi), 0);
  }

  private Reading amount(double lo, double hi, double halfPlace) {
    Unit unit = unit(first, bare);
    if (!(lo <= hi)) {
      return notANumber();
    }
    Note problem = lo == hi ? expected.problem(lo, unit) : problem(lo, hi, unit);
    if (problem != Note.NONE) {
      return new Reading.Unreadable(problem);
    }
    return new Reading.Amount(lo + 0.0, hi + 0.0, halfPlace, unit, note);
  }

  private Note problem(double lo, double hi, Unit unit) {
    Note low = Double.isInfinite(lo) ? Note.NONE : expected.problem(lo, unit);
    Note high = Double.isInfinite(hi) ? Note.NONE : expected.problem(hi, unit);
    return low == Note.NONE ? high : low;
  }

  private static Unit unit(Quantity quantity, Unit bare) {
    return quantity.unit == null ? bare : quantity.unit;
  }

  /** A word after the number that is not a unit is named as such; anything else is not a number. */
  private Reading stray(int at) {
    for (int i = at; i < words.length(); i++) {
      if (!Character.isLetter(words.at(i)) && !Glyphs.isBlank(words.at(i))) {
        return notANumber();
      }
    }
    return new Reading.Unreadable(Note.UNKNOWN_UNIT);
  }

  private static Reading failure(Quantity quantity) {
    Note why = quantity.problem;
    return switch (why) {
      case AMBIGUOUS_COMMA, AMBIGUOUS_BLANK, AMBIGUOUS_SIGN -> new Reading.Unsure(why);
      default -> new Reading.Unreadable(why);
    };
  }

  private static Reading notANumber() {
    return new Reading.Unreadable(Note.NOT_A_NUMBER);
  }
}
