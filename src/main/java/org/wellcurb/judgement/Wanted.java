package org.wellcurb.judgement;

import java.util.Collection;
import java.util.List;

/**
 * What a comparison of words asks for, as text: {@code steel, pvc}, {@code anything but unknown},
 * {@code given}, {@code nothing}, {@code yes}. Pages read it and say it in their language.
 */
public final class Wanted {
  /** Something is to be written. */
  public static final String GIVEN = "given";

  /** Nothing is to be written. */
  public static final String NOTHING = "nothing";

  private static final String BUT = "anything but ";
  private static final String COMMA = ", ";

  private Wanted() {}

  static String oneOf(Collection<String> words, boolean isNegated) {
    String all = String.join(COMMA, words);
    return isNegated ? BUT + all : all;
  }

  /** What is asked for where this must not be so. */
  static String opposite(String wanted) {
    return switch (wanted) {
      case "" -> "";
      case GIVEN -> NOTHING;
      case NOTHING -> GIVEN;
      case "yes" -> "no";
      case "no" -> "yes";
      default -> isNone(wanted) ? wanted.substring(BUT.length()) : BUT + wanted;
    };
  }

  /** True where none of {@link #words} is asked for, and false where one of them is. */
  public static boolean isNone(String wanted) {
    return wanted.startsWith(BUT);
  }

  /** The words it speaks of. */
  public static List<String> words(String wanted) {
    return List.of((isNone(wanted) ? wanted.substring(BUT.length()) : wanted).split(COMMA));
  }
}
