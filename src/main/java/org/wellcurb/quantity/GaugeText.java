package org.wellcurb.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Wire sizes that only the trade writes: {@code 2/0} and {@code 00} (larger than gauge 0), {@code
 * #12}, and cables, {@code 12/2} or {@code 12-2 AWG}: gauge and number of conductors.
 *
 * <p>A dash and 2 to 5 behind a gauge of 10 or more is a cable; between larger sizes ({@code 6-4})
 * it may be two gauges, and is left to be read as a range, which holds both.
 */
final class GaugeText {
  private static final String END = "(?: ?(?:awg|ga|gauge|gage)\\.?)?";
  private static final Pattern AUGHTS = Pattern.compile("#? ?([1-4]) ?/ ?0" + END);
  private static final Pattern ZEROS = Pattern.compile("#? ?(0{1,4})" + END);
  private static final Pattern NUMBERED =
      Pattern.compile("(?:#|no\\.? ?|awg ?#?) ?(\\d{1,2})" + END);
  private static final Pattern CABLE =
      Pattern.compile(
          "(?:#|no\\.? ?)? ?(\\d{1,2}) ?/ ?([2-5])(?: ?w(?:ith)?/? ?(?:g|gnd|ground))?" + END);
  private static final Pattern DASHED =
      Pattern.compile(
          "(?:#|no\\.? ?)? ?(1\\d) ?- ?([2-5])(?: ?w(?:ith)?/? ?(?:g|gnd|ground))?" + END);

  private GaugeText() {}

  /** The size; null if it is not written in one of these ways. */
  static @Nullable Reading read(String plain) {
    String text = plain.replace(Glyphs.FIXED_BLANK, ' ').toLowerCase(java.util.Locale.ROOT);
    Matcher m = AUGHTS.matcher(text);
    if (m.matches()) {
      return gauge(1 - number(m), Note.NONE);
    }
    m = ZEROS.matcher(text);
    if (m.matches()) {
      return gauge(1 - m.group(1).length(), Note.NONE);
    }
    m = NUMBERED.matcher(text);
    if (m.matches()) {
      return gauge(number(m), Note.NONE);
    }
    m = CABLE.matcher(text);
    if (m.matches() && number(m) > 0) {
      return gauge(number(m), Note.CABLE);
    }
    m = DASHED.matcher(text);
    return m.matches() ? gauge(number(m), Note.CABLE) : null;
  }

  private static int number(Matcher m) {
    return Integer.parseInt(m.group(1));
  }

  private static Reading gauge(int number, Note note) {
    return new Reading.Amount(number, number, 0.5, Units.AWG, note);
  }
}
