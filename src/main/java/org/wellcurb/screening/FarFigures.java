package org.wellcurb.screening;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Judge;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.RuleProgram;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.record.WhatIf;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;

/**
 * Figures that hardly any well has, such as a tank rated for 690 psi. What is met by such a figure
 * alone cannot be told: the figure is asked for. What it falls short of stays a shortfall, for
 * whoever looks it up looks at the figure too.
 */
final class FarFigures {
  private static final byte MEETS = (byte) Outcome.MEETS.ordinal();
  private static final byte CANNOT_TELL = (byte) Outcome.CANNOT_TELL.ordinal();

  private final Entry[] ranged;
  private final double[] least;
  private final double[] most;

  /** By place in {@link #ranged}: the rules that read the entry. */
  private final int[][] readers;

  private final List<Set<Entry>> reads;
  private final RuleProgram[] programs;
  private final Pack pack;
  private final LocalDate asOf;
  private final int[] far;
  private int count;

  /** Made for the first record that has such a figure: most have none. */
  private @Nullable Judge judge;

  private @Nullable WhatIf whatIf;

  FarFigures(Pack pack, LocalDate asOf) {
    this.pack = pack;
    this.asOf = asOf;
    programs = pack.rules().stream().map(Rule::program).toArray(RuleProgram[]::new);
    reads = pack.rules().stream().map(rule -> rule.program().reads()).toList();
    ranged =
        Catalogue.standard().entries().stream()
            .filter(entry -> !entry.plausible().isAll())
            .toArray(Entry[]::new);
    least = new double[ranged.length];
    most = new double[ranged.length];
    readers = new int[ranged.length][];
    for (int i = 0; i < ranged.length; i++) {
      Entry entry = ranged[i];
      least[i] = entry.plausible().lo();
      most[i] = entry.plausible().hi();
      List<Integer> rules = new ArrayList<>();
      for (int k = 0; k < programs.length; k++) {
        if (reads.get(k).contains(entry)) {
          rules.add(k);
        }
      }
      readers[i] = rules.stream().mapToInt(Integer::intValue).toArray();
    }
    far = new int[ranged.length];
  }

  /** Takes back what is met by such a figure alone. */
  void apply(WellRecord record, byte[] outcomes) {
    look(record);
    if (count == 0) {
      return;
    }
    Judge without = without(record);
    for (int i = 0; i < count; i++) {
      for (int rule : readers[far[i]]) {
        if (outcomes[rule] == MEETS && without.outcome(programs[rule]) != MEETS) {
          outcomes[rule] = CANNOT_TELL;
        }
      }
    }
  }

  private void look(WellRecord record) {
    count = 0;
    for (int i = 0; i < ranged.length; i++) {
      int entry = ranged[i].index();
      if (record.isGiven(entry) && (record.hi(entry) < least[i] || record.lo(entry) > most[i])) {
        far[count++] = i;
      }
    }
  }

  /** Has taken the record as if nothing were known of these figures but that they are given. */
  private Judge without(WellRecord record) {
    WhatIf at = whatIf;
    Judge by = judge;
    if (at == null || by == null) {
      at = new WhatIf(Catalogue.standard());
      by = new Judge(Catalogue.standard(), asOf, pack.mustApply());
      whatIf = at;
      judge = by;
    }
    at.from(record);
    for (int i = 0; i < count; i++) {
      at.anything(ranged[far[i]].index());
    }
    by.take(at.record());
    return by;
  }

  /** Whether the record taken last has any. */
  boolean any() {
    return count > 0;
  }

  /** Those of the record taken last that a rule reads, in the order of the catalogue. */
  List<Entry> readBy(int rule) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Entry entry = ranged[far[i]];
      if (reads.get(rule).contains(entry)) {
        entries.add(entry);
      }
    }
    return entries;
  }
}
