package org.wellcurb.report;

import java.util.List;

/**
 * A rule that differs between two packs, as the page of a rehearsal prints it.
 *
 * @param id its id
 * @param title what it asks
 * @param judged how many records it judges, and how many change, as a sentence
 * @param older that it reaches back to older wells, as a sentence; empty where it does not
 * @param lines what differs, each with what stands in the pack in use and in the pack tried
 */
public record DifferencePrint(
    String id, String title, String judged, String older, List<Line> lines) {

  /**
   * One thing that differs.
   *
   * @param what what it is
   * @param before what stands in the pack in use, in parts; empty where nothing does
   * @param after what stands in the pack tried, in parts; empty where nothing does
   */
  public record Line(String what, List<WordChange> before, List<WordChange> after) {
    static Line of(String what, String before, String after) {
      List<List<WordChange>> parts = WordChange.between(before, after);
      return new Line(what, parts.get(0), parts.get(1));
    }
  }
}
