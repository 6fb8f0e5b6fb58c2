package org.wellcurb.judgement;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.record.Entry;

/** What is needed to judge one rule. */
public final class RuleProgram {
  private final @Nullable Formula when;
  private final List<DatedText> texts;
  private final JudgedBy judgedBy;
  private final boolean omission;
  private final boolean dated;

  /**
   * @param when when it applies; null if always
   * @param texts its texts with the days on which they are in force; one text without days where
   *     the rule is not dated
   * @param judgedBy which day decides the text
   * @param omission true for a rule whose shortfall is an omission (a repair makes none)
   */
  public RuleProgram(
      @Nullable Formula when, List<DatedText> texts, JudgedBy judgedBy, boolean omission) {
    if (texts.isEmpty()) {
      throw new IllegalArgumentException("a rule without a text");
    }
    this.when = when;
    this.texts = texts.stream().sorted(Comparator.comparingDouble(DatedText::firstDay)).toList();
    this.judgedBy = judgedBy;
    this.omission = omission;
    DatedText first = this.texts.get(0);
    dated =
        texts.size() > 1
            || first.firstDay() != Double.NEGATIVE_INFINITY
            || first.lastDay() != Double.POSITIVE_INFINITY;
  }

  /** When it applies; null if always. */
  public @Nullable Formula when() {
    return when;
  }

  /** Its texts, the earliest first. */
  public List<DatedText> texts() {
    return texts;
  }

  /** Which day decides the text. */
  public JudgedBy judgedBy() {
    return judgedBy;
  }

  /** The same rule with another day that decides. */
  public RuleProgram by(JudgedBy day) {
    return day.equals(judgedBy) ? this : new RuleProgram(when, texts, day, omission);
  }

  /** True for a rule whose shortfall is an omission; a repair makes none. */
  public boolean omission() {
    return omission;
  }

  /** True if its texts hold on some days only. */
  public boolean isDated() {
    return dated;
  }

  /** Whether it may judge one record otherwise on another as-of date. */
  public boolean mayHangOnAsOf() {
    return isDated()
        || readsAsOf(when)
        || texts.stream().anyMatch(text -> readsAsOf(text.when()) || readsAsOf(text.require()));
  }

  private static boolean readsAsOf(@Nullable Formula formula) {
    return formula != null && formula.readsAsOf();
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
