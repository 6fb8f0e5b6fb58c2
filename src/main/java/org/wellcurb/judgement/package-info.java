/**
 * One compiled rule and one record give one outcome: when, dates in force, datum, duals, slack,
 * variances, margin. May import formula, workings, record, quantity.
 */
@NullMarked
package org.wellcurb.judgement;

import org.jspecify.annotations.NullMarked;
