package org.wellcurb.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.record.Variance;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Ask;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.RuleResult;

/** Makes what a record sheet shows from what was screened. */
final class SheetMaker {
  private static final int RULES_NAMED = 4;

  private final RecordResult result;
  private final PageStyle style;
  private final Words words;

  SheetMaker(RecordResult result, PageStyle style) {
    this.result = result;
    this.style = style;
    words = Words.in(style.language());
  }

  SheetView sheet(LocalDate asOf) {
    List<FindingView> findings = new FindingViews(result, style).all();
    OutcomeGroups outcomes = new OutcomeGroups(result, findings, words);
    return new SheetView(
        result.record().id(),
        words.say("place", result.record().file(), result.record().row()),
        PackLine.of(result.pack()),
        asOf.toString(),
        new Triage(result, findings, words).steps(),
        outcomes.counts(),
        findings,
        asks(),
        result.cautions(),
        List.of(),
        outcomes.all(),
        result.workings().stream().filter(each -> each.lacking().isEmpty()).toList(),
        nearWorkings(),
        new EntryTables(result.record(), style).all(),
        variances(),
        result.record().extras());
  }

  private List<AskView> asks() {
    List<AskView> asks = new ArrayList<>();
    for (Ask ask : result.asks()) {
      Set<String> titles = new LinkedHashSet<>();
      for (RuleResult each : result.results()) {
        if (each.outcome() == Outcome.CANNOT_TELL
            && titles.size() < RULES_NAMED
            && each.explanation().needs().contains(ask.entry())) {
          titles.add(each.rule().title());
        }
      }
      asks.add(new AskView(words.entry(ask.entry()), ask.settles(), List.copyOf(titles)));
    }
    return asks;
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
      String title = "";
      for (Rule rule : result.pack().rules()) {
        if (rule.id().equals(variance.rule())) {
          title = rule.title();
        }
      }
      boolean used = !result.idleVariances().contains(variance);
      lines.add(new VarianceLine(variance.rule(), title, variance.reference(), used));
    }
    return lines;
  }
}
