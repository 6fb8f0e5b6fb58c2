package org.wellcurb.judgement;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;

/**
 * One text of a rule and the days on which it is in force, both included.
 *
 * @param from first day; null where it was always in force
 * @param until last day; null where it still is
 * @param when when it applies beyond the rule's own condition; null if always
 * @param require what it requires; null for a rule that only a person can judge
 */
public record DatedText(
    @Nullable LocalDate from,
    @Nullable LocalDate until,
    @Nullable Formula when,
    @Nullable Formula require) {

  /** Which movable datums its formulas read, as bits by ordinal of the datum. */
  public int datums() {
    return RuleProgram.datums(when) | RuleProgram.datums(require);
  }

  public double firstDay() {
    return from == null ? Double.NEGATIVE_INFINITY : from.toEpochDay();
  }

  public double lastDay() {
    return until == null ? Double.POSITIVE_INFINITY : until.toEpochDay();
  }
}
