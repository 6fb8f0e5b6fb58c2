package org.wellcurb.judgement;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Evaluation;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Frame;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Scope;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.UnitOf;
import org.wellcurb.formula.WorkingWords;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Datum;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.workings.Working;

/** Says why a rule has its outcome on the record that its judge has taken. */
public final class Explainer {
  /** More than these are not named: they would say nothing of which is wrong. */
  private static final int MOST_BESIDE = 2;

  private final Judge judge;
  private final Evaluation at;
  private final Speech speech;
  private final Remarks remarks;
  private final WorkingWords words;
  private final DecidingPart deciding;

  /** Room for what {@link #needs} finds, which a count over many records asks again and again. */
  private final NeededEntries needed;

  public Explainer(Judge judge, Scope scope, Speech speech) {
    this.judge = judge;
    this.speech = speech;
    at = new Evaluation(judge.frame(), scope);
    remarks = new Remarks(judge, at, speech);
    words = new WorkingWords(speech, at);
    deciding = new DecidingPart(at, speech);
    needed = new NeededEntries(judge.catalogue());
  }

  /** The explanation of an outcome that {@link Judge#outcome} gave for this rule on this record. */
  public Explanation explain(RuleProgram rule) {
    Outcome outcome = Outcome.at(judge.outcome(rule));
    List<DatedText> texts = judge.inForce(rule);
    DatedText text =
        texts.isEmpty() ? rule.texts().get(rule.texts().size() - 1) : pick(rule, texts, outcome);
    boolean isShort = outcome == Outcome.CANNOT_TELL && judge.isShortIfItApplies(rule, texts);
    boolean isOpen = outcome != Outcome.NOT_APPLICABLE && judge.mayNotApply(rule, texts);
    judge.atWayThatGives(rule, text, outcome);
    @Nullable Formula require = text.require();
    List<String> said = new ArrayList<>();
    remarks.texts(rule, texts, text, said);
    if (require != null) {
      remarks.comparisons(require.tree(), said);
    }
    remarks.ground(rule, text, said);
    if (outcome == Outcome.FALLS_SHORT) {
      remarks.older(rule, text, said);
    }
    Set<Entry> needs = new LinkedHashSet<>();
    if (outcome == Outcome.CANNOT_TELL) {
      needs(rule, texts, text, needs);
    }
    return new Explanation(
        outcome,
        require == null ? "" : Sentence.of(require.tree(), speech),
        condition(rule, text),
        require == null ? "" : Sentence.withNumbers(require.tree(), speech, at),
        require == null || outcome == Outcome.NOT_APPLICABLE ? null : decided(rule, require),
        workings(rule, text),
        needs.stream().map(Entry::key).toList(),
        said,
        rule.texts().indexOf(text),
        texts.size() > 1 ? texts.stream().map(rule.texts()::indexOf).toList() : List.of(),
        isShort,
        isOpen,
        outcome == Outcome.CANNOT_TELL ? noRows(rule, text) : List.of());
  }

  /** Only what tables of findings hold: quicker than the whole explanation. */
  public @Nullable Deciding deciding(RuleProgram rule) {
    Outcome outcome = Outcome.at(judge.outcome(rule));
    List<DatedText> texts = judge.inForce(rule);
    if (texts.isEmpty() || outcome == Outcome.NOT_APPLICABLE) {
      return null;
    }
    @Nullable Deciding decided = deciding(rule, pick(rule, texts, outcome), outcome);
    if (outcome == Outcome.CANNOT_TELL && decided != null) {
      for (DatedText text : texts) {
        Outcome own = judge.outcome(rule, text);
        @Nullable Deciding other = own == Outcome.NOT_APPLICABLE ? null : deciding(rule, text, own);
        decided = other == null ? decided : worse(decided, other);
      }
    }
    return decided;
  }

  private @Nullable Deciding deciding(RuleProgram rule, DatedText text, Outcome outcome) {
    judge.atWayThatGives(rule, text, outcome);
    @Nullable Formula require = text.require();
    return require == null ? null : decided(rule, require);
  }

  /** What decided. A word is held against what made the rule apply: no grout, so no bags of it. */
  private Deciding decided(RuleProgram rule, Formula require) {
    Deciding decided = deciding.of(require.tree());
    @Nullable Formula when = rule.when();
    if (when == null || decided.unit() != null || decided.isDate()) {
      return decided;
    }
    List<String> others =
        at.reads(when.tree()).stream()
            .filter(entry -> at.record().isGiven(entry.index()))
            .filter(entry -> !entry.key().equals(decided.entry()))
            .map(entry -> speech.beside(at.record(), entry))
            .toList();
    return others.size() > MOST_BESIDE ? decided : decided.against(others);
  }

  /** Where any of several texts may be in force, the worst margin is said, as of ranges. */
  private static Deciding worse(Deciding first, Deciding next) {
    boolean isAlike =
        first.entry().equals(next.entry()) && Margins.sameDimension(List.of(first, next));
    return isAlike && next.margin() < first.margin() ? next : first;
  }

  /** The place of the text that gives the outcome among the rule's; of the last where none does. */
  public int text(RuleProgram rule) {
    int last = rule.texts().size() - 1;
    if (last == 0) {
      return 0;
    }
    List<DatedText> texts = judge.inForce(rule);
    return texts.isEmpty()
        ? last
        : rule.texts().indexOf(pick(rule, texts, Outcome.at(judge.outcome(rule))));
  }

  /**
   * The first day that may decide, where it lies before all that was read of this text; minus
   * infinity where no day is given; NaN where the text is known to hold.
   */
  public double dayBefore(RuleProgram rule, int text) {
    return judge.dayBefore(rule, rule.texts().get(text));
  }

  /** The entries that would settle a rule that cannot be told. */
  public List<Entry> needs(RuleProgram rule) {
    List<DatedText> texts = judge.inForce(rule);
    needed.clear();
    if (!texts.isEmpty()) {
      DatedText text = pick(rule, texts, Outcome.CANNOT_TELL);
      judge.atWayThatGives(rule, text, Outcome.CANNOT_TELL);
      needs(rule, texts, text, needed);
    }
    return List.copyOf(needed);
  }

  /** A working on the record at hand, in words; depths as they were brought to ground last. */
  public WorkingShown show(Working working) {
    return new WorkingShown(
        working.name(),
        speech.label(working),
        words.formula(working),
        words.withNumbers(working),
        words.result(working),
        working.source(),
        words.lacking(working).stream().map(Entry::key).toList(),
        assumed(working));
  }

  /** What was taken for blanks, and from where depths count if the result depends on that. */
  private List<String> assumed(Working working) {
    List<String> assumed = new ArrayList<>(words.assumed(working));
    if (words.isKnown(working) && dependsOnWay(working)) {
      boolean isMetric = UnitOf.system(at) == UnitSystem.METRIC;
      for (Entry entry : at.inputs(working)) {
        boolean isGiven = at.frame().state(entry.index()) == WellRecord.GIVEN;
        if (isGiven && entry.datum().isMovable()) {
          String height =
              speech.amount(at.frame().shift(entry.datum()), isMetric ? Units.METRE : Units.FOOT);
          assumed.add(speech.phrase("assumed.datum", speech.label(entry), height));
        }
      }
    }
    return assumed;
  }

  /** Whether a working comes to something else, as shown, where depths are from another point. */
  private boolean dependsOnWay(Working working) {
    Frame frame = judge.frame();
    double record = frame.shift(Datum.RECORD);
    double water = frame.shift(Datum.WATER);
    double pump = frame.shift(Datum.PUMP);
    Set<String> results = new LinkedHashSet<>();
    for (int way = 0; way < judge.shifts().count(); way++) {
      judge.shifts().apply(frame, way);
      results.add(words.result(working));
    }
    frame.shift(Datum.RECORD, record);
    frame.shift(Datum.WATER, water);
    frame.shift(Datum.PUMP, pump);
    return results.size() > 1;
  }

  /** Whether a working applies to the record at hand and comes to something. */
  public boolean isKnown(Working working) {
    return words.isKnown(working);
  }

  /** The parts of formulas on the record at hand, depths brought to ground in the first way. */
  public Evaluation parts() {
    atFirstWay();
    return at;
  }

  /** Brings depths to ground in the first way that the record allows. */
  public void atFirstWay() {
    judge.shifts().apply(judge.frame(), 0);
  }

  private DatedText pick(RuleProgram rule, List<DatedText> texts, Outcome outcome) {
    if (texts.size() == 1) {
      return texts.get(0);
    }
    for (DatedText text : texts) {
      if (judge.outcome(rule, text) == outcome) {
        return text;
      }
    }
    return texts.get(0);
  }

  private String condition(RuleProgram rule, DatedText text) {
    List<Expr.Condition> all = new ArrayList<>();
    if (rule.when() != null) {
      all.add(rule.when().tree());
    }
    if (text.when() != null) {
      all.add(text.when().tree());
    }
    if (all.isEmpty()) {
      return "";
    }
    return Sentence.of(all.size() == 1 ? all.get(0) : new Expr.And(all), speech);
  }

  private void needs(RuleProgram rule, List<DatedText> texts, DatedText text, Set<Entry> needs) {
    if (texts.size() > 1 || judge.hasGap(rule)) {
      judge.days(rule, needs);
    }
    needs(rule.when(), needs);
    needs(text.when(), needs);
    needs(text.require(), needs);
    int datums = rule.datums() | text.datums();
    if (datums != 0 && judge.dependsOnWay(rule, text)) {
      judge
          .shifts()
          .needs(
              at.record(),
              Judge.reads(datums, Datum.RECORD),
              Judge.reads(datums, Datum.WATER),
              Judge.reads(datums, Datum.PUMP),
              needs);
    }
  }

  /** What tables lack of which the rule turns: no entry settles that. */
  private List<String> noRows(RuleProgram rule, DatedText text) {
    Set<String> said = new LinkedHashSet<>();
    for (@Nullable Formula formula :
        new @Nullable Formula[] {rule.when(), text.when(), text.require()}) {
      if (formula != null) {
        remarks.noRows(formula.tree(), said);
      }
    }
    return List.copyOf(said);
  }

  private void needs(@Nullable Formula formula, Set<Entry> needs) {
    if (formula != null) {
      Needs.of(formula.tree(), at, needs);
    }
  }

  private List<WorkingShown> workings(RuleProgram rule, DatedText text) {
    Set<Working> used = new LinkedHashSet<>();
    for (@Nullable Formula formula :
        new @Nullable Formula[] {text.require(), text.when(), rule.when()}) {
      if (formula != null) {
        collect(formula.tree(), used);
      }
    }
    return used.stream().map(this::show).toList();
  }

  private static void collect(Expr expr, Set<Working> into) {
    if (expr instanceof Expr.WorkingAmount w) {
      into.add(w.working());
    }
    Parts.of(expr).forEach(part -> collect(part, into));
  }
}
