package org.wellcurb.formula;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The spaces that French has before a colon and its like, and within its quotation marks: such a
 * space never ends a line, else the sign would stand alone at the beginning of the next.
 */
public final class FrenchSpaces {
  private static final char NO_BREAK = '\u00a0';
  private static final char NARROW = '\u202f';

  /** So many digits before the comma are set in threes; four are read as they stand. */
  private static final int LONG = 5;

  private static final Pattern BEFORE = Pattern.compile(" (?=[:;?!»%](?!\\w))");
  private static final Pattern AFTER = Pattern.compile("(?<=«) ");

  private FrenchSpaces() {}

  /** A text of ours in French, with its spaces; in any other language as it is. */
  public static String in(Locale locale, String text) {
    return locale.getLanguage().equals("fr") ? set(text) : text;
  }

  /** A figure in French: with a decimal comma, and its thousands apart from five digits on. */
  public static String number(String figure) {
    StringBuilder text = new StringBuilder(figure.replace('.', ','));
    int first = figure.startsWith("-") ? 1 : 0;
    int end = first;
    while (end < text.length() && Character.isDigit(text.charAt(end))) {
      end++;
    }
    if (end - first >= LONG) {
      for (int at = end - 3; at > first; at -= 3) {
        text.insert(at, NARROW);
      }
    }
    return text.toString();
  }

  /** A text in French, with its spaces. */
  public static String set(String text) {
    String before = BEFORE.matcher(text).replaceAll(String.valueOf(NO_BREAK));
    return AFTER.matcher(before).replaceAll(String.valueOf(NO_BREAK));
  }
}
