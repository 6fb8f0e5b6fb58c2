package org.wellcurb.report;

/** {@code since.csv}: what became of each finding since an earlier report. */
public final class SinceCsv {
  public static final String HEADER = "record_id,file,row,pack,rule,kind,title,licence,change\n";

  private SinceCsv() {}

  /** A finding, as {@code findings.csv} has it. */
  public record Line(
      String recordId,
      String file,
      String row,
      String pack,
      String rule,
      String kind,
      String title,
      String entry) {}

  /** A finding and what became of it. */
  public record Changed(Line line, String licence, SinceCounts.Change change) {}

  /** Adds one line. */
  public static void put(ByteText out, Line line, String licence, SinceCounts.Change change) {
    new CsvLine(out)
        .text(line.recordId())
        .text(line.file())
        .text(line.row())
        .text(line.pack())
        .text(line.rule())
        .text(line.kind())
        .text(line.title())
        .text(licence)
        .text(change.label())
        .end();
  }
}
