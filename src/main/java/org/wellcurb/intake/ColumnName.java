package org.wellcurb.intake;

import java.util.List;
import java.util.Locale;

/**
 * How a header map names a column: by its header, or by its place.
 *
 * @param name the header, without regard to case and outer blanks; empty for a place
 * @param place from 1; 0 for a name
 */
public record ColumnName(String name, int place) {

  public static ColumnName of(String name) {
    return new ColumnName(name, 0);
  }

  public static ColumnName at(int place) {
    return new ColumnName("", place);
  }

  /** The column of a header that is meant, from 0; -1 if there is none. */
  int find(List<String> header) {
    if (place > 0) {
      return place <= header.size() ? place - 1 : -1;
    }
    for (int i = 0; i < header.size(); i++) {
      if (fold(header.get(i)).equals(fold(name))) {
        return i;
      }
    }
    return -1;
  }

  /** How messages call it. */
  public String label() {
    return place > 0 ? "column " + place : name;
  }

  static String fold(String header) {
    return HeaderKey.strip(header).toLowerCase(Locale.ROOT);
  }
}
