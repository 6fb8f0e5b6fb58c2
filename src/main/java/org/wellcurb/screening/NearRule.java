package org.wellcurb.screening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Nearest;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;

/**
 * The rule that was probably meant by what a form calls it: one whose id is a slip away, or the one
 * that shares the most words with it. Where two do, none is offered.
 */
final class NearRule {
  /** Shorter words say too little. */
  private static final int SHORTEST = 4;

  /** What papers of any kind are called. */
  private static final Set<String> SAY_NOTHING =
      Set.of("variance", "waiver", "waived", "rule", "well", "from", "permit", "number", "section");

  private NearRule() {}

  /** The id of the rule; empty where none is near. */
  static String of(String said, Pack pack) {
    String text = said.strip().toLowerCase(Locale.ROOT);
    List<String> ids = pack.rules().stream().map(Rule::id).toList();
    @Nullable String slip = Nearest.of(text.replaceAll("[\\s_]+", "-"), ids);
    if (slip != null) {
      return slip;
    }
    Set<String> words = words(text);
    int most = 0;
    List<Rule> best = new ArrayList<>();
    for (Rule rule : pack.rules()) {
      Set<String> shared = words(rule.id());
      shared.retainAll(words);
      if (shared.size() > most) {
        most = shared.size();
        best.clear();
      }
      if (!shared.isEmpty() && shared.size() == most) {
        best.add(rule);
      }
    }
    // The pack's own rules are the ones that its office waives.
    List<Rule> own = best.stream().filter(rule -> rule.pack().equals(pack.id())).toList();
    List<Rule> likely = own.isEmpty() ? best : own;
    return likely.size() == 1 ? likely.get(0).id() : "";
  }

  private static Set<String> words(String text) {
    Set<String> words = new HashSet<>(Arrays.asList(text.split("[^\\p{L}]+")));
    words.removeIf(word -> word.length() < SHORTEST || SAY_NOTHING.contains(word));
    return words;
  }
}
