package org.wellcurb.report;

/**
 * A rule that cannot be told of some records, as the batch page shows it.
 *
 * @param title what it asks
 * @param pack id of its pack
 * @param records of how many records it cannot be told
 * @param entries what would tell it, those of most records first
 */
public record RuleAskLine(String title, String pack, long records, String entries) {}
