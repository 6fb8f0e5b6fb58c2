package org.wellcurb.report;

import java.util.List;

/**
 * Something to do, first things first.
 *
 * @param text what to do, a whole sentence
 * @param findings the findings that it is about, for links; may be empty
 */
public record Step(String text, List<FindingView> findings) {
  public Step {
    findings = List.copyOf(findings);
  }
}
