package org.wellcurb.report;

import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Wanted;
import org.wellcurb.quantity.Unit;
import org.wellcurb.report.words.Amounts;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.screening.Finding;

/**
 * What is wrong, in one plain sentence: the entry, what it has, what was asked for, by how much.
 */
public final class FindingSentence {
  private final Words words;
  private final Amounts amounts;

  public FindingSentence(PageStyle style) {
    words = Words.in(style.language());
    amounts = new Amounts(words, style.units());
  }

  /** The sentence of a finding. */
  public String of(Finding finding) {
    Deciding deciding = finding.deciding();
    if (deciding.entry().isEmpty() && deciding.subject().isEmpty()) {
      return words.say("finding.plain", new RuleWords(words).title(finding.rule()));
    }
    String label = capital(subject(deciding));
    @Nullable Unit unit = deciding.unit();
    if (deciding.isDate() || unit != null) {
      return measured(deciding, label, unit);
    }
    String value = deciding.valueText().isEmpty() ? deciding.written() : deciding.valueText();
    if (value.isEmpty()) {
      return words.say("finding.blank", label);
    }
    return deciding.limitText().isEmpty()
        ? words.say("finding.is", label, value)
        : words.say(
            finding.rule().kind() == FindingKind.DISCREPANCY ? "finding.fits" : "finding.is.not",
            label,
            word(value),
            wanted(deciding.limitText()));
  }

  private String wanted(String wanted) {
    String all =
        String.join(words.say("wanted.or"), Wanted.words(wanted).stream().map(this::word).toList());
    return Wanted.isNone(wanted) ? words.say("wanted.but", all) : all;
  }

  /** A word of a form or of a rule, as pages say it. */
  private String word(String word) {
    return switch (word.strip().toLowerCase(java.util.Locale.ROOT)) {
      case Wanted.GIVEN -> words.say("wanted.given");
      case Wanted.NOTHING -> words.say("wanted.nothing");
      case "yes" -> words.say("yes");
      case "no" -> words.say("no");
      default -> words.choice(word);
    };
  }

  /** What was compared: the entry, or what was worked out from it. */
  private String subject(Deciding deciding) {
    return deciding.subject().isEmpty() ? words.entry(deciding.entry()) : deciding.subject();
  }

  private static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
  }

  private String measured(Deciding deciding, String label, @Nullable Unit unit) {
    String value =
        deciding.valueText().isEmpty() ? print(deciding.value(), unit) : deciding.valueText();
    if (Double.isNaN(deciding.value()) && deciding.valueText().isEmpty()) {
      return words.say("finding.blank", label);
    }
    String limit =
        Double.isNaN(deciding.limit()) ? deciding.limitText() : print(deciding.limit(), unit);
    if (limit.isEmpty()) {
      return words.say("finding.is", label, value);
    }
    double margin = Math.abs(deciding.margin());
    if (!(margin > 0) || Double.isInfinite(margin)) {
      String key = margin == 0 ? "finding.at" : "finding.is.not";
      return words.say(key, label, value, limit);
    }
    boolean below = deciding.value() < deciding.limit();
    if (unit == null) {
      String days = words.count("days", Math.round(margin));
      return words.say(below ? "finding.early" : "finding.late", label, value, limit, days);
    }
    String by = amounts.difference(margin, unit);
    return words.say(below ? "finding.below" : "finding.above", label, value, limit, by);
  }

  private String print(double value, @Nullable Unit unit) {
    return unit == null ? amounts.day(value) : amounts.amount(value, unit);
  }
}
