package org.wellcurb.record;

/**
 * Something the source holds that no entry names: kept, and reported.
 *
 * @param name column or key
 * @param text what stands there
 */
public record Extra(String name, String text) {}
