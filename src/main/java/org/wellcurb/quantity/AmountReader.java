package org.wellcurb.quantity;

import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads an amount as people write it: {@code 212 ft}, {@code 5 ft 6 in}, {@code 6 1/4"}, {@code
 * 10-15 gpm}, {@code >100}, {@code ~40}, {@code 9 m to 18 m (30 to 60 ft)}, {@code 52.0
 * (landowner)}. What it cannot read for sure it does not read: nothing is mended.
 *
 * <p>A unit in the text wins over the one given for bare numbers. Words that stand for no value
 * ({@code unknown}, {@code n/a}) are the caller's.
 */
public final class AmountReader {
  /** Longer texts are not tried. */
  static final int MOST_TEXT = 120;

  /** What stands in a box where an amount is asked for: it is stated, and was not measured. */
  private static final Set<String> BOXES = Set.of("yes", "y", "no", "n", "oui", "non", "true", "x");

  private AmountReader() {}

  /**
   * Reads a text.
   *
   * @param text what is written, any outer blanks included
   * @param expected what kind of amount it should be
   * @param bare the unit of numbers that state none
   * @param comma what a comma inside a number means here
   */
  public static Reading read(String text, Expected expected, Unit bare, Comma comma) {
    if (text.length() > MOST_TEXT) {
      return new Reading.Unreadable(Note.NOT_A_NUMBER);
    }
    String plain = Glyphs.withoutMark(Glyphs.plain(text));
    if (BOXES.contains(plain.toLowerCase(Locale.ROOT))) {
      return new Reading.Unreadable(Note.BOX);
    }
    @Nullable Unit taken = expected.taken(bare);
    if (taken == null) {
      return new Reading.Unreadable(Note.WRONG_DIMENSION);
    }
    @Nullable Reading special = special(plain, expected, taken, comma);
    if (special != null) {
      return special;
    }
    int bracket = bracket(plain);
    if (bracket <= 0) {
      Reading reading = new AmountText(plain, expected, taken, comma).read();
      return reading instanceof Reading.Amount
          ? reading
          : Several.read(plain, expected, taken, comma, reading);
    }
    String main = Glyphs.trim(plain.substring(0, bracket));
    String inside = Glyphs.trim(plain.substring(bracket + 1, plain.length() - 1));
    @Nullable Unit named = UnitNames.find(inside);
    if (named != null) {
      return unitInBrackets(main, named, expected, taken, comma);
    }
    Reading outer = new AmountText(main, expected, taken, comma).read();
    return outer instanceof Reading.Amount amount
        ? Bracketed.check(amount, inside, expected, comma)
        : outer;
  }

  private static @Nullable Reading special(
      String plain, Expected expected, Unit bare, Comma comma) {
    if (expected.dimension().equals(Dimension.RESISTANCE)) {
      return OverRange.read(plain, bare);
    }
    if (expected.dimension().equals(Dimension.WIRE_GAUGE)) {
      return GaugeText.read(plain);
    }
    if (expected.dimension().equals(Dimension.ANGLE)) {
      return AngleText.read(plain, expected, comma);
    }
    if (expected.dimension().equals(Dimension.CONCENTRATION) && NotDetected.isSaid(plain)) {
      return new Reading.Unsure(Note.NOT_DETECTED);
    }
    return null;
  }

  /** {@code 120 (ft)}: the unit of a number that has none outside. */
  private static Reading unitInBrackets(
      String main, Unit named, Expected expected, Unit bare, Comma comma) {
    @Nullable Unit inside = expected.taken(named);
    AmountText text = new AmountText(main, expected, inside == null ? bare : inside, comma);
    Reading reading = text.read();
    if (inside == null && !text.statesUnit() && reading instanceof Reading.Amount) {
      return new Reading.Unreadable(Note.WRONG_DIMENSION);
    }
    return reading;
  }

  /** Where the one pair of brackets at the end of the text opens; -1 if there is none such. */
  private static int bracket(String text) {
    int last = text.length() - 1;
    if (last < 1) {
      return -1;
    }
    char close = text.charAt(last);
    char open = close == ')' ? '(' : close == ']' ? '[' : 0;
    if (open == 0) {
      return -1;
    }
    int at = text.indexOf(open);
    boolean alone = text.indexOf(close) == last && text.indexOf(open, at + 1) < 0;
    return alone ? at : -1;
  }
}
