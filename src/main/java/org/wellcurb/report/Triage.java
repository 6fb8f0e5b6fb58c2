package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.WellRecord;
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

  Triage(RecordResult result, List<FindingView> findings, Words words) {
    this.result = result;
    this.findings = findings;
    this.words = words;
  }

  List<Step> steps() {
    unreadable();
    readings();
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
