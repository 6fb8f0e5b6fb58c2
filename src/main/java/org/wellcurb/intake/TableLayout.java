package org.wellcurb.intake;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a table is laid out.
 *
 * @param sheet the sheet of a workbook that it is; null for any other table
 * @param encoding how its characters are written
 * @param delimiter what stands between cells
 * @param headerLine the physical line of the header, from 1; 0 if it has none
 * @param preamble the lines before it, blank ones too, passed over
 * @param header the header as it stands, in UTF-8; empty if there is none
 * @param frame what must stand before rows so that they can be read again in the same way
 * @param moreColumns how many of the columns have no name, since rows go on beyond the header
 * @param columns what was understood of each column
 * @param notes what else is to be said, such as columns that the header map names and the file
 *     lacks
 */
public record TableLayout(
    @Nullable String sheet,
    TextEncoding encoding,
    char delimiter,
    long headerLine,
    List<String> preamble,
    String header,
    String frame,
    int moreColumns,
    List<Column> columns,
    List<String> notes) {

  public TableLayout {
    preamble = List.copyOf(preamble);
    columns = List.copyOf(columns);
    notes = List.copyOf(notes);
  }

  /** What it is, in words: {@code CSV, comma, UTF-8}; {@code workbook, sheet Wells}. */
  public String label() {
    return sheet == null
        ? "CSV, " + delimiterLabel() + ", " + encoding.label()
        : "workbook, sheet " + sheet;
  }

  private String delimiterLabel() {
    return switch (delimiter) {
      case ',' -> "comma";
      case ';' -> "semicolon";
      case '\t' -> "tab";
      default -> "bar";
    };
  }
}
