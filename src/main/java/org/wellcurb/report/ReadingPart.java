package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.wellcurb.report.words.Words;

/**
 * How the columns of one input were read, in words.
 *
 * @param file the input
 * @param summary how many columns were understood, as a sentence
 * @param rows its columns
 */
public record ReadingPart(String file, String summary, List<Row> rows) {
  /**
   * One column.
   *
   * @param line its counts
   * @param what the entry that it fills, in words; empty if none
   * @param notes what is to be said of its cells
   */
  public record Row(ColumnLine line, String what, List<String> notes) {}

  static List<ReadingPart> of(List<InputLine> inputs, Words words) {
    List<ReadingPart> parts = new ArrayList<>();
    int shown = 0;
    for (InputLine input : inputs) {
      List<Row> rows = new ArrayList<>();
      int known = 0;
      for (ColumnLine column : input.columns()) {
        known += column.entry().isEmpty() ? 0 : 1;
        if (shown < Cap.COLUMNS_ON_PAGE.most()) {
          rows.add(row(column, words));
          shown++;
        }
      }
      if (!rows.isEmpty()) {
        String summary = words.say("reading.columns", input.file(), input.columns().size(), known);
        parts.add(new ReadingPart(input.file(), summary, rows));
      }
    }
    return parts;
  }

  private static Row row(ColumnLine column, Words words) {
    List<String> notes = new ArrayList<>();
    if (column.entry().isEmpty() && column.said().isEmpty()) {
      notes.add(words.say("reading.kept"));
    }
    if (!column.units().isEmpty()) {
      List<String> units = new ArrayList<>();
      column.units().forEach((unit, count) -> units.add(count + " " + unit));
      notes.add(words.say("reading.units", String.join(", ", units)));
    }
    for (Map.Entry<String, Long> note : column.notes().entrySet()) {
      notes.add(words.say("reading.note", note.getValue(), words.say(note.getKey())));
    }
    for (ColumnDoubt doubt : column.doubts()) {
      List<Object> said = new ArrayList<>();
      said.add(doubt.cells());
      said.addAll(doubt.of());
      notes.add(words.say("doubt." + doubt.kind(), said.toArray()));
    }
    String what = column.entry().isEmpty() ? "" : words.entry(column.entry());
    return new Row(column, what, notes);
  }
}
