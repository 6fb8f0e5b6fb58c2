package org.wellcurb.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Figures of several rounds, by name, printed as min, median and max. */
final class Figures {
  private final Map<String, List<Double>> figures = new LinkedHashMap<>();

  void add(String name, double figure) {
    figures.computeIfAbsent(name, n -> new ArrayList<>()).add(figure);
  }

  /** Prints one line; nothing where there is no such figure. */
  void print(String name, String aim) {
    List<Double> sorted = new ArrayList<>(figures.getOrDefault(name, List.of()));
    if (sorted.isEmpty()) {
      return;
    }
    Collections.sort(sorted);
    System.out.printf(
        Locale.ROOT,
        "%-46s %8.2f %8.2f %8.2f  %s%n",
        name,
        sorted.get(0),
        sorted.get(sorted.size() / 2),
        sorted.get(sorted.size() - 1),
        aim);
  }

  /** Prints, round by round, the ratio of two. */
  void printRatio(String above, String below, String aim) {
    List<Double> over = figures.getOrDefault(above, List.of());
    List<Double> under = figures.getOrDefault(below, List.of());
    String name = above.replace(", s", "") + " / " + below.replace(", s", "");
    for (int i = 0; i < Math.min(over.size(), under.size()); i++) {
      add(name, over.get(i) / under.get(i));
    }
    print(name, aim);
  }
}
