package org.wellcurb.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.report.RehearsalView.RuleChange;
import org.wellcurb.report.words.Words;

/**
 * A rehearsal as its template needs it: outcomes in words.
 *
 * @param view what was rehearsed
 * @param before the pack in use
 * @param after the pack tried
 * @param rules changes by rule
 * @param changes changes by record
 * @param cut what was cut, as a sentence; empty if nothing was
 */
public record RehearsalPage(
    RehearsalView view,
    PackLine before,
    PackLine after,
    List<Change> rules,
    List<Change> changes,
    String cut) {

  /**
   * One change.
   *
   * @param what rule or record
   * @param place input and row; empty for rules
   * @param title what the rule asks
   * @param from outcome before, in words
   * @param to outcome after, in words
   * @param records how many records
   * @param asked what the rule asks under the pack before; empty for records
   * @param asks what it asks under the pack after; empty for records, and where that is the same
   */
  public record Change(
      String what,
      String place,
      String title,
      String from,
      String to,
      long records,
      String asked,
      String asks) {}

  static RehearsalPage of(RehearsalView view, PageStyle style) {
    Words words = Words.in(style.language());
    return new RehearsalPage(
        view,
        PackLine.of(view.before()),
        PackLine.of(view.after()),
        view.rules().stream().map(each -> change(view, each, new RuleTexts(words), words)).toList(),
        view.changes().stream()
            .map(
                each ->
                    new Change(
                        each.recordId(),
                        words.say("place", each.file(), each.row()),
                        each.title(),
                        outcome(each.from(), words),
                        outcome(each.to(), words),
                        1,
                        "",
                        ""))
            .toList(),
        view.changes().size() < view.totalChanges()
            ? words.say(
                "cut", view.changes().size(), view.totalChanges(), Cap.CHANGES_ON_PAGE.rest())
            : "");
  }

  private static Change change(RehearsalView view, RuleChange each, RuleTexts texts, Words words) {
    String asked = texts.of(view.before(), each.rule());
    String asks = texts.of(view.after(), each.rule());
    return new Change(
        each.rule(),
        "",
        each.title(),
        outcome(each.from(), words),
        outcome(each.to(), words),
        each.records(),
        asked.isEmpty() ? words.say("rehearsal.no.rule") : asked,
        asks.equals(asked) ? "" : asks.isEmpty() ? words.say("rehearsal.no.rule") : asks);
  }

  private static String outcome(@Nullable Outcome outcome, Words words) {
    return words.say(outcome == null ? "rehearsal.no.rule" : OutcomeGroups.key(outcome));
  }
}
