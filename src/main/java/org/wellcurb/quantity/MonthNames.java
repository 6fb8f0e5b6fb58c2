package org.wellcurb.quantity;

import java.util.HashMap;
import java.util.Map;

/** Names of months in English and French, whole and short, without case. */
final class MonthNames {
  private static final String[] NAMES = {
    "january jan janvier janv",
    "february feb febr f\u00E9vrier fevrier f\u00E9vr fevr f\u00E9v",
    "march mar mars",
    "april apr avril avr",
    "may mai",
    "june jun juin",
    "july jul juillet juil",
    "august aug ao\u00FBt aout",
    "september sep sept septembre",
    "october oct octobre",
    "november nov novembre",
    "december dec d\u00E9cembre decembre d\u00E9c",
  };
  private static final Map<String, Integer> BY_NAME = byName();

  private MonthNames() {}

  private static Map<String, Integer> byName() {
    Map<String, Integer> months = new HashMap<>();
    for (int i = 0; i < NAMES.length; i++) {
      for (String name : NAMES[i].split(" ")) {
        months.put(name, i + 1);
      }
    }
    return months;
  }

  /** The month, 1 to 12, with this name in lower case; 0 if there is none. */
  static int number(String lower) {
    return BY_NAME.getOrDefault(lower, 0);
  }
}
