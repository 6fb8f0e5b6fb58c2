package org.wellcurb.report;

import java.util.List;

/**
 * Something that only the whole batch shows.
 *
 * @param title what was looked for, in a few words
 * @param sentences what was found, with its statistic and its interval
 * @param records numbers of the records concerned, a bounded list
 */
public record CrossLine(String title, List<String> sentences, List<String> records) {
  public CrossLine {
    sentences = List.copyOf(sentences);
    records = List.copyOf(records);
  }
}
