package org.wellcurb.quantity;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Positions in degrees, minutes and seconds, or with the letter of a quarter: {@code 45° 12' 30"
 * N}, {@code 122.5 W}, {@code W 122 30.5}. South and west are negative. A letter and a minus sign
 * together are not read.
 */
final class AngleText {
  // A part begins behind a mark or a blank: 12' is no degree and two minutes.
  private static final Pattern SHAPE =
      Pattern.compile(
          "([nsew])?\\s*(-)?\\s*(\\d{1,3}(?:\\.\\d+)?)\\s*(?:°|d|deg)?"
              + "(?:[\\s-]*(?<![\\d.])(\\d{1,2}(?:\\.\\d+)?)\\s*(?:'|m|min)?"
              + "(?:[\\s-]*(?<![\\d.])(\\d{1,2}(?:\\.\\d+)?)\\s*(?:\"|''|s|sec)?)?)?\\s*([nsew])?");

  /** A comma in what no plain number is: minutes and seconds never have thousands. */
  private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");

  private static final Pattern PLAIN = Pattern.compile("[-+0-9.,\\s]*");

  private AngleText() {}

  /** The angle; null if the text has another shape (it may be a bare number with its unit). */
  static @Nullable Reading read(String plain, Expected expected, Comma comma) {
    String text = plain.replace(Glyphs.FIXED_BLANK, ' ').toLowerCase(Locale.ROOT);
    if (comma.isDecimal() || !PLAIN.matcher(text).matches()) {
      text = DECIMAL_COMMA.matcher(text).replaceAll(".");
    }
    Matcher m = SHAPE.matcher(text);
    if (!m.matches()) {
      return null;
    }
    String letter = (m.group(1) == null ? "" : m.group(1)) + (m.group(6) == null ? "" : m.group(6));
    boolean minus = m.group(2) != null;
    boolean latitude = expected.most() <= 90;
    if (letter.length() > 1
        || (minus && !letter.isEmpty())
        || (!letter.isEmpty() && latitude != "ns".contains(letter))) {
      return new Reading.Unreadable(Note.NOT_A_NUMBER);
    }
    return parts(m, minus || letter.equals("s") || letter.equals("w"), expected);
  }

  private static Reading parts(Matcher m, boolean negative, Expected expected) {
    @Nullable String minutes = m.group(4);
    @Nullable String seconds = m.group(5);
    String degrees = m.group(3);
    if (part(minutes) >= 60 || part(seconds) >= 60) {
      return new Reading.Unreadable(Note.PART_TOO_LARGE);
    }
    boolean wrong =
        (degrees.contains(".") && part(minutes) + part(seconds) > 0)
            || (minutes != null && minutes.contains(".") && part(seconds) > 0);
    if (wrong) {
      return new Reading.Unreadable(Note.NOT_A_NUMBER);
    }
    double value = part(degrees) + part(minutes) / 60 + part(seconds) / 3600;
    boolean toDegrees = minutes == null || degrees.contains(".");
    boolean toMinutes = seconds == null || (minutes != null && minutes.contains("."));
    double half =
        toDegrees
            ? half(degrees)
            : toMinutes && minutes != null ? half(minutes) / 60 : half(seconds) / 3600;
    if (value > expected.most()) {
      return new Reading.Unreadable(Note.IMPOSSIBLE);
    }
    double signed = negative ? 0.0 - value : value;
    return new Reading.Amount(signed, signed, half, Units.DEGREE, Note.NONE);
  }

  private static double part(@Nullable String digits) {
    return digits == null ? 0 : Double.parseDouble(digits);
  }

  private static double half(@Nullable String digits) {
    if (digits == null) {
      return 0;
    }
    int point = digits.indexOf('.');
    return PlainNumber.halfPlace(point < 0 ? 0 : digits.length() - point - 1);
  }
}
