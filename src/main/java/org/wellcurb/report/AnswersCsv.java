package org.wellcurb.report;

import org.wellcurb.screening.Finding;

/**
 * The table that goes with a correction notice, to be filled in and returned: one line for each of
 * its points. What is filled in under {@code corrected} takes the place of what the record has for
 * that entry when the records are screened again with the answers.
 */
public final class AnswersCsv {
  public static final String RECORD = "record_id";
  public static final String FILE = "file";
  public static final String ROW = "row";
  public static final String LICENCE = "licence";
  public static final String RULE = "rule";
  public static final String ENTRY = "entry";
  public static final String CORRECTED = "corrected";
  public static final String EXPLANATION = "explanation";

  public static final String HEADER =
      "point,record_id,file,row,licence,rule,asked,entry,written,corrected,explanation\n";

  private AnswersCsv() {}

  /**
   * Adds one line, of a notice to this licence, with nothing under {@code corrected} and {@code
   * explanation}.
   */
  public static void put(ByteText out, int point, String licence, Finding finding) {
    new CsvLine(out)
        .whole(point)
        .text(finding.recordId())
        .text(finding.file())
        .whole(finding.row())
        .text(licence)
        .text(finding.rule().id())
        .text(finding.rule().title())
        .text(finding.deciding().entry())
        .text(finding.deciding().written())
        .nothing()
        .nothing()
        .end();
  }
}
