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
      if (!name.isEmpty() && "0123456789+-.<>~".indexOf(name.charAt(0)) >= 0) {
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
