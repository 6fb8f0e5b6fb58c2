package org.wellcurb.report;

/**
 * What a licence said of a finding in the table that came back with its notice.
 *
 * @param line line of the table
 * @param recordId number of the record
 * @param file input that it stood in; empty if not said
 * @param row its row there; empty if not said
 * @param licence licence that the table was sent to; empty if not said
 * @param rule id of the rule
 * @param entry entry that it is about; may be empty
 * @param corrected what was filled in as a correction; may be empty
 * @param text what was said
 * @param written what the record had; empty if not said, or if a correction took its place
 * @param isHere whether its record is in this batch and names that licence
 */
public record Explained(
    long line,
    String recordId,
    String file,
    String row,
    String licence,
    String rule,
    String entry,
    String corrected,
    String text,
    String written,
    boolean isHere) {
  /**
   * Header of {@code explained.csv}, a draft of a table for {@code --settled}: whoever looked fills
   * in what was decided, by whom and when. Lines without settle nothing.
   */
  public static final String HEADER =
      "record_id,rule,decision,by,date,note,file,row,licence,corrected,written,in_this_batch\n";

  /** The same, with whether its record is here. */
  public Explained met(boolean isMet) {
    return new Explained(
        line, recordId, file, row, licence, rule, entry, corrected, text, written, isMet);
  }

  /** Adds its line to that table. */
  public void put(ByteText out) {
    new CsvLine(out)
        .text(recordId)
        .text(rule)
        .nothing()
        .nothing()
        .nothing()
        .text(text)
        .text(file)
        .text(row)
        .text(licence)
        .text(corrected)
        .text(written)
        .word(isHere ? "yes" : "no")
        .end();
  }
}
