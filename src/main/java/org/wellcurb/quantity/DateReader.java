package org.wellcurb.quantity;

import java.util.List;
import java.util.Locale;

/**
 * Reads a date as an interval of days, both ends included: {@code 2009-05-01} is one day, {@code
 * 2009} a year, {@code 1940s} ten; {@code before 1928} and {@code after 1990} have one end; {@code
 * between 1975-1980} has two. Words in brackets are a comment, unless they are a date: then both
 * must agree. Days have no zone and follow the proleptic ISO calendar, 1800 to 2200.
 *
 * <p>What may be two dates is ambiguous and not read. A text that says more than one thing ({@code
 * 1974, deepened in 1975}) is not read either: which of them the entry asks for is for a person to
 * say.
 */
public final class DateReader {
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
    "vers",
    "c.",
    "c"
  };
  private static final String[] ABOUT_AFTER = {
    "~", "approximately", "approx", "estimated", "estimate", "est"
  };
  private static final String[] UNTIL = {
    "on or before", "no later than", "not later than", "<=", "\u2264", "until", "by", "up to"
  };
  private static final String[] BEFORE = {
    "before", "prior to", "earlier than", "older than", "pre", "avant", "<"
  };
  private static final String[] SINCE = {
    "on or after", "no earlier than", "not before", ">=", "\u2265", "since", "depuis"
  };
  private static final String[] AFTER = {
    "after", "later than", "newer than", "post", "apr\u00E8s", "apres", ">"
  };
  private static final String[] BETWEEN = {"between", "from", "entre", "de"};
  private static final String[] TO = {
    " to ", " and ", " thru ", " through ", " until ", " et ", " \u00E0 ", " - ", "-", "/"
  };

  private final DateOrder order;
  private final int pivotYear;
  private final DayNumbers dayNumbers;

  private DateReader(DateOrder order, int pivotYear, DayNumbers dayNumbers) {
    this.order = order;
    this.pivotYear = pivotYear;
    this.dayNumbers = dayNumbers;
  }

  /**
   * Reads a text.
   *
   * @param order order of day and month in dates of figures
   * @param pivotYear first year of the hundred of two-digit years; 0 where none is stated, and such
   *     years are then ambiguous
   * @param dayNumbers whether bare numbers are a spreadsheet's count of days
   */
  public static DateReading read(
      String text, DateOrder order, int pivotYear, DayNumbers dayNumbers) {
    if (text.length() > AmountReader.MOST_TEXT) {
      return DateReading.not(Note.NOT_A_DATE);
    }
    String plain =
        Glyphs.withoutMark(Glyphs.plain(text))
            .replace(Glyphs.FIXED_BLANK, ' ')
            .toLowerCase(Locale.ROOT);
    return new DateReader(order, pivotYear, dayNumbers).whole(plain);
  }

  private DateReading whole(String text) {
    int open = text.indexOf('(');
    if (open <= 0 || !text.endsWith(")") || text.indexOf('(', open + 1) >= 0) {
      return phrase(text);
    }
    DateReading outer = phrase(Glyphs.trim(text.substring(0, open)));
    DateReading inner = phrase(Glyphs.trim(text.substring(open + 1, text.length() - 1)));
    if (!outer.isRead() || !inner.isRead()) {
      return outer.isRead() && outer.note() == Note.NONE
          ? DateReading.of(outer.from(), outer.to(), Note.COMMENT)
          : outer;
    }
    double from = Math.max(outer.from(), inner.from());
    double to = Math.min(outer.to(), inner.to());
    return from <= to
        ? DateReading.of(from, to, outer.note())
        : DateReading.not(Note.DATES_DISAGREE);
  }

  private DateReading phrase(String text) {
    Words words = new Words(text);
    int about = words.anyShortened(ABOUT, 0);
    if (about >= 0) {
      return about(phrase(text.substring(about)));
    }
    for (String after : ABOUT_AFTER) {
      String bare = text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
      if (bare.endsWith(after) && bare.length() > after.length()) {
        return about(phrase(Glyphs.trim(bare.substring(0, bare.length() - after.length()))));
      }
    }
    return bounded(text, words);
  }

  private static DateReading about(DateReading reading) {
    return reading.isRead()
        ? DateReading.of(reading.from(), reading.to(), Note.APPROXIMATE)
        : reading;
  }

  private DateReading bounded(String text, Words words) {
    DateReading single = single(text);
    if (single.isRead() || single.note() != Note.NOT_A_DATE) {
      return single;
    }
    int at = words.any(UNTIL, 0);
    if (at >= 0) {
      return bound(single(text.substring(at)), false, true);
    }
    at = words.any(BEFORE, 0);
    if (at >= 0) {
      int next = at < text.length() && text.charAt(at) == '-' ? words.skip(at + 1) : at;
      return bound(single(text.substring(next)), false, false);
    }
    at = words.any(SINCE, 0);
    if (at >= 0) {
      return bound(single(text.substring(at)), true, true);
    }
    at = words.any(AFTER, 0);
    if (at >= 0) {
      int next = at < text.length() && text.charAt(at) == '-' ? words.skip(at + 1) : at;
      return bound(single(text.substring(next)), true, false);
    }
    int between = words.any(BETWEEN, 0);
    return range(between < 0 ? text : text.substring(between));
  }

  private static DateReading bound(DateReading of, boolean after, boolean included) {
    if (!of.isRead()) {
      return of;
    }
    if (after) {
      double from = included ? of.from() : of.to() + 1;
      return DateReading.of(from, Double.POSITIVE_INFINITY, Note.NONE);
    }
    double to = included ? of.to() : of.from() - 1;
    return DateReading.of(Double.NEGATIVE_INFINITY, to, Note.NONE);
  }

  /**
   * Two dates parted by a word or a sign, the earlier first; unreadable if they can be parted
   * twice.
   */
  private DateReading range(String text) {
    DateReading found = DateReading.not(Note.NOT_A_DATE);
    for (String sign : TO) {
      boolean bare = sign.length() == 1;
      for (int at = text.indexOf(sign); at > 0; at = text.indexOf(sign, at + 1)) {
        if (bare && text.indexOf(sign) != text.lastIndexOf(sign)) {
          break;
        }
        String left = Glyphs.trim(text.substring(0, at));
        DateReading one = single(left);
        DateReading two = end(left, Glyphs.trim(text.substring(at + sign.length())));
        if (one.isRead() && two.isRead()) {
          return one.from() <= two.to()
              ? DateReading.of(one.from(), two.to(), Note.NONE)
              : DateReading.not(Note.REVERSED);
        }
        boolean other = one.note() == Note.NOT_A_DATE || two.note() == Note.NOT_A_DATE;
        for (Note why : List.of(Note.AMBIGUOUS_DATE, Note.SHORT_YEAR)) {
          if (!other && (one.note() == why || two.note() == why)) {
            found = DateReading.not(why);
          }
        }
      }
    }
    return found;
  }

  /** The later date of a range; {@code 1975-80} ends in the same hundred. */
  private DateReading end(String left, String right) {
    boolean shortYear =
        left.length() == 4 && right.length() == 2 && isDigits(left) && isDigits(right);
    return single(shortYear ? left.substring(0, 2) + right : right);
  }

  private static boolean isDigits(String text) {
    return text.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  private DateReading single(String text) {
    return SingleDate.read(text, order, pivotYear, dayNumbers);
  }
}
