package org.wellcurb.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.RuleResult;

/**
 * All outcomes of a record, grouped; a rule for which another stands is in a group of its own, and
 * so is one that is met by a sample which does not count.
 */
final class OutcomeGroups {
  /** The order in which pages show outcomes. */
  static final List<Outcome> ORDER =
      List.of(
          Outcome.FALLS_SHORT,
          Outcome.CANNOT_TELL,
          Outcome.WAIVED,
          Outcome.MEETS,
          Outcome.NOT_APPLICABLE);

  private final RecordResult result;
  private final Words words;
  private final RuleWords ruleWords;
  private final Map<String, String> letters = new LinkedHashMap<>();
  private final SampleDoubts doubts;
  private final Map<String, String> titles = new LinkedHashMap<>();

  OutcomeGroups(RecordResult result, List<FindingView> findings, Words words) {
    this.result = result;
    this.words = words;
    ruleWords = new RuleWords(words);
    for (FindingView finding : findings) {
      letters.put(finding.ruleId(), finding.letter());
    }
    doubts = new SampleDoubts(findings);
    for (Rule rule : result.pack().rules()) {
      titles.put(rule.id(), ruleWords.title(rule));
    }
  }

  static String key(Outcome outcome) {
    return "outcome." + outcome.name().toLowerCase(Locale.ROOT);
  }

  List<OutcomeGroup> all() {
    List<OutcomeGroup> groups = new ArrayList<>();
    for (Outcome outcome : ORDER) {
      List<OutcomeLine> lines = new ArrayList<>();
      List<OutcomeLine> doubted = new ArrayList<>();
      for (RuleResult each : result.results()) {
        if (each.outcome() == outcome && each.standsFor().isEmpty()) {
          (doubts.letter(each).isEmpty() ? lines : doubted).add(line(each));
        }
      }
      groups.add(new OutcomeGroup("outcome.doubted", true, doubted));
      boolean open = outcome == Outcome.CANNOT_TELL || outcome == Outcome.WAIVED;
      groups.add(new OutcomeGroup(key(outcome), open, lines));
    }
    List<OutcomeLine> stoodFor = new ArrayList<>();
    for (RuleResult each : result.results()) {
      if (!each.standsFor().isEmpty()) {
        stoodFor.add(line(each));
      }
    }
    groups.add(new OutcomeGroup("outcome.stood_for", false, stoodFor));
    return groups.stream().filter(group -> !group.lines().isEmpty()).toList();
  }

  /** Counts by key, in the order of the groups; each outcome has one, also where it is 0. */
  Map<String, Integer> counts() {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Outcome outcome : ORDER) {
      counts.put(key(outcome), 0);
    }
    for (RuleResult each : result.results()) {
      if (each.standsFor().isEmpty()) {
        counts.merge(key(each.outcome()), 1, Integer::sum);
      }
    }
    return counts;
  }

  private List<String> remarks(RuleResult each) {
    String letter = doubts.letter(each);
    if (letter.isEmpty()) {
      return each.explanation().remarks();
    }
    List<String> remarks = new ArrayList<>(each.explanation().remarks());
    remarks.add(words.say("outcome.doubted.why", letter));
    return remarks;
  }

  private OutcomeLine line(RuleResult each) {
    Rule rule = each.rule();
    return new OutcomeLine(
        rule.id(),
        ruleWords.title(rule),
        each.standsFor().isEmpty() ? letters.getOrDefault(rule.id(), "") : "",
        each.explanation().requirement(),
        each.explanation().withNumbers(),
        each.explanation().needs().stream().map(words::entry).toList(),
        rule.ask(),
        remarks(each),
        SourceLine.of(rule.source(each.explanation().text()), words),
        // A rule that is met, or falls short all the same, is not waived whatever the form names.
        each.outcome() == Outcome.WAIVED ? each.variance() : "",
        titles.getOrDefault(each.standsFor(), each.standsFor()));
  }
}
