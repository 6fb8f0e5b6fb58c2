package org.wellcurb.screening;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
  private final boolean[] isRelation;

  /** What each rule is found under: its subject, or itself. */
  private final String[] subjects;

  private final List<Set<Entry>> reads = new ArrayList<>();
  private byte[] outcomes = new byte[0];

  SlipTrial(Pack pack, LocalDate asOf) {
    judge = new Judge(catalogue, asOf, pack.mustApply());
    programs = new RuleProgram[pack.rules().size()];
    isRelation = new boolean[programs.length];
    subjects = new String[programs.length];
    for (int k = 0; k < programs.length; k++) {
      Rule rule = pack.rules().get(k);
      programs[k] = rule.program();
      isRelation[k] = rule.kind() == FindingKind.DISCREPANCY;
      subjects[k] = rule.subject().isEmpty() ? "rule " + rule.id() : "subject " + rule.subject();
      reads.add(programs[k].reads());
    }
  }

  /**
   * Starts from this record.
   *
   * @param judged as judged: of rules of one subject, all that broke; not changed while in use
   */
  void from(WellRecord record, byte[] judged) {
    whatIf.from(record);
    outcomes = judged;
  }

  /** The relations that the record breaks: places in the pack. */
  List<Integer> brokenRelations() {
    List<Integer> broken = new ArrayList<>();
    for (int k = 0; k < programs.length; k++) {
      if (isRelation[k] && isBroken(k)) {
        broken.add(k);
      }
    }
    return broken;
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
    for (int k = 0; k < programs.length; k++) {
      if (isBroken(k) && isTouched(k, slip)) {
        found.add(subjects[k]);
      }
    }
    return found.size();
  }

  private boolean isTouched(int rule, Slip slip) {
    Set<Entry> read = reads.get(rule);
    return read.contains(catalogue.entry(slip.entry()))
        || (slip.other() >= 0 && read.contains(catalogue.entry(slip.other())));
  }

  /**
   * True if the slip puts right all of these entries, every broken relation and every broken rule
   * that reads what it changes, and breaks none. What is waived is left out of it.
   */
  boolean mends(Slip slip, List<Entry> outOfRange) {
    apply(slip);
    WellRecord trial = whatIf.record();
    boolean mends = outOfRange.stream().noneMatch(entry -> isOutOfRange(trial, entry));
    mends = mends && !isOutOfRange(trial, catalogue.entry(slip.entry()));
    mends = mends && (slip.other() < 0 || !isOutOfRange(trial, catalogue.entry(slip.other())));
    if (mends) {
      judge.take(trial);
      for (int k = 0; mends && k < programs.length; k++) {
        boolean isWaived = outcomes[k] == Outcome.WAIVED.ordinal();
        boolean isAtStake = isTouched(k, slip) ? !isWaived : isRelation[k] && isBroken(k);
        mends = !isAtStake || judge.outcome(programs[k]) != Outcome.FALLS_SHORT.ordinal();
      }
    }
    whatIf.restore(slip.entry());
    if (slip.other() >= 0) {
      whatIf.restore(slip.other());
    }
    return mends;
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

  static boolean isOutOfRange(WellRecord record, Entry entry) {
    int i = entry.index();
    return record.isGiven(i)
        && !entry.plausible().isAll()
        && (record.hi(i) < entry.plausible().lo() || record.lo(i) > entry.plausible().hi());
  }
}
