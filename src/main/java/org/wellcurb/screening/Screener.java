package org.wellcurb.screening;

import static java.util.stream.Collectors.joining;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Speech;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Explainer;
import org.wellcurb.judgement.Explanation;
import org.wellcurb.judgement.Judge;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.RuleProgram;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Variance;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackScope;
import org.wellcurb.rulepack.Rule;

/**
 * Runs one pack over records, one at a time. A pure function of pack, as-of date and record; one
 * for each worker, since it keeps room for what it computes.
 */
public final class Screener {
  private final Pack pack;
  private final Judge judge;
  private final Explainer explainer;
  private final Subjects subjects;
  private final RuleProgram[] programs;
  private final byte[] outcomes;

  /** The outcomes before rules of one subject settle which of them stands. */
  private final byte[] asJudged;

  private final PossibleReadings readings;
  private final Speech speech;
  private @Nullable WellRecord record;

  /** Whether the judge has the record at hand: one judged with others goes there if it must. */
  private boolean isTaken;

  /** Speaks plain English; amounts as written. */
  public Screener(Pack pack, LocalDate asOf) {
    this(pack, asOf, Speech.plain());
  }

  /**
   * @param asOf the as-of date of the run
   * @param speech how outcomes are put into words
   */
  public Screener(Pack pack, LocalDate asOf, Speech speech) {
    this.pack = pack;
    judge = new Judge(Catalogue.standard(), asOf, pack.mustApply());
    explainer = new Explainer(judge, new PackScope(pack.tables(), pack.figures()), speech);
    subjects = new Subjects(pack);
    programs = pack.rules().stream().map(Rule::program).toArray(RuleProgram[]::new);
    outcomes = new byte[programs.length];
    asJudged = new byte[programs.length];
    readings = new PossibleReadings(pack, asOf, speech);
    this.speech = speech;
  }

  public Pack pack() {
    return pack;
  }

  /**
   * Judges a record by every rule: ordinals of {@link Outcome}, in the pack's order, waivers and
   * subjects taken into account. The same array each time.
   */
  public byte[] outcomes(WellRecord record) {
    take(record);
    for (int i = 0; i < programs.length; i++) {
      outcomes[i] = (byte) judge.outcome(programs[i]);
    }
    return settled(record);
  }

  /**
   * Takes a record whose rules were judged side by side with those of others, by a {@link
   * LaneScreener} of this pack: what {@link #outcomes} would give.
   *
   * @param judged the outcome of each rule, not waived, before subjects; not kept
   */
  public byte[] outcomes(WellRecord record, byte[] judged) {
    this.record = record;
    isTaken = false;
    System.arraycopy(judged, 0, outcomes, 0, outcomes.length);
    return settled(record);
  }

  /**
   * The outcomes of the record judged last as each rule was judged, before those of one subject
   * settle which of them stands. Written over by the next record.
   */
  public byte[] asJudged() {
    return asJudged;
  }

  private void take(WellRecord taken) {
    record = taken;
    judge.take(taken);
    isTaken = true;
  }

  private byte[] settled(WellRecord record) {
    // A variance is for the rule that it names: another rule of its subject stands where it does
    // not.
    if (!record.variances().isEmpty()) {
      waive(record);
    }
    System.arraycopy(outcomes, 0, asJudged, 0, outcomes.length);
    subjects.settle(outcomes);
    return outcomes;
  }

  private void waive(WellRecord record) {
    for (Variance variance : record.variances()) {
      int rule = subjects.index(variance.rule());
      if (rule >= 0 && isWaivable(outcomes[rule]) && pack.mayWaive(variance.rule())) {
        outcomes[rule] = (byte) Outcome.WAIVED.ordinal();
      }
    }
  }

  private static boolean isWaivable(byte outcome) {
    return outcome == Outcome.FALLS_SHORT.ordinal() || outcome == Outcome.CANNOT_TELL.ordinal();
  }

  /** The findings of the record judged last, in the pack's order. */
  public List<Finding> findings() {
    return findings(judged(), readings.of(judged(), asJudged));
  }

  private List<Finding> findings(WellRecord at, @Nullable PossibleReading reading) {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < outcomes.length; i++) {
      if (outcomes[i] == Outcome.FALLS_SHORT.ordinal()) {
        String id = pack.rules().get(i).id();
        findings.add(
            finding(
                at, i, reading != null && reading.settles().contains(id) ? reading.reading() : ""));
      }
    }
    return findings;
  }

  private Finding finding(WellRecord at, int rule, String reading) {
    @Nullable Deciding deciding = explainer.deciding(programs[rule]);
    int text = explainer.text(programs[rule]);
    return new Finding(
        at.id(),
        at.file(),
        at.row(),
        pack.id(),
        pack.rules().get(rule),
        deciding == null ? Finding.NOTHING : deciding,
        reading,
        text,
        explainer.dayBefore(programs[rule], text));
  }

  /** The deciding comparison of a rule on the record judged last; null where there is none. */
  public @Nullable Deciding deciding(int rule) {
    judged();
    return explainer.deciding(programs[rule]);
  }

  /** The entries that would settle a rule which cannot be told of the record judged last. */
  public List<Entry> needs(int rule) {
    judged();
    return explainer.needs(programs[rule]);
  }

  /** What a figure that hardly any well has meets is met as it stands: the sheet says what by. */
  private Explanation explained(WellRecord at, int rule) {
    Explanation explanation = explainer.explain(programs[rule]);
    List<Entry> figures = at.farOff();
    if (figures.isEmpty() || outcomes[rule] != Outcome.MEETS.ordinal()) {
      return explanation;
    }
    Set<Entry> reads = programs[rule].reads();
    String labels =
        figures.stream().filter(reads::contains).map(speech::label).collect(joining(", "));
    return labels.isEmpty() ? explanation : explanation.with(speech.phrase("remark.far", labels));
  }

  private WellRecord judged() {
    WellRecord at = record;
    if (at == null) {
      throw new IllegalStateException("no record was judged yet");
    }
    if (!isTaken) {
      take(at);
    }
    return at;
  }

  /** Judges a record and says everything that its sheet shows. */
  public RecordResult result(WellRecord filled) {
    WellRecord at = filled.copy();
    outcomes(at);
    List<RuleResult> results = new ArrayList<>();
    for (int i = 0; i < programs.length; i++) {
      results.add(
          new RuleResult(
              pack.rules().get(i),
              Outcome.at(outcomes[i]),
              explained(at, i),
              subjects.standsFor(i),
              reference(at, pack.rules().get(i))));
    }
    @Nullable PossibleReading reading = readings.of(at, asJudged);
    List<Finding> findings = findings(at, reading);
    List<WorkingShown> workings = ShownWorkings.of(explainer);
    return new RecordResult(
        at,
        pack,
        results,
        findings,
        Asks.of(at, results),
        reading == null ? List.of() : List.of(reading),
        workings,
        idle(at),
        Cautions.of(at, results));
  }

  private static String reference(WellRecord at, Rule rule) {
    for (Variance variance : at.variances()) {
      if (variance.rule().equals(rule.id())) {
        return variance.reference();
      }
    }
    return "";
  }

  /** What each variance of the record judged last does. */
  public List<VarianceUse> variances() {
    return uses(judged());
  }

  private List<VarianceUse> uses(WellRecord at) {
    return at.variances().stream().map(this::use).toList();
  }

  private VarianceUse use(Variance variance) {
    int rule = subjects.index(variance.rule());
    if (rule < 0) {
      String near = NearRule.of(variance.rule(), pack);
      return new VarianceUse(variance, VarianceUse.Does.NO_RULE, near);
    }
    // As judged: that another rule of its subject stands does not undo what it waives.
    VarianceUse.Does does =
        switch (Outcome.at(asJudged[rule])) {
          case WAIVED -> VarianceUse.Does.WAIVES;
          case MEETS -> VarianceUse.Does.MET;
          case FALLS_SHORT, CANNOT_TELL -> VarianceUse.Does.NOT_ALLOWED;
          case NOT_APPLICABLE -> VarianceUse.Does.NOT_APPLICABLE;
        };
    return new VarianceUse(variance, does, "");
  }

  private List<VarianceUse> idle(WellRecord at) {
    return uses(at).stream().filter(use -> use.does() != VarianceUse.Does.WAIVES).toList();
  }
}
