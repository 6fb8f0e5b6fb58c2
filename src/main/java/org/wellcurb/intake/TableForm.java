package org.wellcurb.intake;

import org.jspecify.annotations.Nullable;

/**
 * What a header map says of the file itself; what it leaves out is found.
 *
 * @param delimiter what parts the cells; 0 to find it
 * @param encoding how characters are written; null to find it
 * @param headerLine the line of the header, from 1; 0 to find it; -1 if there is none
 * @param sheet the sheet of a workbook; empty for all that have a header
 */
public record TableForm(
    char delimiter, @Nullable TextEncoding encoding, int headerLine, String sheet) {
  /** Everything is found. */
  static final TableForm FOUND = new TableForm((char) 0, null, 0, "");

  boolean hasNoHeader() {
    return headerLine < 0;
  }
}
