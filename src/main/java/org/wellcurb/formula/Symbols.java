package org.wellcurb.formula;

import java.util.Locale;
import java.util.Map;
import org.wellcurb.quantity.Unit;

/**
 * Signs of units as pages have them. Files keep the signs that any keyboard has, {@code ug/L} and
 * {@code degF}; French counts the day as {@code j}.
 */
public final class Symbols {
  private static final Map<String, String> PRINTED =
      Map.of("degF", "°F", "degC", "°C", "deg", "°", "Mohm", "MΩ", "kohm", "kΩ", "ohm", "Ω");

  private Symbols() {}

  /** The sign of a unit on a page in this language; empty for a bare number. */
  public static String of(Unit unit, Locale locale) {
    String symbol = printed(unit.symbol());
    boolean isFrench = locale.getLanguage().equals("fr");
    boolean isOfDay = symbol.endsWith("/d");
    return isOfDay && isFrench ? symbol.substring(0, symbol.length() - 1) + "j" : symbol;
  }

  private static String printed(String symbol) {
    if (symbol.startsWith("ug/")) {
      return "\u00b5" + symbol.substring(1);
    }
    return PRINTED.getOrDefault(
        symbol, symbol.replace("ft3", "ft³").replace("m3", "m³").replace("m2", "m²"));
  }
}
