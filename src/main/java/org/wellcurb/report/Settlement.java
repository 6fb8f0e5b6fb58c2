package org.wellcurb.report;

import java.time.LocalDate;
import org.wellcurb.screening.Finding;

/**
 * A finding that someone has looked at.
 *
 * @param line its line in the file
 * @param recordId number of the record
 * @param rule id of the rule
 * @param decision what was decided
 * @param by who decided
 * @param date when
 * @param note anything else; may be empty
 * @param written what the record said when it was decided; empty if not said
 */
public record Settlement(
    long line,
    String recordId,
    String rule,
    String decision,
    String by,
    LocalDate date,
    String note,
    String written) {
  /** What was decided, by whom and when, in one cell of a table. */
  public String told() {
    return decision + " (" + by + ", " + date + ")";
  }

  /**
   * Whether the record says something else now than when it was decided, as far as that is told.
   */
  public boolean isOfAnother(Finding finding) {
    return !written.isEmpty() && !written.equals(finding.deciding().written().strip());
  }
}
