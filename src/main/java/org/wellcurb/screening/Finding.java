package org.wellcurb.screening;

import org.wellcurb.judgement.Deciding;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.Source;

/**
 * A rule that a record falls short of.
 *
 * @param recordId the record's number
 * @param file input it came from
 * @param row row in that input
 * @param pack id of the pack that judged it
 * @param rule the rule
 * @param deciding the comparison that decided, or {@link #NOTHING} where none did
 * @param possibleReading what may have been meant, such as {@code 61 m written in a column of
 *     feet}; empty if nothing is offered
 * @param text place among the rule's texts of the one that judged, from 0
 * @param olderDay the first day that may decide which text binds, where it lies before the edition
 *     in which this one was read and its first day was not; minus infinity where no day is given;
 *     NaN where neither is so
 */
public record Finding(
    String recordId,
    String file,
    long row,
    String pack,
    Rule rule,
    Deciding deciding,
    String possibleReading,
    int text,
    double olderDay) {

  /** Stands where no comparison decided. */
  public static final Deciding NOTHING =
      new Deciding("", "", Double.NaN, null, Double.NaN, Double.NaN, "", "", false);

  /** As a share of the limit; of dates in days: so near that rounding or a slip may be all. */
  private static final double HAIR = 0.02;

  private static final double HAIR_IN_DAYS = 1;

  /** Where the text that judged is written. */
  public Source source() {
    return rule.source(text);
  }

  /** Whether the value is within a hair of its limit: 2 % of it, or a day. */
  public boolean isNear() {
    double hair = deciding.isDate() ? HAIR_IN_DAYS : HAIR * Math.abs(deciding.limit());
    return Math.abs(deciding.margin()) <= hair;
  }
}
