package org.wellcurb.record;

/**
 * A rule that the authority waived for this installation.
 *
 * @param rule id of the rule
 * @param reference what the authority's paper is called; may be empty
 */
public record Variance(String rule, String reference) {}
