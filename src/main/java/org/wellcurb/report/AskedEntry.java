package org.wellcurb.report;

/**
 * An entry that a page asks for.
 *
 * @param key its key, by which the desk finds its field
 * @param label what pages call it
 */
public record AskedEntry(String key, String label) {}
