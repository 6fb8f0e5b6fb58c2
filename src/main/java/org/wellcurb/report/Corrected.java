package org.wellcurb.report;

/**
 * An entry of a record that an answer corrected.
 *
 * @param line its line in the table of answers
 * @param recordId number of the record
 * @param entry key of the entry
 * @param from what was written; empty where nothing was
 * @param to what is taken for it now
 */
public record Corrected(long line, String recordId, String entry, String from, String to) {}
