package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.RuleDifference;

/**
 * The rules of two packs side by side, by id: those of the pack tried in its order, then those that
 * only the pack in use has.
 */
final class RulePairs {
  /** Stands for the outcome of a rule that a pack does not have. */
  static final int NO_RULE = Outcome.values().length;

  /** How many outcomes there are, {@link #NO_RULE} among them. */
  static final int OUTCOMES = NO_RULE + 1;

  private final int[] before;
  private final int[] after;
  private final List<Rule> rules = new ArrayList<>();
  private final List<RuleDifference> differences = new ArrayList<>();
  private final Pack packBefore;
  private final Pack packAfter;

  RulePairs(Pack packBefore, Pack packAfter) {
    this.packBefore = packBefore;
    this.packAfter = packAfter;
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < packBefore.rules().size(); i++) {
      places.put(packBefore.rules().get(i).id(), i);
    }
    List<int[]> pairs = new ArrayList<>();
    for (int i = 0; i < packAfter.rules().size(); i++) {
      Rule rule = packAfter.rules().get(i);
      Integer place = places.remove(rule.id());
      pairs.add(new int[] {place == null ? -1 : place, i});
      rules.add(rule);
    }
    for (int i = 0; i < packBefore.rules().size(); i++) {
      Rule rule = packBefore.rules().get(i);
      if (places.containsKey(rule.id())) {
        pairs.add(new int[] {i, -1});
        rules.add(rule);
      }
    }
    before = pairs.stream().mapToInt(pair -> pair[0]).toArray();
    after = pairs.stream().mapToInt(pair -> pair[1]).toArray();
    for (int pair = 0; pair < rules.size(); pair++) {
      differences.add(RuleDifference.of(packBefore, ruleBefore(pair), packAfter, ruleAfter(pair)));
    }
  }

  /** In what the two rules of this pair differ. */
  RuleDifference difference(int pair) {
    return differences.get(pair);
  }

  /** The rule of the pack in use; null where it has none. */
  @Nullable Rule ruleBefore(int pair) {
    return before[pair] < 0 ? null : packBefore.rules().get(before[pair]);
  }

  /** The rule of the pack tried; null where it has none. */
  @Nullable Rule ruleAfter(int pair) {
    return after[pair] < 0 ? null : packAfter.rules().get(after[pair]);
  }

  /** The place of the rule in the pack in use; negative where it has none. */
  int placeBefore(int pair) {
    return before[pair];
  }

  /** The place of the rule in the pack tried; negative where it has none. */
  int placeAfter(int pair) {
    return after[pair];
  }

  int size() {
    return rules.size();
  }

  /** The rule of this pair, as the pack tried has it where it has it. */
  Rule rule(int pair) {
    return rules.get(pair);
  }

  /** The outcome under the pack in use, from what that pack said of all its rules. */
  int before(int pair, byte[] outcomes) {
    return before[pair] < 0 ? NO_RULE : outcomes[before[pair]];
  }

  /** The outcome under the pack tried, from what that pack said of all its rules. */
  int after(int pair, byte[] outcomes) {
    return after[pair] < 0 ? NO_RULE : outcomes[after[pair]];
  }

  /** The outcome of this number; null for {@link #NO_RULE}. */
  static @Nullable Outcome outcome(int number) {
    return number == NO_RULE ? null : Outcome.at(number);
  }

  /**
   * Whether a change touches someone: not where a rule comes or goes that is met, or does not
   * apply.
   */
  static boolean touches(int from, int to) {
    return from != to && (isOpen(from) || isOpen(to));
  }

  /** Whether a rule with this outcome applied. */
  static boolean isJudged(int outcome) {
    return outcome != NO_RULE && outcome != Outcome.NOT_APPLICABLE.ordinal();
  }

  private static boolean isOpen(int outcome) {
    return outcome == Outcome.FALLS_SHORT.ordinal()
        || outcome == Outcome.CANNOT_TELL.ordinal()
        || outcome == Outcome.WAIVED.ordinal();
  }
}
