/**
 * Packs over records: outcomes, findings, mergeable tallies, possible readings. Pure: no files, no
 * threads. May import rulepack, judgement, formula, workings, record, quantity.
 */
@NullMarked
package org.wellcurb.screening;

import org.jspecify.annotations.NullMarked;
