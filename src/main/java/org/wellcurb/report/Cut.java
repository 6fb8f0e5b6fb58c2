package org.wellcurb.report;

/**
 * A list that a cap cut short, said where it cuts.
 *
 * @param cap which cap
 * @param shown how many are shown
 * @param total how many there are
 */
public record Cut(Cap cap, long shown, long total) {}
