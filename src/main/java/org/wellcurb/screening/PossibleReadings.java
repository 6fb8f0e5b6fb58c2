package org.wellcurb.screening;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Speech;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;

/**
 * What may have been meant where entries contradict each other or leave their plausible range. A
 * reading is offered only if it is the single one of its kind that puts right everything that broke
 * (every relation, and every other rule that reads what it changes) and breaks nothing else;
 * another unit only where two things broke, since a number that is too deep nearly always fits as
 * feet, or where it comes to what {@link Neighbours} say; and other digits too only where two
 * broke, unless the entry itself is out of its range. It is never applied.
 */
final class PossibleReadings {
  private static final int TWO_FAULTS = 2;

  /** Nitrate as nitrogen of wells is seldom as much (kg/m3): 20 mg/L; common practice. */
  private static final double RARE_AS_NITROGEN = Units.MILLIGRAM_PER_LITRE.toSi(20);

  private final Catalogue catalogue = Catalogue.standard();
  private final Speech speech;
  private final SlipTrial trial;

  /** The entries of which a range is plausible. */
  private final Entry[] ranged;

  PossibleReadings(Pack pack, LocalDate asOf, Speech speech) {
    this.speech = speech;
    trial = new SlipTrial(pack, asOf);
    ranged =
        catalogue.entries().stream()
            .filter(entry -> !entry.plausible().isAll())
            .toArray(Entry[]::new);
  }

  /**
   * The reading to offer for a record; null if there is none to offer.
   *
   * @param outcomes as judged: of rules of one subject, all that broke
   */
  @Nullable PossibleReading of(WellRecord record, byte[] outcomes) {
    PossibleReading reading = ofContradictions(record, outcomes);
    return reading == null ? ofNitrate(record) : reading;
  }

  /**
   * Nitrate that breaks a limit, and would break none if the laboratory stated it as nitrate. Only
   * from 20 mg/L on: as nitrogen that is rare, while below it is a common and real excess.
   */
  private @Nullable PossibleReading ofNitrate(WellRecord record) {
    Entry nitrate = catalogue.entry(catalogue.index("sample.nitrate"));
    int i = nitrate.index();
    if (!record.isGiven(i) || record.lo(i) < RARE_AS_NITROGEN || !trial.isAnyBroken(nitrate)) {
      return null;
    }
    trial.on(record);
    for (Slip slip : Slips.of(record, nitrate)) {
      if (slip.kind() == Slip.Kind.NITRATE && trial.mendsOwn(slip)) {
        return reading(record, slip, 0);
      }
    }
    return null;
  }

  private @Nullable PossibleReading ofContradictions(WellRecord record, byte[] outcomes) {
    trial.from(outcomes);
    List<Integer> broken = trial.brokenRelations();
    List<Entry> outOfRange = outOfRange(record);
    int faults = broken.size() + outOfRange.size();
    if (faults == 0) {
      return null;
    }
    trial.on(record);
    List<Slip> tried = new ArrayList<>();
    for (Entry suspect : suspects(record, broken, outOfRange)) {
      tried.addAll(Slips.of(record, suspect));
    }
    tried.addAll(changedOver(record, broken, outOfRange));
    @Nullable Slip fits =
        offered(
            record,
            tried.stream().filter(slip -> trial.mends(slip, outOfRange)).toList(),
            faults,
            outOfRange.size());
    return fits == null || isOutdone(fits, tried, outOfRange)
        ? null
        : reading(record, fits, Math.max(faults, trial.rulesAtStake(fits)));
  }

  /**
   * Whether another unit would put right every relation, only not all else that the record falls
   * short of, as a good form may by itself: then a slip that looks for more than that, among all
   * digits or all pairs, is no better guess.
   */
  private boolean isOutdone(Slip fits, List<Slip> tried, List<Entry> outOfRange) {
    boolean isFarFetched =
        fits.kind() == Slip.Kind.DECIMAL
            || fits.kind() == Slip.Kind.DIGITS
            || (fits.kind() == Slip.Kind.SWAPPED && !Swaps.isSideBySide(fits, catalogue));
    return isFarFetched
        && tried.stream()
            .anyMatch(
                slip -> slip.kind() == Slip.Kind.UNIT && trial.mendsRelations(slip, outOfRange));
  }

  /**
   * Two entries in each other's place: those that forms set side by side, and where one thing
   * begins and ends, but these only where more broke than one relation. Nobody changes over what
   * stands far apart on a form.
   */
  private Set<Slip> changedOver(WellRecord record, List<Integer> broken, List<Entry> outOfRange) {
    Set<Slip> slips = new LinkedHashSet<>();
    if (broken.isEmpty()) {
      outOfRange.forEach(entry -> slips.addAll(Swaps.sideBySide(record, Set.of(entry))));
    }
    for (int k : broken) {
      slips.addAll(Swaps.sideBySide(record, trial.reads(k)));
      Swaps.ends(record, trial.reads(k)).stream()
          .filter(slip -> trial.rulesAtStake(slip) >= TWO_FAULTS)
          .forEach(slips::add);
    }
    return slips;
  }

  private @Nullable Slip offered(WellRecord record, List<Slip> fits, int broken, int outOfRange) {
    if (fits.isEmpty()) {
      return null;
    }
    Slip.Kind commonest =
        fits.stream().map(Slip::kind).min(java.util.Comparator.naturalOrder()).orElseThrow();
    List<Slip> ofThatKind = fits.stream().filter(slip -> slip.kind() == commonest).toList();
    boolean isOutOfRange = outOfRange > 0;
    // Two limits that a figure out of its range falls short of speak against it as well, one where
    // it is far out.
    Slip first = ofThatKind.get(0);
    int own = isOutOfRange && isFarOut(record, first) ? outOfRange : 0;
    int faults = isOutOfRange ? Math.max(broken, own + trial.rulesAtStake(first)) : broken;
    // Where another unit would do, but too little broke to say so, a rarer slip is no better guess.
    // Among so many changes of figures one nearly always does for a single relation.
    boolean takesTwo =
        switch (commonest) {
          case UNIT -> true;
          case DECIMAL, DIGITS -> !isOutOfRange;
          default -> false;
        };
    boolean needsNeighbour =
        commonest == Slip.Kind.UNIT || (commonest == Slip.Kind.DECIMAL && !isOutOfRange);
    if (needsNeighbour && faults < TWO_FAULTS) {
      ofThatKind = ofThatKind.stream().filter(slip -> hasNeighbour(record, slip)).toList();
      takesTwo = false;
    }
    boolean isSingle = ofThatKind.size() == 1 && !(takesTwo && faults < TWO_FAULTS);
    return isSingle && !isGainsaid(record, ofThatKind.get(0), fits) ? ofThatKind.get(0) : null;
  }

  /** More than twice the most that is plausible: no odd well, but another unit. */
  private boolean isFarOut(WellRecord record, Slip slip) {
    return record.lo(slip.entry()) > 2 * catalogue.entry(slip.entry()).plausible().hi();
  }

  private boolean hasNeighbour(WellRecord record, Slip slip) {
    Entry entry = catalogue.entry(slip.entry());
    return Neighbours.agree(record, entry, slip.value())
        || (slip.kind() == Slip.Kind.DECIMAL && Neighbours.wouldTake(record, entry, slip.value()));
  }

  /**
   * Whether something speaks for another guess: the entry as it is written stands where neighbours
   * say, as many as for the reading; or a slip of another entry's decimal point would do as well.
   */
  private boolean isGainsaid(WellRecord record, Slip slip, List<Slip> fits) {
    boolean isOfOneFigure =
        switch (slip.kind()) {
          case UNIT, DECIMAL, DIGITS -> true;
          default -> false;
        };
    if (!isOfOneFigure) {
      return false;
    }
    Entry entry = catalogue.entry(slip.entry());
    int asWritten = Neighbours.votes(record, entry, record.lo(slip.entry()));
    if (asWritten > 0 && Neighbours.votes(record, entry, slip.value()) <= asWritten) {
      return true;
    }
    return fits.stream()
        .anyMatch(
            other ->
                other.kind() == Slip.Kind.DECIMAL
                    && other.entry() != slip.entry()
                    && !catalogue.entry(other.entry()).key().equals("site.position_accuracy"));
  }

  private PossibleReading reading(WellRecord record, Slip slip, int rules) {
    Entry entry = catalogue.entry(slip.entry());
    return new PossibleReading(
        entry.key(),
        slip.other() < 0 ? "" : catalogue.entry(slip.other()).key(),
        record.written(slip.entry()),
        sentence(record, slip, entry),
        rules,
        trial.settled(slip));
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
      case DATE -> date(record, label, record.written(slip.entry()));
      case DECIMAL -> speech.phrase("reading.decimal", label, meant);
      case DIGITS -> speech.phrase("reading.digits", label, meant);
    };
  }

  /** Names the date of the form that the number is like, if one is. */
  private String date(WellRecord record, String label, String written) {
    @Nullable Entry like = DateAmongNumbers.like(record, written);
    return like == null
        ? speech.phrase("reading.date", label, written)
        : speech.phrase("reading.date.like", label, written, speech.label(like));
  }

  /** Entries that every broken relation reads; with none broken, those out of their range. */
  private List<Entry> suspects(WellRecord record, List<Integer> broken, List<Entry> outOfRange) {
    Set<Entry> suspects = new LinkedHashSet<>();
    if (broken.isEmpty()) {
      suspects.addAll(outOfRange);
    } else {
      suspects.addAll(trial.reads(broken.get(0)));
      broken.forEach(k -> suspects.retainAll(trial.reads(k)));
      if (!outOfRange.isEmpty()) {
        suspects.retainAll(outOfRange);
      }
    }
    return suspects.stream().filter(e -> record.isGiven(e.index())).toList();
  }

  private List<Entry> outOfRange(WellRecord record) {
    List<Entry> out = new ArrayList<>();
    for (Entry entry : ranged) {
      if (record.isFarOff(entry)) {
        out.add(entry);
      }
    }
    return out;
  }
}
