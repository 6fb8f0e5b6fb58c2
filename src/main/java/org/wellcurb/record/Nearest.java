package org.wellcurb.record;

import java.util.Collection;
import org.jspecify.annotations.Nullable;

/** Finds the word that was probably meant. */
public final class Nearest {
  private Nearest() {}

  /**
   * The candidate with the least edit distance (a swap of neighbours counts one), the first by code
   * point among equals; null if it differs in more than a third of its letters.
   */
  public static @Nullable String of(String word, Collection<String> candidates) {
    @Nullable String best = null;
    int least = Math.max(2, word.length() / 3) + 1;
    for (String candidate : candidates) {
      int distance = distance(word, candidate);
      if (distance < least
          || (distance == least && best != null && candidate.compareTo(best) < 0)) {
        least = distance;
        best = candidate;
      }
    }
    return best;
  }

  /** Edits (insert, delete, replace, swap neighbours) from one word to another. */
  public static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] now = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      now[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        now[j] = Math.min(last[j - 1] + same, 1 + Math.min(last[j], now[j - 1]));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          now[j] = Math.min(now[j], before[j - 2] + 1);
        }
      }
      int[] spare = before;
      before = last;
      last = now;
      now = spare;
    }
    return last[b.length()];
  }
}
