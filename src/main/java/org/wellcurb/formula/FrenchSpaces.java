package org.wellcurb.formula;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The spaces that French has before a colon and its like, and within its quotation marks: such a
 * space never ends a line, else the sign would stand alone at the beginning of the next.
 */
public final class FrenchSpaces {
  private static final char NO_BREAK = '\u00a0';
  private static final Pattern BEFORE = Pattern.compile(" (?=[:;?!»%](?!\\w))");
  private static final Pattern AFTER = Pattern.compile("(?<=«) ");

  private FrenchSpaces() {}

  /** A text of ours in French, with its spaces; in any other language as it is. */
  public static String in(Locale locale, String text) {
    return locale.getLanguage().equals("fr") ? set(text) : text;
  }

  /** A text in French, with its spaces. */
  public static String set(String text) {
    String before = BEFORE.matcher(text).replaceAll(String.valueOf(NO_BREAK));
    return AFTER.matcher(before).replaceAll(String.valueOf(NO_BREAK));
  }
}
