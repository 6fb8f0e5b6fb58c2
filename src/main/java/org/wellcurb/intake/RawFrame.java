package org.wellcurb.intake;

/**
 * What stands around raw rows in a file of rows set aside, so that it can be corrected and read
 * again. It is written in UTF-8.
 *
 * @param file name of that file, relative, with {@code /}
 * @param before what comes first: the header of a table
 * @param between what parts two rows
 * @param after what comes last
 */
public record RawFrame(String file, String before, String between, String after) {}
