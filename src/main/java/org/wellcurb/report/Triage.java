package org.wellcurb.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.words.Amounts;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.screening.Ask;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.PossibleReading;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.RuleResult;
import org.wellcurb.screening.UnfitWater;

/**
 * What a person must do first about one record: a few sentences in the order of doing. What a step
 * settles is not asked again by a later one.
 */
final class Triage {
  private static final int ASKS_NAMED = 3;

  /** What is longer is not quoted in a step. */
  private static final int MOST_QUOTED = 40;

  private final RecordResult result;
  private final List<FindingView> findings;
  private final PageStyle style;
  private final Words words;
  private final RuleWords ruleWords;
  private final Amounts amounts;
  private final Urgent urgent;
  private final List<Step> steps = new ArrayList<>();

  /** Findings that no step has named yet. */
  private final List<FindingView> left;

  /** Keys of entries that are to be written again. */
  private final Set<String> again = new LinkedHashSet<>();

  Triage(RecordResult result, List<FindingView> findings, PageStyle style) {
    this.result = result;
    this.findings = findings;
    this.style = style;
    words = Words.in(style.language());
    ruleWords = new RuleWords(words);
    amounts = new Amounts(words, style.units());
    urgent = new Urgent(result.record());
    left = new ArrayList<>(findings);
  }

  List<Step> steps() {
    water();
    hazards();
    beyondLimits();
    boolean isDoubted = !result.readings().isEmpty() || !result.record().farOff().isEmpty();
    if (findings.isEmpty() && !isDoubted) {
      steps.add(Step.of(nothing()));
    }
    unreadable();
    readings();
    farOff();
    if (findings.isEmpty() && isDoubted) {
      steps.add(Step.of(nothing()));
    }
    Set<String> contradicted = contradicted();
    limits("first.deficiency", view -> !hangsOn(view, contradicted));
    kind(FindingKind.DISCREPANCY);
    limits("first.hangs", view -> true);
    dryPump();
    kind(FindingKind.OMISSION);
    asks();
    person();
    recommended(contradicted);
    advice(contradicted);
    unjudged();
    return steps;
  }

  /** Before anything else: what the sample says of the water that people drink. */
  private void water() {
    String key = urgent.key();
    if (!key.isEmpty()) {
      // What a rule says of bacteria alone, to boil the water, would be wrong where nitrate is too.
      add(words.say(key), take(view -> urgent.isAbout(view.entry())), !urgent.isOfBoth());
    }
  }

  /**
   * What may hurt someone any day, unless it may have been meant otherwise: in the pack's words.
   */
  private void hazards() {
    Set<String> texts = new LinkedHashSet<>();
    left.forEach(view -> texts.add(view.atOnce()));
    texts.remove("");
    for (String text : texts) {
      List<FindingView> some = take(view -> view.atOnce().equals(text) && !isDoubted(view));
      if (!some.isEmpty()) {
        add(words.say("first.at_once", style.own(text)), some, true);
      }
    }
  }

  /**
   * Whether it may come of a slip: what may have been meant settles it, or no well has the figure.
   */
  private boolean isDoubted(FindingView view) {
    return result.readings().stream().anyMatch(each -> each.settles().contains(view.ruleId()))
        || result.record().farOff().stream().anyMatch(each -> view.reads().contains(each.key()));
  }

  /** What is in the water beyond a federal limit, whatever rules the pack has. */
  private void beyondLimits() {
    List<String> figures = new ArrayList<>();
    Set<String> keys = new HashSet<>();
    for (UnfitWater.Over over : UnfitWater.over(result.record())) {
      Entry entry = result.record().catalogue().entry(over.entry());
      if (over.isSure()) {
        keys.add(entry.key());
        figures.add(figure("first.beyond.figure", entry, over.limit()));
      }
    }
    if (!figures.isEmpty()) {
      add(
          words.count("first.beyond", figures.size(), String.join(", ", figures)),
          take(view -> keys.contains(view.entry())),
          true);
    }
  }

  /** An entry with its figure and, in its unit, an amount beside it. */
  private String figure(String key, Entry entry, double beside) {
    WellRecord record = result.record();
    @Nullable Unit unit = record.unit(entry.index());
    return words.say(
        key,
        words.entry(entry.key()),
        amounts.read(record, entry),
        unit == null ? "" : amounts.tidy(unit.fromSi(beside), unit));
  }

  /** Figures that may make ill and that nobody has judged: no rule of the pack reads them. */
  private void unjudged() {
    Set<Entry> read = new HashSet<>();
    result.pack().rules().forEach(rule -> read.addAll(rule.program().reads()));
    WellRecord record = result.record();
    List<String> figures = new ArrayList<>();
    for (Entry entry : record.catalogue().entries()) {
      if (UnfitWater.isOfHealth(entry) && record.isGiven(entry.index()) && !read.contains(entry)) {
        figures.add(figure("first.unjudged.figure", entry, Double.NaN));
      }
    }
    if (!figures.isEmpty()) {
      steps.add(Step.of(words.count("first.unjudged", figures.size(), String.join(", ", figures))));
    }
  }

  private void unreadable() {
    WellRecord record = result.record();
    List<String> labels = new ArrayList<>();
    for (int i = 0; i < record.catalogue().size(); i++) {
      if (WriteAgain.isAsked(record, i)) {
        String key = record.catalogue().entry(i).key();
        again.add(key);
        String written = record.written(i);
        labels.add(
            written.isEmpty() || written.length() > MOST_QUOTED
                ? words.entry(key)
                : words.say("again.label", words.entry(key), written));
      }
    }
    if (!labels.isEmpty()) {
      // What stands there is not missing, though nothing can be taken from it.
      List<FindingView> unread =
          take(view -> isOf(view, FindingKind.OMISSION) && again.contains(view.entry()));
      String text = words.count("first.unreadable", labels.size(), some(labels));
      steps.add(new Step(text, unread, false, List.of(), "#entries"));
    }
  }

  /** What a reading would settle is named with it, and waits for it. */
  private void readings() {
    for (PossibleReading reading : result.readings()) {
      if (reading.rules() == 0) {
        steps.add(Step.of(words.say("first.basis", reading.reading())));
        continue;
      }
      List<FindingView> settled = take(view -> reading.settles().contains(view.ruleId()));
      add(
          words.count(
              "first.reading",
              Math.max(settled.size(), 1),
              words.entry(reading.entry()),
              reading.written(),
              reading.reading()),
          settled,
          false);
    }
  }

  /** What hardly any well has was often written in another unit: it hides what it should break. */
  private void farOff() {
    WellRecord record = result.record();
    List<String> figures = new ArrayList<>();
    for (Entry entry : record.farOff()) {
      if (result.readings().stream().noneMatch(each -> each.changes(entry.key()))) {
        figures.add(
            words.say(
                "first.far.figure",
                words.entry(entry.key()),
                amounts.read(record, entry),
                amounts.range(entry.plausible(), entry, record.unit(entry.index()))));
      }
    }
    if (!figures.isEmpty()) {
      steps.add(Step.of(words.count("first.far", figures.size(), some(figures))));
    }
  }

  /** Entries that contradict each other. */
  private Set<String> contradicted() {
    Set<String> keys = new HashSet<>();
    for (FindingView view : left) {
      if (isOf(view, FindingKind.DISCREPANCY)) {
        keys.addAll(view.reads());
      }
    }
    return keys;
  }

  private static boolean hangsOn(FindingView view, Set<String> contradicted) {
    return view.reads().stream().anyMatch(contradicted::contains);
  }

  private void limits(String key, Predicate<FindingView> which) {
    List<FindingView> some = take(view -> isOf(view, FindingKind.DEFICIENCY) && which.test(view));
    if (!some.isEmpty()) {
      String authority = style.own(result.pack().authority());
      add(words.count(key, some.size(), authority), some, true);
    }
  }

  /** A pump that draws air fails whoever lives there: it does not wait for the other advice. */
  private void dryPump() {
    Set<String> rules = new HashSet<>();
    for (Finding finding : result.findings()) {
      if (new DryPump(style).isSaid(finding.deciding())) {
        rules.add(finding.rule().id());
      }
    }
    List<FindingView> some = take(view -> rules.contains(view.ruleId()));
    if (!some.isEmpty()) {
      add(words.say("first.dry"), some, true);
    }
  }

  /** What a text recommends, before what is common practice only. */
  private void recommended(Set<String> contradicted) {
    List<FindingView> some =
        take(view -> view.heading().equals(FindingView.OF_TEXT) && !hangsOn(view, contradicted));
    if (!some.isEmpty()) {
      add(words.count("first.recommended", some.size()), some, true);
    }
  }

  /** What is common practice; then what may be no point at all once entries agree. */
  private void advice(Set<String> contradicted) {
    List<FindingView> some =
        take(view -> isOf(view, FindingKind.ADVISORY) && !hangsOn(view, contradicted));
    if (!some.isEmpty()) {
      add(words.count("first.advisory", some.size()), some, true);
    }
    List<FindingView> hanging = take(view -> isOf(view, FindingKind.ADVISORY));
    if (!hanging.isEmpty()) {
      add(words.count("first.advice.hangs", hanging.size()), hanging, true);
    }
  }

  private void kind(FindingKind kind) {
    List<FindingView> some = take(view -> isOf(view, kind));
    if (!some.isEmpty()) {
      add(words.count("first." + kind.label(), some.size()), some, true);
    }
  }

  private static boolean isOf(FindingView view, FindingKind kind) {
    return view.kind().equals(kind.label());
  }

  private void asks() {
    List<String> labels = new ArrayList<>();
    for (Ask ask : result.asks()) {
      if (!again.contains(ask.entry())) {
        labels.add(words.entry(ask.entry()));
      }
    }
    if (!labels.isEmpty()) {
      int rules =
          (int) untold().stream().filter(each -> !each.explanation().needs().isEmpty()).count();
      add("#ask", words.count("first.ask", rules, some(labels)));
    }
  }

  /** What no entry tells. */
  private void person() {
    List<String> questions = new ArrayList<>();
    List<String> others = new ArrayList<>();
    Set<String> lacking = new LinkedHashSet<>();
    for (RuleResult each : untold()) {
      if (!each.rule().ask().isEmpty()) {
        questions.add(each.rule().ask());
      } else if (!each.explanation().noRows().isEmpty()) {
        each.explanation().noRows().forEach(said -> lacking.add(clause(said)));
      } else if (each.explanation().needs().isEmpty()) {
        others.add(ruleWords.title(each.rule()));
      }
    }
    if (!questions.isEmpty()) {
      quote(words.count("first.person", questions.size()), questions);
    }
    if (!lacking.isEmpty()) {
      String authority = style.own(result.pack().authority());
      quote(words.count("first.no.row", lacking.size(), authority), List.copyOf(lacking));
    }
    if (!others.isEmpty()) {
      quote(words.count("first.untold", others.size()), others);
    }
  }

  /** A sentence without its full stop. */
  private static String clause(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }

  private List<RuleResult> untold() {
    return result.results().stream()
        .filter(each -> each.standsFor().isEmpty() && each.outcome() == Outcome.CANNOT_TELL)
        .toList();
  }

  private String nothing() {
    int told = count(Outcome.MEETS) + count(Outcome.WAIVED);
    return told == 0 ? words.say("first.nothing.told") : words.count("first.nothing", told);
  }

  private int count(Outcome outcome) {
    int n = 0;
    for (RuleResult each : result.results()) {
      n += each.standsFor().isEmpty() && each.outcome() == outcome ? 1 : 0;
    }
    return n;
  }

  private String some(List<String> labels) {
    String named = String.join(", ", labels.subList(0, Math.min(ASKS_NAMED, labels.size())));
    int more = labels.size() - ASKS_NAMED;
    return more > 0 ? words.count("and.more", more, named) : named;
  }

  /** The findings of this sort that no step has named yet; now one does. */
  private List<FindingView> take(Predicate<FindingView> which) {
    List<FindingView> taken = left.stream().filter(which).toList();
    left.removeAll(taken);
    return taken;
  }

  private void quote(String text, List<String> quoted) {
    steps.add(
        new Step(
            text,
            List.of(),
            false,
            quoted.subList(0, Math.min(ASKS_NAMED, quoted.size())),
            "#outcomes"));
  }

  private void add(String link, String text) {
    steps.add(Step.to(link, text));
  }

  private void add(String text, List<FindingView> about, boolean isNow) {
    steps.add(new Step(text, about, isNow, List.of(), ""));
  }
}
