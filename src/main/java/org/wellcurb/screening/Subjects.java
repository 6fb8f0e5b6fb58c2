package org.wellcurb.screening;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.MustApply;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackFile;
import org.wellcurb.rulepack.Rule;

/**
 * Rules of one subject: all run, and the worst stands once (falls short, cannot tell, meets). The
 * others count as not applicable on that record, so that no shortfall is counted twice and the
 * counts of each rule still add up to the records judged.
 */
final class Subjects {
  private static final int NOBODY = -1;

  /** How grave each outcome is, by its ordinal. */
  private static final int[] SEVERITY = new int[Outcome.values().length];

  static {
    SEVERITY[Outcome.MEETS.ordinal()] = 1;
    SEVERITY[Outcome.CANNOT_TELL.ordinal()] = 2;
    SEVERITY[Outcome.FALLS_SHORT.ordinal()] = 3;
  }

  private final Pack pack;
  private final Map<String, Integer> byId = new HashMap<>();
  private final int[][] groups;
  private final int[] standsFor;

  /** Place of each rule's pack among those it builds on, which come first. */
  private final int[] packOrder;

  /** For each rule that comes with an entry that always applies, those that ask for that entry. */
  private final Map<Integer, List<Integer>> saidBy = new LinkedHashMap<>();

  Subjects(Pack pack) {
    this.pack = pack;
    standsFor = new int[pack.rules().size()];
    java.util.Arrays.fill(standsFor, NOBODY);
    List<String> packs = pack.files().stream().map(PackFile::pack).toList();
    packOrder = pack.rules().stream().mapToInt(rule -> packs.indexOf(rule.pack())).toArray();
    Map<String, List<Integer>> bySubject = new LinkedHashMap<>();
    for (int i = 0; i < pack.rules().size(); i++) {
      Rule rule = pack.rules().get(i);
      byId.put(rule.id(), i);
      if (!rule.subject().isEmpty()) {
        bySubject.computeIfAbsent(rule.subject(), s -> new ArrayList<>()).add(i);
      }
    }
    for (int i = 0; i < pack.rules().size(); i++) {
      List<Integer> others = new ArrayList<>();
      for (int j = 0; j < pack.rules().size(); j++) {
        if (MustApply.isSaidBy(pack.rules().get(i), pack.rules().get(j))) {
          others.add(j);
        }
      }
      if (!others.isEmpty()) {
        saidBy.put(i, others);
      }
    }
    groups =
        bySubject.values().stream()
            .filter(group -> group.size() > 1)
            .map(group -> group.stream().mapToInt(i -> i).toArray())
            .toArray(int[][]::new);
  }

  /** Place of a rule in the pack; -1 if it has none of this id. */
  int index(String rule) {
    return byId.getOrDefault(rule, NOBODY);
  }

  /**
   * Leaves the worst of each subject standing; of equals that of the gravest kind, lest a
   * recommendation hide what is required, then that of the pack which builds on the others, and of
   * one pack's the first.
   */
  void settle(byte[] outcomes) {
    if (groups.length == 0 && saidBy.isEmpty()) {
      return;
    }
    java.util.Arrays.fill(standsFor, NOBODY);
    for (int[] group : groups) {
      int worst = group[0];
      int speaking = 0;
      for (int i : group) {
        int severity = SEVERITY[outcomes[i]];
        speaking += severity > 0 ? 1 : 0;
        int more = severity - SEVERITY[outcomes[worst]];
        if (more > 0 || (more == 0 && isBefore(i, worst, severity))) {
          worst = i;
        }
      }
      if (speaking > 1) {
        silence(group, worst, outcomes);
      }
    }
    saidBy.forEach((rule, others) -> once(rule, others, outcomes));
  }

  /** Whether a rule stands before another of the same outcome. */
  private boolean isBefore(int rule, int other, int severity) {
    boolean isMet = severity <= SEVERITY[Outcome.MEETS.ordinal()];
    int graver =
        isMet ? 0 : pack.rules().get(other).kind().compareTo(pack.rules().get(rule).kind());
    return graver > 0 || (graver == 0 && packOrder[rule] > packOrder[other]);
  }

  /**
   * What a rule that asks for an entry says, is not said again because the entry always applies.
   */
  private void once(int rule, List<Integer> others, byte[] outcomes) {
    byte falls = (byte) Outcome.FALLS_SHORT.ordinal();
    for (int other : others) {
      if (outcomes[rule] == falls && outcomes[other] == falls) {
        outcomes[rule] = (byte) Outcome.NOT_APPLICABLE.ordinal();
        standsFor[rule] = other;
      }
    }
  }

  private void silence(int[] group, int worst, byte[] outcomes) {
    for (int i : group) {
      if (i != worst && SEVERITY[outcomes[i]] > 0) {
        outcomes[i] = (byte) Outcome.NOT_APPLICABLE.ordinal();
        standsFor[i] = worst;
      }
    }
  }

  /**
   * Id of the rule that stands in this one's place on the record settled last; empty if none does.
   */
  String standsFor(int rule) {
    return standsFor[rule] == NOBODY ? "" : pack.rules().get(standsFor[rule]).id();
  }
}
