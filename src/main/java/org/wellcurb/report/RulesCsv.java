package org.wellcurb.report;

import java.util.List;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Tally;

/** {@code rules.csv}: every rule that ran, with exact counts of its outcomes. */
public final class RulesCsv {
  public static final String HEADER =
      "pack,rule,kind,title,because,remedy,source,basis,meets,falls_short,cannot_tell,"
          + "not_applicable,waived\n";

  private RulesCsv() {}

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
          .text(rule.source().line())
          .word(rule.source().basis().label());
      for (Outcome outcome : Outcome.values()) {
        line.whole(tally.count(i, outcome));
      }
      line.end();
    }
  }
}
