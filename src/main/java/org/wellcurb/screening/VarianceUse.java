package org.wellcurb.screening;

import org.wellcurb.record.Variance;

/**
 * A variance that a record names, and what it does there.
 *
 * @param variance the variance
 * @param does what it does
 * @param near id of the rule that was probably meant, where the pack has none of that name; empty
 *     where none is near
 */
public record VarianceUse(Variance variance, Does does, String near) {

  /** What a variance does. */
  public enum Does {
    WAIVES,
    /** The record meets the rule without it. */
    MET,
    /** The rule does not apply to the record. */
    NOT_APPLICABLE,
    /** The pack does not list the rule among those that a variance may waive. */
    NOT_ALLOWED,
    /** The pack that judges the record has no such rule. */
    NO_RULE
  }
}
