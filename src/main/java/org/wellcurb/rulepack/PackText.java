package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.List;

/**
 * The text of a pack file, and where in it things stand.
 *
 * @param file how the file is named in messages
 * @param text its characters, without a byte order mark
 * @param lines place of the first character of each line
 */
record PackText(String file, String text, List<Integer> lines) {

  static PackText of(String file, String text) {
    List<Integer> lines = new ArrayList<>();
    lines.add(0);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'))) {
        lines.add(i + 1);
      }
    }
    return new PackText(file, text, List.copyOf(lines));
  }

  /** The line of a character, from 1. */
  int line(int offset) {
    int low = 0;
    int high = lines.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (lines.get(middle) <= offset) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low + 1;
  }

  /** The column of a character, from 1, counted as people count characters. */
  int column(int offset) {
    int start = lines.get(line(offset) - 1);
    return text.codePointCount(start, Math.min(offset, text.length())) + 1;
  }

  /** The whole line that a character stands in, without its end. */
  String lineAt(int offset) {
    int line = line(offset);
    int end = line < lines.size() ? lines.get(line) : text.length();
    return text.substring(lines.get(line - 1), end).stripTrailing();
  }
}
