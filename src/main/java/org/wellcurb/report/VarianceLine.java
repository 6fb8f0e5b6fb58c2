package org.wellcurb.report;

/**
 * A rule waived by the authority.
 *
 * @param rule id of the rule, as the record has it
 * @param title what the rule asks; empty where the pack has no such rule
 * @param reference the authority's reference; may be empty
 * @param used false where it waives nothing: the pack has no such rule, or it was met
 */
public record VarianceLine(String rule, String title, String reference, boolean used) {}
