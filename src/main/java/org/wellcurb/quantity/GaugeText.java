package org.wellcurb.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Cables as the trade writes them, {@code 12/2} or {@code 12-2 AWG}: gauge and number of
 * conductors. (Other sizes, {@code 2/0}, {@code 00}, {@code #12}, are numbers to {@link Quantity}.)
 *
 * <p>A dash and 2 to 5 behind a gauge of 10 or more is a cable; between larger sizes ({@code 6-4})
 * it may be two gauges, and is left to be read as a range, which holds both.
 */
final class GaugeText {
  private static final String PREFIX = "(?:(?:#|no\\.?|awg) ?)?";
  private static final String END =
      "(?: ?w(?:ith)?/? ?(?:g|gnd|ground))?(?: ?(?:awg|ga|gauge|gage)\\.?)?";
  private static final Pattern CABLE = Pattern.compile(PREFIX + "([1-9]|1\\d) ?/ ?[2-5]" + END);
  private static final Pattern DASHED = Pattern.compile(PREFIX + "(1\\d) ?- ?[2-5]" + END);

  private GaugeText() {}

  /** The size; null if it is not written so. */
  static @Nullable Reading read(String plain) {
    String text = plain.replace(Glyphs.FIXED_BLANK, ' ').toLowerCase(java.util.Locale.ROOT);
    Matcher m = CABLE.matcher(text);
    if (!m.matches()) {
      m = DASHED.matcher(text);
    }
    return m.matches() ? gauge(Integer.parseInt(m.group(1))) : null;
  }

  private static Reading gauge(int number) {
    return new Reading.Amount(number, number, 0.5, Units.AWG, Note.CABLE);
  }
}
