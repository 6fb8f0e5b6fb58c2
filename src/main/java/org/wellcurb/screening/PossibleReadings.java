package org.wellcurb.screening;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Speech;
import org.wellcurb.judgement.Judge;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.RuleProgram;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.record.WhatIf;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;

/**
 * What may have been meant where entries contradict each other or leave their plausible range. A
 * reading is offered only if it is the single one of its kind that puts right everything that broke
 * and breaks nothing else: every relation, and every other rule that reads what it changes. Another
 * unit only where two things broke, since a number that is too deep nearly always fits as feet. It
 * is never applied.
 */
final class PossibleReadings {
  private static final int TWO_FAULTS = 2;

  private final Catalogue catalogue = Catalogue.standard();
  private final Judge judge;
  private final Speech speech;
  private final int[] relations;
  private final RuleProgram[] programs;
  private final List<Set<Entry>> reads = new ArrayList<>();

  /** The rules that are no relations: a reading that leaves one of them broken is not the whole. */
  private final int[] others;

  private final RuleProgram[] otherPrograms;
  private final List<Set<Entry>> otherReads = new ArrayList<>();
  private final WhatIf whatIf = new WhatIf(catalogue);

  PossibleReadings(Pack pack, LocalDate asOf, Speech speech) {
    this.speech = speech;
    judge = new Judge(catalogue, asOf, pack.mustApply());
    relations =
        java.util.stream.IntStream.range(0, pack.rules().size())
            .filter(i -> pack.rules().get(i).kind() == FindingKind.DISCREPANCY)
            .toArray();
    programs = new RuleProgram[relations.length];
    for (int k = 0; k < relations.length; k++) {
      programs[k] = pack.rules().get(relations[k]).program();
      reads.add(programs[k].reads());
    }
    others =
        java.util.stream.IntStream.range(0, pack.rules().size())
            .filter(i -> pack.rules().get(i).kind() != FindingKind.DISCREPANCY)
            .toArray();
    otherPrograms = new RuleProgram[others.length];
    for (int k = 0; k < others.length; k++) {
      otherPrograms[k] = pack.rules().get(others[k]).program();
      otherReads.add(otherPrograms[k].reads());
    }
  }

  /**
   * The reading to offer for a record; null if there is none to offer.
   *
   * @param outcomes as judged: of rules of one subject, all that broke
   */
  @Nullable PossibleReading of(WellRecord record, byte[] outcomes) {
    List<Integer> broken = new ArrayList<>();
    for (int k = 0; k < relations.length; k++) {
      if (outcomes[relations[k]] == Outcome.FALLS_SHORT.ordinal()) {
        broken.add(k);
      }
    }
    List<Entry> outOfRange = outOfRange(record);
    int faults = broken.size() + outOfRange.size();
    if (faults == 0) {
      return null;
    }
    whatIf.from(record);
    List<Slip> fits = new ArrayList<>();
    for (Entry suspect : suspects(record, broken, outOfRange)) {
      for (Slip slip : Slips.of(record, suspect)) {
        if (mends(slip, broken, outOfRange)) {
          fits.add(slip);
        }
      }
    }
    return offer(record, fits, faults);
  }

  private @Nullable PossibleReading offer(WellRecord record, List<Slip> fits, int faults) {
    if (fits.isEmpty()) {
      return null;
    }
    Slip.Kind commonest =
        fits.stream().map(Slip::kind).min(java.util.Comparator.naturalOrder()).orElseThrow();
    List<Slip> ofThatKind = fits.stream().filter(slip -> slip.kind() == commonest).toList();
    // Where another unit would do, but too little broke to say so, a rarer slip is no better guess.
    if (ofThatKind.size() > 1 || (commonest == Slip.Kind.UNIT && faults < TWO_FAULTS)) {
      return null;
    }
    Slip slip = ofThatKind.get(0);
    Entry entry = catalogue.entry(slip.entry());
    return new PossibleReading(
        entry.key(), record.written(slip.entry()), sentence(record, slip, entry), faults);
  }

  private String sentence(WellRecord record, Slip slip, Entry entry) {
    String label = speech.label(entry);
    Unit written = java.util.Objects.requireNonNull(record.unit(slip.entry()));
    String meant =
        Double.isNaN(slip.value())
            ? ""
            : speech.number(slip.unit().fromSi(slip.value())) + " " + slip.unit().symbol();
    return switch (slip.kind()) {
      case UNIT -> speech.phrase("reading.unit", label, meant, written.symbol());
      case SWAPPED ->
          speech.phrase("reading.swapped", label, speech.label(catalogue.entry(slip.other())));
      case SIGN -> speech.phrase("reading.sign", label, meant);
      case NITRATE -> speech.phrase("reading.nitrate", label, meant);
      case DATE -> speech.phrase("reading.date", label, record.written(slip.entry()));
      case DECIMAL -> speech.phrase("reading.decimal", label, meant);
      case DIGITS -> speech.phrase("reading.digits", label, meant);
    };
  }

  /** Entries that every broken relation reads; with none broken, those out of their range. */
  private List<Entry> suspects(WellRecord record, List<Integer> broken, List<Entry> outOfRange) {
    Set<Entry> suspects = new LinkedHashSet<>();
    if (broken.isEmpty()) {
      suspects.addAll(outOfRange);
    } else {
      suspects.addAll(reads.get(broken.get(0)));
      broken.forEach(k -> suspects.retainAll(reads.get(k)));
      if (!outOfRange.isEmpty()) {
        suspects.retainAll(outOfRange);
      }
    }
    return suspects.stream().filter(e -> record.isGiven(e.index())).toList();
  }

  private List<Entry> outOfRange(WellRecord record) {
    List<Entry> out = new ArrayList<>();
    for (Entry entry : catalogue.entries()) {
      if (isOutOfRange(record, entry)) {
        out.add(entry);
      }
    }
    return out;
  }

  private static boolean isOutOfRange(WellRecord record, Entry entry) {
    int i = entry.index();
    return record.isGiven(i)
        && !entry.plausible().isAll()
        && (record.hi(i) < entry.plausible().lo() || record.lo(i) > entry.plausible().hi());
  }

  private boolean mends(Slip slip, List<Integer> broken, List<Entry> outOfRange) {
    apply(slip);
    boolean mends = true;
    for (Entry entry : outOfRange) {
      mends &= !isOutOfRange(whatIf.record(), entry);
    }
    mends &= !isOutOfRange(whatIf.record(), catalogue.entry(slip.entry()));
    if (mends) {
      judge.take(whatIf.record());
      for (int k : broken) {
        mends = mends && !fallsShort(k);
      }
      for (int k = 0; mends && k < programs.length; k++) {
        boolean isTouched = reads.get(k).contains(catalogue.entry(slip.entry()));
        mends = !isTouched || !fallsShort(k);
      }
    }
    whatIf.restore(slip.entry());
    if (slip.other() >= 0) {
      whatIf.restore(slip.other());
    }
    return mends;
  }

  private boolean fallsShort(int k) {
    return judge.outcome(programs[k]) == Outcome.FALLS_SHORT.ordinal();
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
