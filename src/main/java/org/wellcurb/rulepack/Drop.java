package org.wellcurb.rulepack;

/**
 * A rule of a pack built on that does not hold here.
 *
 * @param rule id of the rule dropped
 * @param title what it asked; empty where none of the packs built on had it any more
 * @param because why
 * @param pack id of the pack that drops it
 */
public record Drop(String rule, String title, String because, String pack) {}
