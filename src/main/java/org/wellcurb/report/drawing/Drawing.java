package org.wellcurb.report.drawing;

import java.util.List;

/**
 * A drawing and what stands beside it.
 *
 * @param id its place on the page
 * @param title what it shows
 * @param svg the drawing itself, escaped
 * @param legend what its signs and numbers mean, of what is drawn and nothing else
 * @param words the same in words, for those who do not see it
 * @param marks the findings that it marks
 */
public record Drawing(
    String id, String title, String svg, List<Sign> legend, List<String> words, List<Mark> marks) {
  public Drawing {
    legend = List.copyOf(legend);
    words = List.copyOf(words);
    marks = List.copyOf(marks);
  }
}
