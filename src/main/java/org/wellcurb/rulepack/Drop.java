package org.wellcurb.rulepack;

/**
 * A rule of a pack built on that does not hold here.
 *
 * @param rule id of the rule dropped
 * @param because why
 * @param pack id of the pack that drops it
 */
public record Drop(String rule, String because, String pack) {}
