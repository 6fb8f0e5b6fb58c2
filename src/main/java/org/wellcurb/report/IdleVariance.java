package org.wellcurb.report;

import org.wellcurb.screening.VarianceUse.Does;

/**
 * A variance that waives nothing, as the batch page names it.
 *
 * @param record number of the record
 * @param rule the rule that it names, as the record has it
 * @param reference the authority's reference; may be empty
 * @param does why it waives nothing
 * @param near id of the rule that was probably meant; empty where none is near
 */
public record IdleVariance(String record, String rule, String reference, Does does, String near) {

  /** The key of the words that say why. */
  public String why() {
    return VarianceLine.why(does);
  }
}
