package org.wellcurb.report;

/**
 * An entry worth asking for over the whole batch.
 *
 * @param entry key of the entry
 * @param outcomes how many outcomes that cannot be told name it
 * @param records of how many records
 */
public record AskLine(String entry, long outcomes, long records) {}
