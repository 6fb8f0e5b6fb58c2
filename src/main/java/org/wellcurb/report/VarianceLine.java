package org.wellcurb.report;

import java.util.Locale;
import org.wellcurb.screening.VarianceUse.Does;

/**
 * A rule waived by the authority.
 *
 * @param rule id of the rule, as the record has it
 * @param title what the rule asks; empty where the pack has no such rule
 * @param reference the authority's reference; may be empty
 * @param why key of the words that say why it waives nothing; empty where it waives
 * @param near id of the rule that was probably meant; empty where none is near
 * @param nearTitle what that rule asks
 */
public record VarianceLine(
    String rule, String title, String reference, String why, String near, String nearTitle) {

  /** The key of the words that say why a variance waives nothing; empty where it waives. */
  static String why(Does does) {
    return does == Does.WAIVES ? "" : "variance." + does.name().toLowerCase(Locale.ROOT);
  }
}
