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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

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

  /** How the reader says that a quoted cell has no end, or goes on after it. */
  private static final Pattern QUOTE =
      Pattern.compile(
          "\\(startline ([^)]+)\\) EOF reached"
              + "|between encapsulated token and delimiter at line: ([^:]+), position");

  private SideTable() {}

  /**
   * Reads the table whole.
   *
   * @param option the option that names it, said in errors
   * @param required columns that must be there
   * @throws RunFailure if it cannot be read, with the line that says why
   */
  static List<Row> read(Path file, String option, List<String> required) throws RunFailure {
    CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).setTrim(true).get();
    List<Row> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text(file), format)) {
      List<String> columns = new ArrayList<>();
      for (CSVRecord row : parser) {
        if (columns.isEmpty()) {
          for (String name : row) {
            columns.add(name.toLowerCase(Locale.ROOT));
          }
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
          continue;
        }
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(columns.size(), row.size()); i++) {
          cells.put(columns.get(i), row.get(i));
        }
        if (!fits(row, columns, required)) {
          throw RunFailure.unusable(
              file
                  + ":"
                  + parser.getCurrentLineNumber()
                  + ": has "
                  + row.size()
                  + (row.size() == 1 ? " cell" : " cells")
                  + " where the header has "
                  + columns.size()
                  + "; look for a comma too many or too few, or a text with a comma that lacks its"
                  + " quotes");
        }
        rows.add(new Row(parser.getCurrentLineNumber(), cells));
      }
      if (columns.isEmpty()) {
        throw RunFailure.unusable(
            file + ": is empty; " + option + " needs a header: " + String.join(",", required));
      }
      return rows;
    } catch (CharacterCodingException e) {
      throw RunFailure.unusable(file + ": is not UTF-8; save it as UTF-8", e);
    } catch (IOException | java.io.UncheckedIOException e) {
      Matcher quote = QUOTE.matcher(String.valueOf(e.getMessage()));
      if (quote.find()) {
        boolean open = quote.group(1) != null;
        throw RunFailure.unusable(
            file
                + ":"
                + String.valueOf(quote.group(open ? 1 : 2)).replaceAll("\\D", "")
                + (open
                    ? ": a quote is opened and never closed; close it"
                    : ": letters follow a closing quote; write a quote within a cell twice"),
            e);
      }
      throw RunFailure.unusable(file + ": cannot be read: " + reason(e), e);
    }
  }

  /**
   * Whether the cells can be told apart: spreadsheets leave blank cells at the end of a row away,
   * so only what comes before the last required column must be there.
   */
  private static boolean fits(CSVRecord row, List<String> columns, List<String> required) {
    for (int i = columns.size(); i < row.size(); i++) {
      if (!row.get(i).isEmpty()) {
        return false;
      }
    }
    return required.subList(0, required.size() - 1).stream()
        .allMatch(name -> columns.indexOf(name) < row.size());
  }

  private static String text(Path file) throws IOException {
    String text = Files.readString(file, StandardCharsets.UTF_8);
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static String reason(Exception e) {
    Throwable cause = e.getCause();
    IOException io =
        e instanceof IOException own ? own : cause instanceof IOException inner ? inner : null;
    return io == null ? String.valueOf(e.getMessage()) : Folders.reason(io);
  }
}
