package org.wellcurb.record;

import java.util.ArrayList;
import java.util.List;

/**
 * Words for yes and no: English and French, what programs write, and a tick. A cross is not among
 * them: it ticks a box on one form and strikes it out on the next.
 */
final class YesNoWords {
  private static final List<String> YES =
      List.of("yes", "y", "true", "t", "1", "oui", "o", "vrai", "\u2713", "\u2714", "\u2611");
  private static final List<String> NO = List.of("no", "n", "false", "f", "0", "non", "faux");

  /** 1 for yes, 0 for no. */
  static final WordTable TABLE = table();

  private YesNoWords() {}

  private static WordTable table() {
    List<String> words = new ArrayList<>(YES);
    words.addAll(NO);
    List<Integer> meanings = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      meanings.add(i < YES.size() ? 1 : 0);
    }
    return WordTable.of(words, meanings);
  }
}
