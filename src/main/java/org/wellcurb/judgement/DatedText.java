package org.wellcurb.judgement;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;

/** One text of a rule and the days on which it is in force, both included. */
public final class DatedText {
  private final @Nullable LocalDate from;
  private final @Nullable LocalDate until;
  private final @Nullable Formula when;
  private final @Nullable Formula require;
  private final @Nullable LocalDate knownFrom;
  // Worked out once: a bulk run asks for them with every record.
  private final double firstDay;
  private final double lastDay;
  private final int datums;

  /**
   * @param from first day; null where it was always in force
   * @param until last day; null where it still is
   * @param when when it applies beyond the rule's own condition; null if always
   * @param require what it requires; null for a rule that only a person can judge
   */
  public DatedText(
      @Nullable LocalDate from,
      @Nullable LocalDate until,
      @Nullable Formula when,
      @Nullable Formula require) {
    this(from, until, when, require, null);
  }

  /**
   * @param knownFrom the edition in which it was read, where the day since when it has been in
   *     force was not; null where that day is known, or where there is none
   */
  public DatedText(
      @Nullable LocalDate from,
      @Nullable LocalDate until,
      @Nullable Formula when,
      @Nullable Formula require,
      @Nullable LocalDate knownFrom) {
    this.from = from;
    this.until = until;
    this.when = when;
    this.require = require;
    this.knownFrom = knownFrom;
    firstDay = from == null ? Double.NEGATIVE_INFINITY : from.toEpochDay();
    lastDay = until == null ? Double.POSITIVE_INFINITY : until.toEpochDay();
    datums = RuleProgram.datums(when) | RuleProgram.datums(require);
  }

  /** First day; null where it was always in force. */
  public @Nullable LocalDate from() {
    return from;
  }

  /** Last day; null where it still is. */
  public @Nullable LocalDate until() {
    return until;
  }

  /** When it applies beyond the rule's own condition; null if always. */
  public @Nullable Formula when() {
    return when;
  }

  /** What it requires; null for a rule that only a person can judge. */
  public @Nullable Formula require() {
    return require;
  }

  /**
   * The edition in which it was read, where the day since when it has been in force was not: an
   * older well may be held to an older text. Null where that day is known, or where there is none.
   */
  public @Nullable LocalDate knownFrom() {
    return knownFrom;
  }

  /** Which movable datums its formulas read, as bits by ordinal of the datum. */
  public int datums() {
    return datums;
  }

  public double firstDay() {
    return firstDay;
  }

  public double lastDay() {
    return lastDay;
  }
}
