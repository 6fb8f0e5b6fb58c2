package org.wellcurb.judgement;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.record.Datum;

/**
 * What is needed to judge one rule.
 *
 * @param when when it applies; null if always
 * @param texts its texts with the days on which they are in force; one text without days where the
 *     rule is not dated
 * @param judgedBy which day decides the text
 * @param omission true for a rule whose shortfall is an omission (a repair makes none)
 */
public record RuleProgram(
    @Nullable Formula when, List<DatedText> texts, JudgedBy judgedBy, boolean omission) {
  public RuleProgram {
    if (texts.isEmpty()) {
      throw new IllegalArgumentException("a rule without a text");
    }
    texts = texts.stream().sorted(Comparator.comparingDouble(DatedText::firstDay)).toList();
  }

  /** True if its texts hold on some days only. */
  public boolean isDated() {
    return texts.size() > 1
        || texts.get(0).firstDay() != Double.NEGATIVE_INFINITY
        || texts.get(0).lastDay() != Double.POSITIVE_INFINITY;
  }

  /** Which movable datums its own condition reads, as bits by ordinal of the datum. */
  int datums() {
    return datums(when);
  }

  static int datums(@Nullable Formula formula) {
    int bits = 0;
    if (formula != null) {
      for (Datum datum : Datum.values()) {
        bits |= formula.reads(datum) ? 1 << datum.ordinal() : 0;
      }
    }
    return bits;
  }
}
