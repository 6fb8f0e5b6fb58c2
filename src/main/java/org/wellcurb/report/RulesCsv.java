package org.wellcurb.report;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Tally;

/** {@code rules.csv}: every rule that ran, with exact counts of its outcomes. */
public final class RulesCsv {
  public static final String HEADER =
      "pack,rule,kind,title,because,remedy,source,basis,meets,falls_short,cannot_tell,"
          + "not_applicable,waived\n";

  private RulesCsv() {}

  /** Where the rule is written, and whether since when was read. */
  private static String source(Rule rule) {
    List<DatedText> texts = rule.program().texts();
    @Nullable LocalDate known = texts.get(texts.size() - 1).knownFrom();
    return known == null
        ? rule.source().line()
        : rule.source().line() + "; first day not read, known as of " + known;
  }

  /** Adds the lines of one pack. */
  public static void put(ByteText out, Tally tally) {
    List<Rule> rules = tally.pack().rules();
    CsvLine line = new CsvLine(out);
    for (int i = 0; i < rules.size(); i++) {
      Rule rule = rules.get(i);
      line.text(tally.pack().id())
          .text(rule.id())
          .word(rule.kind().label())
          .text(rule.title())
          .text(rule.because())
          .text(rule.remedy())
          .text(source(rule))
          .word(rule.source().basis().label());
      for (Outcome outcome : Outcome.values()) {
        line.whole(tally.count(i, outcome));
      }
      line.end();
    }
  }
}
