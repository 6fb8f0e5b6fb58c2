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
  /** Codes of each sort that are shown; run.json holds more. */
  private static final int CODES = 8;

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
        String summary =
            words.say(
                "reading.columns",
                input.file(),
                input.columns().size(),
                known,
                input.rowsCounted(),
                input.setAside());
        parts.add(new ReadingPart(input.file(), summary, rows));
      }
    }
    return parts;
  }

  private static Row row(ColumnLine column, Words words) {
    List<String> notes = notes(column, words);
    for (ColumnDoubt doubt : column.doubts()) {
      notes.add(said(doubt, words));
    }
    String what = column.entry().isEmpty() ? "" : words.entry(column.entry());
    return new Row(column, what, notes);
  }

  /** What is to be said of the cells of a column, beside doubts. */
  static List<String> notes(ColumnLine column, Words words) {
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
    codes(
        "reading.codes", column.codes().stream().filter(CodeLine::isValue).toList(), words, notes);
    codes(
        "reading.no.value",
        column.codes().stream()
            .filter(code -> !code.isValue() && !code.isUnread() && !code.read().isEmpty())
            .toList(),
        words,
        notes);
    codes(
        "reading.unread",
        column.codes().stream().filter(CodeLine::isUnread).toList(),
        words,
        notes);
    column.codes().stream()
        .filter(code -> code.read().isEmpty())
        .forEach(code -> notes.add(words.say("reading.others", code.cells())));
    return notes;
  }

  private static void codes(String key, List<CodeLine> codes, Words words, List<String> notes) {
    if (codes.isEmpty()) {
      return;
    }
    List<String> shown = new ArrayList<>();
    for (CodeLine code : codes.subList(0, Math.min(CODES, codes.size()))) {
      shown.add(said(code, words));
    }
    String all = String.join(", ", shown);
    int more = codes.size() - shown.size();
    notes.add(words.say(key, more > 0 ? words.count("and.more", more, all) : all));
  }

  private static String said(CodeLine code, Words words) {
    String written = Cap.QUOTED_LETTERS.cut(code.written());
    String read =
        switch (code.read()) {
          case "yes", "no" -> words.say(code.read());
          default -> words.choice(code.read());
        };
    boolean same = written.equalsIgnoreCase(code.read()) || written.equalsIgnoreCase(read);
    return code.isValue() && !same
        ? words.say("reading.code", written, read, code.cells())
        : words.say("reading.word", written, code.cells());
  }

  /** A doubt as a sentence. */
  static String said(ColumnDoubt doubt, Words words) {
    List<Object> said = new ArrayList<>();
    said.add(doubt.cells());
    said.addAll(doubt.of());
    return words.say("doubt." + doubt.kind(), said.toArray());
  }
}
