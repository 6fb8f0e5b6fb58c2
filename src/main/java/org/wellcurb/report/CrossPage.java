package org.wellcurb.report;

import java.util.List;

/**
 * What only the whole batch shows, as its template needs it.
 *
 * @param parts one for each check that found something, in the order of the page
 * @param tables rates by group
 */
public record CrossPage(List<Part> parts, List<Table> tables) {
  /**
   * What one check found.
   *
   * @param title what was looked for
   * @param lead what it can say, and what it cannot
   * @param more how exactly it was looked; empty where the lead says it all
   * @param sentences what was found
   * @param cut what was cut, as a sentence; empty if nothing was
   */
  public record Part(String title, String lead, String more, List<String> sentences, String cut) {}

  /** Rates by one kind of group. */
  public record Table(String id, String title, String column, List<Row> rows) {}

  /**
   * The rate of one group.
   *
   * @param name the group
   * @param bar its share as a bar, as SVG
   * @param rate the share in words, with its interval
   * @param said how it stands to the whole batch
   */
  public record Row(String name, String bar, String rate, String said) {}
}
