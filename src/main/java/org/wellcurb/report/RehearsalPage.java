package org.wellcurb.report;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.quantity.Unit;
import org.wellcurb.report.RehearsalView.RecordChange;
import org.wellcurb.report.words.Amounts;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Pack;

/**
 * A rehearsal as its template needs it: outcomes in words.
 *
 * @param view what was rehearsed
 * @param before the pack in use
 * @param after the pack tried
 * @param beforeHash hash of the file of the pack in use
 * @param afterHash hash of the file of the pack tried
 * @param isSame true where both packs, with those they build on, are the same byte for byte
 * @param differences rules that differ
 * @param rules changes by rule
 * @param changes changes by record
 * @param cut what was cut, as a sentence; empty if nothing was
 */
public record RehearsalPage(
    RehearsalView view,
    PackLine before,
    PackLine after,
    String beforeHash,
    String afterHash,
    boolean isSame,
    List<DifferencePrint> differences,
    List<RuleLine> rules,
    List<Change> changes,
    String cut) {

  /**
   * How often a rule changes one outcome into another.
   *
   * @param id id of the rule
   * @param title what it asks
   * @param from outcome before, in words
   * @param to outcome after, in words
   * @param records how many records
   */
  public record RuleLine(String id, String title, String from, String to, long records) {}

  /**
   * One change of a record.
   *
   * @param record its number
   * @param place input and row
   * @param completed day of completion, as written; may be empty
   * @param title what the rule asks
   * @param value what was compared; may be empty
   * @param from outcome before, in words
   * @param limitFrom the limit before; may be empty
   * @param to outcome after, in words
   * @param limitTo the limit after; may be empty
   */
  public record Change(
      String record,
      String place,
      String completed,
      String title,
      String value,
      String from,
      String limitFrom,
      String to,
      String limitTo) {}

  static RehearsalPage of(RehearsalView view, PageStyle style) {
    Words words = Words.in(style.language());
    DifferencePrints prints = new DifferencePrints(view.before(), view.after(), words);
    Amounts amounts = new Amounts(words, style.units());
    return new RehearsalPage(
        view,
        PackLine.of(view.before()),
        PackLine.of(view.after()),
        hash(view.before()),
        hash(view.after()),
        view.before().files().equals(view.after().files()),
        view.differences().stream().map(prints::of).toList(),
        view.rules().stream()
            .map(
                each ->
                    new RuleLine(
                        each.rule(),
                        each.title(),
                        outcome(each.from(), words),
                        outcome(each.to(), words),
                        each.records()))
            .toList(),
        changes(view, words, amounts),
        view.changes().size() < view.totalChanges()
            ? words.say(
                "cut", view.changes().size(), view.totalChanges(), Cap.CHANGES_ON_PAGE.rest())
            : "");
  }

  private static List<Change> changes(RehearsalView view, Words words, Amounts amounts) {
    RuleWords ruleWords = new RuleWords(words);
    FormWords said = new FormWords(words);
    return view.changes().stream()
        .map(each -> change(each, words, ruleWords, said, amounts))
        .toList();
  }

  private static Change change(
      RecordChange each, Words words, RuleWords ruleWords, FormWords said, Amounts amounts) {
    Deciding compared = each.compared();
    return new Change(
        each.recordId(),
        words.say("place", each.file(), each.row()),
        each.completed(),
        ruleWords.title(each.rule()),
        amount(compared, compared.value(), compared.valueText(), said, amounts),
        outcome(each.from(), words),
        limit(each.was(), said, amounts),
        outcome(each.to(), words),
        limit(each.is(), said, amounts));
  }

  private static String limit(@Nullable Deciding deciding, FormWords said, Amounts amounts) {
    return deciding == null
        ? ""
        : amount(deciding, deciding.limit(), deciding.limitText(), said, amounts);
  }

  private static String amount(
      Deciding deciding, double number, String text, FormWords said, Amounts amounts) {
    if (!text.isEmpty()) {
      return said.wanted(text);
    }
    if (Double.isNaN(number) || Double.isInfinite(number)) {
      return "";
    }
    @Nullable Unit unit = deciding.unit();
    return deciding.isDate()
        ? LocalDate.ofEpochDay((long) number).toString()
        : unit == null ? "" : amounts.tidy(number, unit);
  }

  private static String hash(Pack pack) {
    return pack.files().isEmpty() ? "" : pack.files().get(pack.files().size() - 1).sha256();
  }

  private static String outcome(@Nullable Outcome outcome, Words words) {
    return words.say(outcome == null ? "rehearsal.no.rule" : OutcomeGroups.key(outcome));
  }
}
