package org.wellcurb.screening;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.wellcurb.judgement.Judge;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.RuleProgram;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.record.WhatIf;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;

/** Tries slips on a record: what each would put right, and what it would break. */
final class SlipTrial {
  private final Catalogue catalogue = Catalogue.standard();
  private final WhatIf whatIf = new WhatIf(catalogue);
  private final Judge judge;
  private final RuleProgram[] programs;

  /** What each rule is found under: its subject, or itself. */
  private final String[] subjects;

  private final String[] ids;

  private final List<Set<Entry>> reads = new ArrayList<>();

  /** By entry: the rules that read it, in the pack's order. */
  private final int[][] readers;

  private final int[] relations;
  private byte[] outcomes = new byte[0];

  SlipTrial(Pack pack, LocalDate asOf) {
    judge = new Judge(catalogue, asOf, pack.mustApply());
    programs = new RuleProgram[pack.rules().size()];
    List<Integer> discrepancies = new ArrayList<>();
    List<List<Integer>> rulesOf = new ArrayList<>();
    catalogue.entries().forEach(entry -> rulesOf.add(new ArrayList<>()));
    subjects = new String[programs.length];
    ids = new String[programs.length];
    for (int k = 0; k < programs.length; k++) {
      Rule rule = pack.rules().get(k);
      programs[k] = rule.program();
      ids[k] = rule.id();
      if (rule.kind() == FindingKind.DISCREPANCY) {
        discrepancies.add(k);
      }
      subjects[k] = rule.subject().isEmpty() ? "rule " + rule.id() : "subject " + rule.subject();
      reads.add(programs[k].reads());
      for (Entry entry : programs[k].reads()) {
        rulesOf.get(entry.index()).add(k);
      }
    }
    relations = array(discrepancies);
    readers = rulesOf.stream().map(SlipTrial::array).toArray(int[][]::new);
  }

  private static int[] array(List<Integer> places) {
    return places.stream().mapToInt(Integer::intValue).toArray();
  }

  /**
   * Starts from a record of which only this is known so far.
   *
   * @param judged as judged: of rules of one subject, all that broke; not changed while in use
   */
  void from(byte[] judged) {
    outcomes = judged;
  }

  /** Starts from the record of which these outcomes are, to try slips on it. */
  void on(WellRecord record) {
    whatIf.from(record);
  }

  /** The relations that the record breaks: places in the pack. */
  List<Integer> brokenRelations() {
    List<Integer> broken = new ArrayList<>();
    for (int k : relations) {
      if (isBroken(k)) {
        broken.add(k);
      }
    }
    return broken;
  }

  /** Whether the record breaks any rule that reads this entry. */
  boolean isAnyBroken(Entry entry) {
    for (int k : readers[entry.index()]) {
      if (isBroken(k)) {
        return true;
      }
    }
    return false;
  }

  /** True if with the slip every rule holds that reads what it changes, whatever else is broken. */
  boolean mendsOwn(Slip slip) {
    apply(slip);
    WellRecord trial = whatIf.record();
    judge.take(trial);
    boolean mends =
        !trial.isFarOff(catalogue.entry(slip.entry())) && holdsAll(readers[slip.entry()], false);
    whatIf.restore(slip.entry());
    return mends;
  }

  Set<Entry> reads(int rule) {
    return reads.get(rule);
  }

  private boolean isBroken(int rule) {
    return outcomes[rule] == Outcome.FALLS_SHORT.ordinal();
  }

  /**
   * How many rules of any kind the record breaks that read what the slip changes; those of one
   * subject count as one, as they are found once.
   */
  int rulesAtStake(Slip slip) {
    Set<String> found = new HashSet<>();
    addBroken(readers[slip.entry()], found);
    if (slip.other() >= 0) {
      addBroken(readers[slip.other()], found);
    }
    return found.size();
  }

  /**
   * Ids of the rules that a slip which mends the record puts right, in the pack's order. The basis
   * of nitrate has nothing to do with what contradicts itself elsewhere.
   */
  List<String> settled(Slip slip) {
    boolean isOfNitrate = slip.kind() == Slip.Kind.NITRATE;
    Set<Integer> settled = new TreeSet<>(isOfNitrate ? List.of() : brokenRelations());
    addBroken(slip.entry(), settled);
    if (slip.other() >= 0) {
      addBroken(slip.other(), settled);
    }
    return settled.stream().map(k -> ids[k]).toList();
  }

  private void addBroken(int entry, Set<Integer> settled) {
    for (int k : readers[entry]) {
      if (isBroken(k)) {
        settled.add(k);
      }
    }
  }

  private void addBroken(int[] rules, Set<String> found) {
    for (int k : rules) {
      if (isBroken(k)) {
        found.add(subjects[k]);
      }
    }
  }

  /**
   * True if the slip puts right all of these entries, every broken relation and every broken rule
   * that reads what it changes, and breaks none. What is waived is left out of it.
   */
  boolean mends(Slip slip, List<Entry> outOfRange) {
    return mends(slip, outOfRange, false);
  }

  /** The same, but for rules that are no relations. */
  boolean mendsRelations(Slip slip, List<Entry> outOfRange) {
    return mends(slip, outOfRange, true);
  }

  private boolean mends(Slip slip, List<Entry> outOfRange, boolean onlyRelations) {
    apply(slip);
    WellRecord trial = whatIf.record();
    boolean mends = isInRange(trial, slip, outOfRange);
    if (mends) {
      judge.take(trial);
      mends =
          holdsAll(readers[slip.entry()], onlyRelations)
              && (slip.other() < 0 || holdsAll(readers[slip.other()], onlyRelations))
              && relationsHold();
    }
    whatIf.restore(slip.entry());
    if (slip.other() >= 0) {
      whatIf.restore(slip.other());
    }
    return mends;
  }

  private boolean isInRange(WellRecord trial, Slip slip, List<Entry> outOfRange) {
    for (Entry entry : outOfRange) {
      if (trial.isFarOff(entry)) {
        return false;
      }
    }
    return !trial.isFarOff(catalogue.entry(slip.entry()))
        && (slip.other() < 0 || !trial.isFarOff(catalogue.entry(slip.other())));
  }

  /** True if the trial falls short of none of these rules, but for those that are waived. */
  private boolean holdsAll(int[] rules, boolean onlyRelations) {
    for (int k : rules) {
      boolean isLeftOut =
          outcomes[k] == Outcome.WAIVED.ordinal()
              || (onlyRelations && Arrays.binarySearch(relations, k) < 0);
      if (!isLeftOut && judge.outcome(programs[k]) == Outcome.FALLS_SHORT.ordinal()) {
        return false;
      }
    }
    return true;
  }

  /** True if the trial breaks none of the relations that were broken. */
  private boolean relationsHold() {
    for (int k : relations) {
      if (isBroken(k) && judge.outcome(programs[k]) == Outcome.FALLS_SHORT.ordinal()) {
        return false;
      }
    }
    return true;
  }

  private void apply(Slip slip) {
    if (Double.isNaN(slip.value())) {
      whatIf.blank(slip.entry());
      return;
    }
    whatIf.set(slip.entry(), slip.value(), slip.unit());
    if (slip.other() >= 0) {
      whatIf.set(slip.other(), slip.otherValue(), slip.unit());
    }
  }
}
