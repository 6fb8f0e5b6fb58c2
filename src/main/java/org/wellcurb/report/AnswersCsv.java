package org.wellcurb.report;

import org.wellcurb.screening.Finding;

/**
 * The table that goes with a correction notice, to be filled in and returned: one line for each of
 * its points. What is filled in under {@code corrected} takes the place of what the record has for
 * that entry when the records are screened again with the answers. The result of a sample is taken
 * with the day of that sample and its laboratory only.
 */
public final class AnswersCsv {
  public static final String RECORD = "record_id";
  public static final String FILE = "file";
  public static final String ROW = "row";
  public static final String LICENCE = "licence";
  public static final String RULE = "rule";
  public static final String ENTRY = "entry";
  public static final String WRITTEN = "written";
  public static final String CORRECTED = "corrected";
  public static final String SAMPLED = "sampled";
  public static final String LABORATORY = "laboratory";
  public static final String EXPLANATION = "explanation";

  public static final String HEADER =
      "point,record_id,file,row,licence,rule,asked,entry,written,corrected,sampled,laboratory,"
          + "explanation\n";

  /** What stands where nothing is to be filled in. */
  private static final String NOT_ASKED = "n/a";

  private AnswersCsv() {}

  /** Whether an entry holds what a laboratory found in a sample of the water. */
  public static boolean isResult(String entry) {
    return entry.startsWith("sample.") && !entry.equals("sample.tap");
  }

  /**
   * Adds one line, of a notice to this licence, with nothing under what is to be filled in; day and
   * laboratory of a sample are asked for its results only.
   */
  public static void put(ByteText out, int point, String licence, Finding finding) {
    String sample = isResult(finding.deciding().entry()) ? "" : NOT_ASKED;
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
        .text(sample)
        .text(sample)
        .nothing()
        .end();
  }
}
