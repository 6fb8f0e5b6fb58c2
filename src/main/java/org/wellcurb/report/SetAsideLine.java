package org.wellcurb.report;

/**
 * A row that could not be read as a record.
 *
 * @param file input it stands in
 * @param row its row there; 0 where the whole file was set aside
 * @param column the column, by name or number; empty where it concerns the row
 * @param reason why, as a sentence
 * @param text the beginning of what stands there
 */
public record SetAsideLine(String file, long row, String column, String reason, String text) {}
