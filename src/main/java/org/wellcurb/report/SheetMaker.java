package org.wellcurb.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.record.Variance;
import org.wellcurb.report.drawing.Mark;
import org.wellcurb.report.drawing.Sketch;
import org.wellcurb.report.words.Amounts;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.PackScope;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Ask;
import org.wellcurb.screening.Cautions;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.NamedElsewhere;
import org.wellcurb.screening.PossibleReading;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.RuleResult;
import org.wellcurb.screening.VarianceUse;

/** Makes what a record sheet shows from what was screened. */
final class SheetMaker {
  private static final int RULES_NAMED = 4;

  private final RecordResult result;
  private final PageStyle style;
  private final Words words;
  private final RuleWords ruleWords;
  private final Function<Finding, @Nullable Settlement> settled;

  SheetMaker(
      RecordResult result, PageStyle style, Function<Finding, @Nullable Settlement> settled) {
    this.settled = settled;
    this.result = result;
    this.style = style;
    words = Words.in(style.language());
    ruleWords = new RuleWords(words);
  }

  SheetView sheet(LocalDate asOf) {
    List<FindingView> findings = new FindingViews(result, style, settled).all();
    OutcomeGroups outcomes = new OutcomeGroups(result, findings, words);
    Sketch sketch = sketch(findings);
    return new SheetView(
        result.record().id(),
        words.say("place", result.record().file(), result.record().row()),
        PackLine.of(result.pack()),
        asOf.toString(),
        style.own(result.pack().authority()),
        elsewhere(),
        new Triage(result, findings, style).steps(),
        outcomes.counts(),
        findings,
        open(),
        asks(),
        result.cautions(),
        sketch.drawings(),
        result.readings().stream().map(PossibleReading::reading).toList(),
        sketch.missing(),
        outcomes.all(),
        result.workings().stream().filter(each -> each.lacking().isEmpty()).toList(),
        Cautions.isOfChlorine(result.workings()) && !result.cautions().contains(Cautions.CHLORINE),
        nearWorkings(),
        new EntryTables(result.record(), style).all(),
        variances(),
        result.record().extras());
  }

  private String elsewhere() {
    String named = NamedElsewhere.of(result.record(), result.pack());
    return named.isEmpty()
        ? ""
        : words.say("elsewhere", Cap.QUOTED_LETTERS.cut(named), style.own(result.pack().title()));
  }

  private Sketch sketch(List<FindingView> findings) {
    List<Mark> marks = new ArrayList<>();
    for (FindingView finding : findings) {
      Set<String> entries = new LinkedHashSet<>();
      for (Finding each : result.findings()) {
        if (each.rule().id().equals(finding.ruleId())) {
          entries.add(each.deciding().entry());
          entries.addAll(each.rule().required());
        }
      }
      marks.add(
          new Mark(finding.letter(), finding.anchor(), finding.sentence(), List.copyOf(entries)));
    }
    return new Sketch(
        result.record(),
        new PackScope(result.pack().tables(), result.pack().figures()),
        words,
        new Amounts(words, style.units()),
        marks,
        new DrawnLimits(result, style.speech(), words).all());
  }

  /** Limits of the law and of good practice that stand unmet unless they do not apply. */
  private List<OpenLimit> open() {
    FindingSentence sentence = new FindingSentence(style);
    List<OpenLimit> open = new ArrayList<>();
    for (RuleResult each : result.results()) {
      @Nullable Deciding deciding = each.explanation().deciding();
      if (each.explanation().isShortIfItApplies()
          && each.rule().kind() == FindingKind.DEFICIENCY
          && deciding != null) {
        open.add(
            new OpenLimit(
                ruleWords.title(each.rule()),
                sentence.of(each.rule(), deciding),
                each.explanation().needs().stream().map(this::asked).toList()));
      }
    }
    return open;
  }

  /** Entries that the same rules wait for are asked for in one breath. */
  private List<AskView> asks() {
    Map<Set<String>, List<AskedEntry>> entries = new LinkedHashMap<>();
    for (Ask ask : result.asks()) {
      Set<String> rules = new LinkedHashSet<>();
      for (RuleResult each : result.results()) {
        if (each.outcome() == Outcome.CANNOT_TELL
            && each.explanation().needs().contains(ask.entry())) {
          rules.add(ruleWords.title(each.rule()));
        }
      }
      entries.computeIfAbsent(rules, none -> new ArrayList<>()).add(asked(ask.entry()));
    }
    List<AskView> asks = new ArrayList<>();
    entries.forEach(
        (rules, some) ->
            asks.add(new AskView(some, rules.size(), rules.stream().limit(RULES_NAMED).toList())));
    return asks;
  }

  private AskedEntry asked(String key) {
    return new AskedEntry(key, words.entry(key));
  }

  private List<SheetView.NearWorking> nearWorkings() {
    List<SheetView.NearWorking> near = new ArrayList<>();
    for (WorkingShown working : result.workings()) {
      if (!working.lacking().isEmpty()) {
        List<String> lacking = working.lacking().stream().map(words::entry).toList();
        near.add(new SheetView.NearWorking(working.meaning(), lacking));
      }
    }
    return near;
  }

  private List<VarianceLine> variances() {
    List<VarianceLine> lines = new ArrayList<>();
    for (Variance variance : result.record().variances()) {
      String why = "";
      String near = "";
      for (VarianceUse use : result.idleVariances()) {
        if (use.variance().equals(variance)) {
          why = VarianceLine.why(use.does());
          near = use.near();
        }
      }
      lines.add(
          new VarianceLine(
              variance.rule(),
              title(variance.rule()),
              variance.reference(),
              why,
              near,
              title(near)));
    }
    return lines;
  }

  /** What the rule of this id asks; empty where the pack has none. */
  private String title(String id) {
    for (Rule rule : result.pack().rules()) {
      if (rule.id().equals(id)) {
        return ruleWords.title(rule);
      }
    }
    return "";
  }
}
