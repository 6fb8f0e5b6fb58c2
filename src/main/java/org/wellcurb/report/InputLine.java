package org.wellcurb.report;

import java.util.List;

/**
 * How one input was read.
 *
 * @param file path relative to the argument given
 * @param format how it was read, such as {@code CSV, semicolon, Windows-1252}
 * @param sha256 hash of its bytes, in lower-case hexadecimal
 * @param rowsRead rows met, those set aside included
 * @param screened rows screened
 * @param setAside rows set aside
 * @param joined rows that went into the record of another row
 * @param rowsCounted rows whose cells the counts of each column add up to: those that were screened
 *     or joined, and those that no pack judges
 * @param isCut true if it could not be read to its end, or not at all
 * @param notes whole sentences: columns that no entry names with the nearest key, two headers for
 *     one entry, what was decided about encoding
 * @param columns what was understood of each column, and what became of its cells
 */
public record InputLine(
    String file,
    String format,
    String sha256,
    long rowsRead,
    long screened,
    long setAside,
    long joined,
    long rowsCounted,
    boolean isCut,
    List<String> notes,
    List<ColumnLine> columns) {

  /** Fewer rows are a matter of their own. */
  private static final long FEW = 3;

  public InputLine {
    notes = List.copyOf(notes);
    columns = List.copyOf(columns);
  }

  /** True where most of its rows were set aside: something is the matter with the whole file. */
  public boolean isMostlySetAside() {
    return setAside >= FEW && setAside * 2 >= rowsRead + joined;
  }

  /** The file, and how many of its rows were set aside. */
  public String lost() {
    return file + " (" + setAside + "/" + (rowsRead + joined) + ")";
  }
}
