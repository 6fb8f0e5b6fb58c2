package org.wellcurb.report;

import java.util.List;

/**
 * Something to do, first things first.
 *
 * @param text what to do, a whole sentence
 * @param findings the findings that it is about, in the order of the page; may be empty
 * @param isNow whether these are put right in this step: else it only names them
 * @param quoted words of the pack that it is about, as the pack has them
 * @param link a place on the page, such as {@code #records}; empty where there is none
 * @param records the records that it is about, each to be opened
 */
public record Step(
    String text,
    List<FindingView> findings,
    boolean isNow,
    List<String> quoted,
    String link,
    List<RecordLine> records) {
  public Step {
    findings = List.copyOf(findings);
    quoted = List.copyOf(quoted);
    records = List.copyOf(records);
  }

  /** A step that is about findings, or about a part of the page. */
  Step(String text, List<FindingView> findings, boolean isNow, List<String> quoted, String link) {
    this(text, findings, isNow, quoted, link, List.of());
  }

  /** A step that is about records. */
  static Step about(List<RecordLine> records, String text) {
    return new Step(text, List.of(), false, List.of(), "", records);
  }

  /** A step that is about no findings. */
  static Step of(String text) {
    return new Step(text, List.of(), false, List.of(), "");
  }

  /** A step that leads to a part of the page. */
  static Step to(String link, String text) {
    return new Step(text, List.of(), false, List.of(), link);
  }
}
