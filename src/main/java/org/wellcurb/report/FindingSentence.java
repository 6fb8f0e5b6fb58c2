package org.wellcurb.report;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Wanted;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.report.words.Amounts;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Finding;

/**
 * What is wrong, in one plain sentence: the entry, what it has, what was asked for, by how much.
 */
public final class FindingSentence {
  private final PageStyle style;
  private final Words words;
  private final RuleWords ruleWords;
  private final Amounts amounts;
  private final FormWords said;
  private final DryPump dryPump;

  public FindingSentence(PageStyle style) {
    this.style = style;
    words = Words.in(style.language());
    ruleWords = new RuleWords(words);
    said = new FormWords(words);
    dryPump = new DryPump(style);
    amounts = new Amounts(words, style.units());
  }

  /** The sentence of a finding. */
  public String of(Finding finding) {
    return of(finding.rule(), finding.deciding());
  }

  /** The sentence of a rule and of the comparison that decides it. */
  String of(Rule rule, Deciding deciding) {
    if (deciding.entry().isEmpty() && deciding.subject().isEmpty()) {
      return words.say("finding.plain", style.own(ruleWords.title(rule)));
    }
    boolean isOfEntries = rule.kind() == FindingKind.DISCREPANCY;
    return said(rule, deciding) + (isOfEntries ? doubt(deciding) : "");
  }

  private String said(Rule rule, Deciding deciding) {
    String label = capital(subject(deciding));
    @Nullable Unit unit = deciding.unit();
    if (isUnsure(deciding)) {
      return again(label, deciding);
    }
    if (deciding.isDate() || unit != null) {
      // A limit below nothing, and by how much that is too little, tells nobody what is wrong.
      String dry = dryPump.sentence(deciding);
      return dry.isEmpty() ? measured(rule, deciding, label, unit) : dry;
    }
    String value = deciding.valueText().isEmpty() ? deciding.written() : deciding.valueText();
    if (value.isEmpty()) {
      return words.say("finding.blank", label);
    }
    return deciding.limitText().isEmpty()
        ? words.say("finding.is", label, coded(value, deciding.written()))
        : words.say(
            rule.kind() == FindingKind.DISCREPANCY ? "finding.fits" : "finding.is.not",
            label,
            coded(value, deciding.written()),
            said.wanted(deciding.limitText()),
            "",
            rest(deciding));
  }

  /** What an entry that contradicts others would have to fit. */
  private String rest(Deciding deciding) {
    return deciding.beside().isEmpty()
        ? words.say("finding.rest")
        : String.join(words.say("finding.and"), deciding.beside());
  }

  /** That it may not be the entry named first that is wrong. */
  private String doubt(Deciding deciding) {
    return switch (deciding.beside().size()) {
      case 0 -> deciding.subject().isEmpty() ? "" : " " + words.say("finding.any.within");
      case 1 -> " " + words.say("finding.either");
      default -> " " + words.say("finding.any");
    };
  }

  private String again(String label, Deciding deciding) {
    @Nullable Entry entry = Catalogue.standard().find(deciding.entry());
    List<String> days =
        entry != null && entry.kind() == Kind.DATE
            ? WriteAgain.days(deciding.written())
            : List.of();
    return days.isEmpty()
        ? words.say("finding.again", label, deciding.written())
        : words.say(
            "finding.again.day",
            label,
            deciding.written(),
            String.join(words.say("wanted.or"), days));
  }

  /** Something is asked for, and what stands there, figures among it, could not be taken. */
  private static boolean isUnsure(Deciding deciding) {
    return deciding.limitText().equals(Wanted.GIVEN)
        && deciding.written().chars().anyMatch(Character::isDigit);
  }

  /** A word as pages say it, with the code of the form beside it where that is another. */
  private String coded(String value, String written) {
    String word = said.word(value);
    boolean same =
        written.isEmpty()
            || written.equalsIgnoreCase(value)
            || written.equalsIgnoreCase(word)
            || (isYesNo(value) && value.startsWith(written.toLowerCase(Locale.ROOT)));
    return same ? word : words.say("finding.written.as", word, written);
  }

  private static boolean isYesNo(String value) {
    return value.equals("yes") || value.equals("no");
  }

  /** What was compared: the entry, or what was worked out from it. */
  private String subject(Deciding deciding) {
    return deciding.subject().isEmpty()
        ? words.entry(deciding.entry())
        : deciding.subject().replace(" - ", words.say("finding.less"));
  }

  private static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private String measured(Rule rule, Deciding deciding, String label, @Nullable Unit unit) {
    // Entries that contradict each other have no limit between them.
    boolean fits = rule.kind() == FindingKind.DISCREPANCY;
    double margin = Math.max(Math.abs(deciding.margin()), Math.abs(deciding.leastMargin()));
    double least = Math.min(Math.abs(deciding.margin()), Math.abs(deciding.leastMargin()));
    if (isBeyond(deciding)) {
      margin = least = Math.abs(deciding.leastMargin());
    }
    boolean isTidy = isApart(deciding, unit);
    boolean isWorked = isTidy && !deciding.subject().isEmpty();
    String value =
        deciding.valueText().isEmpty()
            ? print(deciding.value(), unit, isWorked)
            : deciding.valueText();
    if (Double.isNaN(deciding.value()) && deciding.valueText().isEmpty()) {
      return words.say("finding.blank", label);
    }
    String bare =
        Double.isNaN(deciding.limit()) || !deciding.limitText().isEmpty()
            ? deciding.limitText()
            : print(deciding.limit(), unit, isTidy);
    if (bare.isEmpty()) {
      return words.say("finding.is", label, value);
    }
    // What the limit is, where it is another entry.
    boolean isNamed = !deciding.limitName().isEmpty() && !(fits && !deciding.beside().isEmpty());
    String limit = isNamed ? bare + " (" + deciding.limitName() + ")" : bare;
    if (!(margin > 0) || Double.isInfinite(margin)) {
      String key =
          margin == 0
              ? (fits ? "finding.fits.at" : "finding.at")
              : (fits ? "finding.fits" : "finding.is.not");
      return words.say(key, label, value, limit, "", rest(deciding));
    }
    MissedBy missed = MissedBy.of(unit == null, deciding.value() < deciding.limit());
    boolean isAhead = unit == null && deciding.value() > deciding.limit();
    if (unit != null && fits && isOfRange(deciding) && isExactValue(deciding)) {
      // Of a range that others leave, its end on this side is what would do.
      double end = deciding.value() + (deciding.value() < deciding.limit() ? least : -least);
      String by = words.say("amount.at.least", amounts.difference(least, unit));
      return words.say(
          missed.key(deciding.isStrict(), fits),
          label,
          value,
          print(end, unit, /* isTidy= */ true),
          least == margin ? amounts.difference(least, unit) : by,
          rest(deciding));
    }
    String by =
        unit == null
            ? words.days(Math.round(least), Math.round(margin))
            : isExact(deciding) && least == margin
                ? amounts.apart(deciding.value(), isWorked, deciding.limit(), isTidy, unit)
                : isBeyond(deciding) || isDownToNothing(deciding)
                    ? words.say("amount.at.least", amounts.difference(least, unit))
                    : amounts.difference(least, margin, unit);
    if (isAboveGround(deciding)) {
      return words.say(
          "finding.higher", label, up(deciding.value(), unit), up(deciding.limit(), unit), by);
    }
    if (isAhead && deciding.limitName().equals(style.speech().phrase("as.of"))) {
      return words.say("finding.ahead", label, value, bare, by);
    }
    return words.say(
        missed.key(deciding.isStrict(), fits), label, value, limit, by, rest(deciding));
  }

  /** What the form has reaches up without end, and all of it lies above the limit. */
  private static boolean isBeyond(Deciding deciding) {
    return deciding.unit() != null
        && Double.isNaN(deciding.value())
        && Double.isFinite(deciding.limit())
        && deciding.leastMargin() < 0
        && deciding.subject().isEmpty()
        && isNeverBelowNothing(deciding);
  }

  /** What the form has reaches down to nothing, since it cannot be less: nobody says how far. */
  private static boolean isDownToNothing(Deciding deciding) {
    return !deciding.valueText().isEmpty()
        && deciding.value() <= 0
        && deciding.value() < deciding.limit()
        && deciding.subject().isEmpty()
        && isNeverBelowNothing(deciding);
  }

  private static boolean isNeverBelowNothing(Deciding deciding) {
    @Nullable Entry entry = Catalogue.standard().find(deciding.entry());
    return entry != null && !entry.mayBeNegative();
  }

  private static boolean isOfRange(Deciding deciding) {
    return !deciding.limitText().isEmpty();
  }

  private static boolean isExactValue(Deciding deciding) {
    return deciding.valueText().isEmpty() && !Double.isNaN(deciding.value());
  }

  /** A level of a flowing well: a depth below nothing tells nobody where the water stands. */
  private static boolean isAboveGround(Deciding deciding) {
    return deciding.entry().startsWith("water.")
        && deciding.entry().endsWith("_level")
        && deciding.subject().isEmpty()
        && isExact(deciding)
        && deciding.value() < deciding.limit()
        && deciding.limit() <= 0;
  }

  private String up(double value, @Nullable Unit unit) {
    return words.say("amount.up", print(-value, unit, true));
  }

  private static boolean isExact(Deciding deciding) {
    return deciding.valueText().isEmpty()
        && deciding.limitText().isEmpty()
        && !Double.isNaN(deciding.limit());
  }

  /** True if what is worked out still differs from its limit where both are rounded for people. */
  private boolean isApart(Deciding deciding, @Nullable Unit unit) {
    return unit != null
        && !amounts.tidy(deciding.value(), unit).equals(amounts.tidy(deciding.limit(), unit));
  }

  private String print(double value, @Nullable Unit unit, boolean isTidy) {
    if (unit == null) {
      return amounts.day(value);
    }
    return isTidy ? amounts.tidy(value, unit) : amounts.amount(value, unit);
  }
}
