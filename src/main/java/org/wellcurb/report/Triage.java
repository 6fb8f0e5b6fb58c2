package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.words.Amounts;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.screening.Ask;
import org.wellcurb.screening.PossibleReading;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.RuleResult;

/** What a person must do first about one record: a few sentences in the order of doing. */
final class Triage {
  private static final int ASKS_NAMED = 3;

  private final RecordResult result;
  private final List<FindingView> findings;
  private final Words words;
  private final List<Step> steps = new ArrayList<>();

  private final Amounts amounts;

  Triage(RecordResult result, List<FindingView> findings, PageStyle style) {
    this.result = result;
    this.findings = findings;
    words = Words.in(style.language());
    amounts = new Amounts(words, style.units());
  }

  List<Step> steps() {
    unreadable();
    readings();
    farOff();
    kind(FindingKind.DISCREPANCY);
    kind(FindingKind.DEFICIENCY);
    kind(FindingKind.OMISSION);
    asks();
    kind(FindingKind.ADVISORY);
    if (findings.isEmpty()) {
      steps.add(0, new Step(nothing(), List.of()));
    }
    return steps;
  }

  private void unreadable() {
    WellRecord record = result.record();
    List<String> labels = new ArrayList<>();
    for (int i = 0; i < record.catalogue().size(); i++) {
      if (record.state(i) == WellRecord.UNREADABLE) {
        labels.add(words.entry(record.catalogue().entry(i).key()));
      }
    }
    if (!labels.isEmpty()) {
      add(words.count("first.unreadable", labels.size(), some(labels)), List.of());
    }
  }

  private void readings() {
    for (PossibleReading reading : result.readings()) {
      add(
          words.count(
              "first.reading",
              reading.rules(),
              words.entry(reading.entry()),
              reading.written(),
              reading.reading()),
          List.of());
    }
  }

  /** What hardly any well has was often written in another unit: it hides what it should break. */
  private void farOff() {
    WellRecord record = result.record();
    List<String> figures = new ArrayList<>();
    for (Entry entry : record.farOff()) {
      if (result.readings().stream().noneMatch(each -> each.entry().equals(entry.key()))) {
        figures.add(
            words.say(
                "first.far.figure",
                words.entry(entry.key()),
                amounts.read(record, entry),
                amounts.range(entry.plausible(), entry, record.unit(entry.index()))));
      }
    }
    if (!figures.isEmpty()) {
      add(words.count("first.far", figures.size(), some(figures)), List.of());
    }
  }

  private void kind(FindingKind kind) {
    List<FindingView> some =
        findings.stream().filter(each -> each.kind().equals(kind.label())).toList();
    if (!some.isEmpty()) {
      add(words.count("first." + kind.label(), some.size()), some);
    }
  }

  private void asks() {
    List<String> labels = new ArrayList<>();
    for (Ask ask : result.asks()) {
      labels.add(words.entry(ask.entry()));
    }
    if (!labels.isEmpty()) {
      add(words.count("first.ask", count(Outcome.CANNOT_TELL), some(labels)), List.of());
    }
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

  private void add(String text, List<FindingView> about) {
    steps.add(new Step(text, about));
  }
}
