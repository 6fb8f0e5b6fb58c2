package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Part of a text that stands beside another, and whether it is another there.
 *
 * @param text words with the blanks between them
 * @param isChanged true where the other text has other words
 */
public record WordChange(String text, boolean isChanged) {

  /** Both texts in parts: first the older's, then the newer's. */
  static List<List<WordChange>> between(String before, String after) {
    List<String> a = words(before);
    List<String> b = words(after);
    int[][] common = new int[a.size() + 1][b.size() + 1];
    for (int i = a.size() - 1; i >= 0; i--) {
      for (int j = b.size() - 1; j >= 0; j--) {
        common[i][j] =
            a.get(i).equals(b.get(j))
                ? common[i + 1][j + 1] + 1
                : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    boolean[] keptA = new boolean[a.size()];
    boolean[] keptB = new boolean[b.size()];
    int i = 0;
    int j = 0;
    while (i < a.size() && j < b.size()) {
      if (a.get(i).equals(b.get(j))) {
        keptA[i++] = true;
        keptB[j++] = true;
      } else if (common[i + 1][j] >= common[i][j + 1]) {
        i++;
      } else {
        j++;
      }
    }
    return List.of(parts(a, keptA), parts(b, keptB));
  }

  private static List<String> words(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split(" ", -1));
  }

  private static List<WordChange> parts(List<String> words, boolean[] kept) {
    List<WordChange> parts = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= words.size(); i++) {
      if (i == words.size() || kept[i] != kept[from]) {
        parts.add(new WordChange(String.join(" ", words.subList(from, i)), !kept[from]));
        from = i;
      }
    }
    return parts;
  }
}
