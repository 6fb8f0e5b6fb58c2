package org.wellcurb.formula;

import java.util.Locale;
import java.util.Map;
import org.wellcurb.quantity.Unit;

/**
 * Signs of units as pages have them. Files keep the signs that any keyboard has, {@code ug/L} and
 * {@code degF}; French measures in {@code pi} and {@code po} and counts the day as {@code j}. What
 * stands on a page can be written on a form.
 */
public final class Symbols {
  private static final Map<String, String> PRINTED =
      Map.of("degF", "°F", "degC", "°C", "deg", "°", "Mohm", "MΩ", "kohm", "kΩ", "ohm", "Ω");

  /** Of units that French calls otherwise than English. */
  private static final Map<String, String> FRENCH =
      Map.ofEntries(
          Map.entry("ft", "pi"),
          Map.entry("in", "po"),
          Map.entry("psi", "lb/po²"),
          Map.entry("ft of water", "pi d'eau"),
          Map.entry("m of water", "m d'eau"),
          Map.entry("imp gal", "gal imp."),
          Map.entry("gpm", "gal/min"),
          Map.entry("imp gpm", "gal imp./min"),
          Map.entry("gpd", "gal/j"),
          Map.entry("imp gpd", "gal imp./j"),
          Map.entry("gph", "gal/h"),
          Map.entry("gpm/ft", "gal/min/pi"),
          Map.entry("ft3", "pi³"),
          Map.entry("ft3/s", "pi³/s"),
          Map.entry("ft2", "pi²"),
          Map.entry("ft/s", "pi/s"));

  private Symbols() {}

  /** The sign of a unit on a page in this language; empty for a bare number. */
  public static String of(Unit unit, Locale locale) {
    String symbol = printed(unit.symbol());
    if (!locale.getLanguage().equals("fr")) {
      return symbol;
    }
    String french = FRENCH.getOrDefault(unit.symbol(), symbol);
    return french.endsWith("/d") ? french.substring(0, french.length() - 1) + "j" : french;
  }

  private static String printed(String symbol) {
    if (symbol.startsWith("ug/")) {
      return "\u00b5" + symbol.substring(1);
    }
    return PRINTED.getOrDefault(
        symbol, symbol.replace("ft3", "ft³").replace("m3", "m³").replace("m2", "m²"));
  }
}
