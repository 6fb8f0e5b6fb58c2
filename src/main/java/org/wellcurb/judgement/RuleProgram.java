package org.wellcurb.judgement;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.record.Entry;

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
    return formula == null ? 0 : formula.datums();
  }

  /** Every entry that its outcome may depend on, but for what depths are measured from. */
  public Set<Entry> reads() {
    Set<Entry> reads = new LinkedHashSet<>();
    add(when, reads);
    for (DatedText text : texts) {
      add(text.when(), reads);
      add(text.require(), reads);
    }
    if (isDated()) {
      days(judgedBy, reads);
    }
    return reads;
  }

  private static void add(@Nullable Formula formula, Set<Entry> reads) {
    if (formula != null) {
      reads.addAll(formula.reads());
    }
  }

  private static void days(JudgedBy day, Set<Entry> reads) {
    if (day instanceof JudgedBy.Entry of) {
      reads.add(of.entry());
    } else if (day instanceof JudgedBy.LaterOf of) {
      of.days().forEach(one -> days(one, reads));
    } else if (day instanceof JudgedBy.LessStrictOf of) {
      of.days().forEach(one -> days(one, reads));
    }
  }
}
