package org.wellcurb.intake;

import org.jspecify.annotations.Nullable;

/**
 * What a header map says of the file itself; what it leaves out is found.
 *
 * @param delimiter what parts the cells; 0 to find it
 * @param encoding how characters are written; null to find it
 * @param headerLine the line of the header, from 1; 0 to find it; -1 if there is none
 * @param sheet the sheet of a workbook; empty for all that have a header
 * @param moreColumns how many columns rows have beyond those that the header names
 */
public record TableForm(
    char delimiter,
    @Nullable TextEncoding encoding,
    int headerLine,
    String sheet,
    int moreColumns) {
  /** Everything is found. */
  static final TableForm FOUND = new TableForm((char) 0, null, 0, "", 0);

  /** Nothing is known but that rows have so many columns more than the header. */
  static TableForm withMore(int columns) {
    return new TableForm((char) 0, null, 0, "", columns);
  }

  boolean hasNoHeader() {
    return headerLine < 0;
  }
}
