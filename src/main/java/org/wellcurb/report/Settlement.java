package org.wellcurb.report;

import java.time.LocalDate;

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
 */
public record Settlement(
    long line,
    String recordId,
    String rule,
    String decision,
    String by,
    LocalDate date,
    String note) {
  /** What was decided, by whom and when, in one cell of a table. */
  public String told() {
    return decision + " (" + by + ", " + date + ")";
  }
}
