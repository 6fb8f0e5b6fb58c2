package org.wellcurb.crosscheck;

/**
 * A record of the batch.
 *
 * @param file input it stands in
 * @param row row in that input
 * @param place its place among all records, from 0
 */
public record Seen(String file, long row, int place) {}
