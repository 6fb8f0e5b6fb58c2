package org.wellcurb.batch;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.Refused.Why;

/** A small table that a run is given beside the records: CSV with a header, UTF-8. */
final class SideTable {
  /**
   * One row.
   *
   * @param line its first line in the file
   * @param cells trimmed text by column name in lower case; empty where the row has no such cell
   */
  record Row(long line, Map<String, String> cells) {
    String get(String column) {
      return cells.getOrDefault(column, "");
    }
  }

  /**
   * A line that is no row of the table.
   *
   * @param line its number in the file
   * @param text the line
   * @param why what is wrong, and what would mend it
   */
  record Bad(long line, String text, Why why) {}

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).setTrim(true).get();

  /** Lines that a quoted cell may go over. */
  private static final int MOST_LINES = 200;

  private SideTable() {}

  /**
   * Reads the table; lines that are no rows are handed over, and reading goes on behind them.
   *
   * @param option the option that names it, said in errors
   * @param required columns that must be there
   * @throws RunFailure if it cannot be read at all, or lacks a column
   */
  static List<Row> read(Path file, String option, List<String> required, Consumer<Bad> onBad)
      throws RunFailure {
    List<String> lines = lines(file);
    List<Row> rows = new ArrayList<>();
    List<String> columns = new ArrayList<>();
    for (int at = 0; at < lines.size(); ) {
      int end = end(lines, at);
      String text = String.join("\n", lines.subList(at, Math.min(end, lines.size())));
      List<String> cells = end > lines.size() ? List.of() : cells(text);
      // What goes on over lines and then fits no row had a quote too many in its first one.
      Why why = end > at + 1 ? Why.OPEN_QUOTE : Why.AFTER_QUOTE;
      if (cells == null || end > lines.size()) {
        onBad.accept(new Bad(at + 1L, lines.get(at), why));
        end = at + 1;
      } else if (cells.isEmpty()) {
        // A blank line.
      } else if (columns.isEmpty()) {
        cells.forEach(name -> columns.add(name.toLowerCase(Locale.ROOT)));
        check(columns, required, file, option);
      } else if (fits(cells, columns, required)) {
        Map<String, String> named = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(columns.size(), cells.size()); i++) {
          named.put(columns.get(i), cells.get(i));
        }
        rows.add(new Row(at + 1L, named));
      } else {
        onBad.accept(new Bad(at + 1L, text, Why.CELLS));
      }
      at = end;
    }
    if (columns.isEmpty()) {
      throw RunFailure.unusable(
          file + ": is empty; " + option + " needs a header: " + String.join(",", required));
    }
    return rows;
  }

  private static void check(List<String> columns, List<String> required, Path file, String option)
      throws RunFailure {
    for (String name : required) {
      if (!columns.contains(name)) {
        throw RunFailure.unusable(
            file
                + ":1: "
                + option
                + " needs a column "
                + name
                + "; the header must hold "
                + String.join(",", required));
      }
    }
  }

  /** The line behind the row that begins here; beyond all lines if one of its quotes is open. */
  private static int end(List<String> lines, int from) {
    long quotes = 0;
    for (int at = from; at < Math.min(lines.size(), from + MOST_LINES); at++) {
      quotes += lines.get(at).chars().filter(c -> c == '"').count();
      if (quotes % 2 == 0) {
        return at + 1;
      }
    }
    return lines.size() + 1;
  }

  /** The cells of a row, trimmed; none of a blank line, null if letters follow a quoted cell. */
  private static @Nullable List<String> cells(String text) {
    try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
      List<String> cells = new ArrayList<>();
      for (CSVRecord row : parser) {
        row.forEach(cells::add);
      }
      return cells;
    } catch (IOException | java.io.UncheckedIOException e) {
      return null;
    }
  }

  private static List<String> lines(Path file) throws RunFailure {
    try {
      String text = Files.readString(file, StandardCharsets.UTF_8);
      return (text.startsWith("\uFEFF") ? text.substring(1) : text).lines().toList();
    } catch (CharacterCodingException e) {
      throw RunFailure.unusable(file + ": is not UTF-8; save it as UTF-8", e);
    } catch (IOException e) {
      throw RunFailure.unusable(file + ": cannot be read: " + Folders.reason(e), e);
    }
  }

  /**
   * Whether the cells can be told apart: spreadsheets leave blank cells at the end of a row away,
   * so only what comes before the last required column must be there.
   */
  private static boolean fits(List<String> row, List<String> columns, List<String> required) {
    for (int i = columns.size(); i < row.size(); i++) {
      if (!row.get(i).isEmpty()) {
        return false;
      }
    }
    return required.subList(0, required.size() - 1).stream()
        .allMatch(name -> columns.indexOf(name) < row.size());
  }
}
