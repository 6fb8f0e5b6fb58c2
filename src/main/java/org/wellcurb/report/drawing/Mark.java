package org.wellcurb.report.drawing;

/**
 * The sign of a finding in a drawing.
 *
 * @param letter the letter that names the finding on the page
 * @param anchor the finding's place on the page
 * @param title what the rule asks
 * @param entry key of the entry that it is about
 */
public record Mark(String letter, String anchor, String title, String entry) {}
