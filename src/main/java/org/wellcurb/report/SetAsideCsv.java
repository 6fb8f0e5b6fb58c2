package org.wellcurb.report;

/** {@code set-aside.csv}: one line for each row, or file, that could not be read as a record. */
public final class SetAsideCsv {
  public static final String HEADER = "file,row,column,reason,text\n";

  private SetAsideCsv() {}

  /**
   * Adds one line.
   *
   * @param row row in the file; 0 for a file set aside whole
   * @param column column or key that is wrong; empty if it is the row
   * @param text what stands there, cut to {@link Cap#QUOTED_LETTERS} letters
   */
  public static void put(
      ByteText out, String file, long row, String column, String reason, String text) {
    CsvLine line = new CsvLine(out);
    line.text(file);
    if (row > 0) {
      line.whole(row);
    } else {
      line.nothing();
    }
    line.text(column).text(reason).text(Cap.QUOTED_LETTERS.cut(text)).end();
  }
}
