package org.wellcurb.formula;

import java.util.Locale;
import org.wellcurb.quantity.Unit;

/**
 * Signs of units as pages have them. Files keep the signs that any keyboard has, {@code ug/L};
 * French counts the day as {@code j}.
 */
public final class Symbols {
  private static final String MICRO = "\u00b5";

  private Symbols() {}

  /** The sign of a unit on a page in this language; empty for a bare number. */
  public static String of(Unit unit, Locale locale) {
    String symbol = unit.symbol();
    if (symbol.startsWith("ug/")) {
      return MICRO + symbol.substring(1);
    }
    boolean isOfDay = symbol.endsWith("L/d") && locale.getLanguage().equals("fr");
    return isOfDay ? symbol.substring(0, symbol.length() - 1) + "j" : symbol;
  }
}
