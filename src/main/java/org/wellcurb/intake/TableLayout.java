package org.wellcurb.intake;

import java.util.List;

/**
 * How a table is laid out.
 *
 * @param encoding how its characters are written
 * @param delimiter what stands between cells
 * @param headerLine the physical line of the header, from 1
 * @param preamble the lines before it, passed over
 * @param header the header row as it stands, in UTF-8
 * @param columns what was understood of each column
 */
public record TableLayout(
    TextEncoding encoding,
    char delimiter,
    long headerLine,
    List<String> preamble,
    String header,
    List<Column> columns) {

  public TableLayout {
    preamble = List.copyOf(preamble);
    columns = List.copyOf(columns);
  }

  /** The delimiter in words. */
  public String delimiterLabel() {
    return switch (delimiter) {
      case ',' -> "comma";
      case ';' -> "semicolon";
      case '\t' -> "tab";
      default -> "bar";
    };
  }
}
