package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A header on two lines, as spreadsheets have it: groups above, of merged cells, and names below.
 */
final class HeaderLines {
  private HeaderLines() {}

  /**
   * A name with its group before it, {@code Casing Depth}, where the upper line is one of groups
   * only: each of its cells is merged over the next, or stands over a blank.
   *
   * @return null if the upper line is something else, such as a title
   */
  static @Nullable List<String> grouped(List<String> above, List<String> below) {
    int n = below.size();
    if (above.size() != n || n < 2) {
      return null;
    }
    List<String> both = new ArrayList<>();
    String group = "";
    int wideGroups = 0;
    int narrow = 0;
    boolean beyondFirst = false;
    for (int i = 0; i < n; i++) {
      String upper = HeaderKey.strip(above.get(i));
      String name = HeaderKey.strip(below.get(i));
      boolean wide = i + 1 < n && HeaderKey.strip(above.get(i + 1)).isEmpty();
      if (isFigure(upper) || isFigure(name) || upper.endsWith(":")) {
        return null;
      }
      if (!upper.isEmpty()) {
        wideGroups += wide && !name.isEmpty() ? 1 : 0;
        narrow += wide || name.isEmpty() ? 0 : 1;
        beyondFirst |= i > 0;
        group = name.isEmpty() ? "" : upper;
      }
      both.add(name.isEmpty() ? upper : (group + " " + name).strip());
    }
    boolean areGroups = wideGroups > (narrow == 0 ? 0 : 1) && beyondFirst;
    return areGroups && !above.equals(below) ? both : null;
  }

  /** True if some of these cells are figures, which no name of a column is. */
  static boolean haveFigures(List<String> cells) {
    return cells.stream().anyMatch(cell -> isFigure(HeaderKey.strip(cell)));
  }

  private static boolean isFigure(String name) {
    return !name.isEmpty() && "0123456789+-.<>~".indexOf(name.charAt(0)) >= 0;
  }

  /**
   * The two lines brought together: a name that is blank is that of the line above, and a name that
   * stands more than once has its group before it, {@code Casing Depth}.
   *
   * @return null if the lower line needs no other above it or holds numbers, so that it is no
   *     header
   */
  static @Nullable List<String> together(List<String> above, List<String> below) {
    Set<String> seen = new HashSet<>();
    Set<String> twice = new HashSet<>();
    boolean blank = false;
    for (String cell : below) {
      String name = ColumnName.fold(cell);
      blank |= name.isEmpty();
      if (isFigure(name)) {
        return null;
      }
      if (!seen.add(name)) {
        twice.add(name);
      }
    }
    boolean filled = above.stream().anyMatch(c -> !HeaderKey.strip(c).isEmpty());
    if (above.size() != below.size() || !filled || (!blank && twice.isEmpty())) {
      return null;
    }
    List<String> both = new ArrayList<>();
    String group = "";
    for (int i = 0; i < below.size(); i++) {
      String upper = HeaderKey.strip(above.get(i));
      String name = HeaderKey.strip(below.get(i));
      group = upper.isEmpty() ? group : upper;
      if (name.isEmpty()) {
        both.add(upper);
      } else {
        both.add(twice.contains(ColumnName.fold(name)) ? (group + " " + name).strip() : name);
      }
    }
    return both;
  }
}
