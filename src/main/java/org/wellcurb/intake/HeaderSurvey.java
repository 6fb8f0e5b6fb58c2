package org.wellcurb.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.wellcurb.record.Catalogue;

/**
 * What an export holds, column by column, and what it probably means.
 *
 * @param file the input
 * @param layout how it is laid out
 * @param rows rows counted
 * @param note what kept it from being read to its end; empty if nothing did
 * @param columns its columns, in order
 */
public record HeaderSurvey(
    String file, TableLayout layout, long rows, String note, List<ColumnGuess> columns) {
  public HeaderSurvey {
    columns = List.copyOf(columns);
  }

  /**
   * Looks through a table.
   *
   * @throws IntakeException if it is no table, or has no header
   * @throws IOException if the disk fails
   */
  public static HeaderSurvey of(Input input, Catalogue catalogue) throws IOException {
    try (InputStream in = input.opener().open()) {
      Sampled text = Sampled.of(input, in, TableMap.NONE);
      int first = text.firstByte();
      if (first < 0) {
        throw new IntakeException(input.file() + ": is empty");
      }
      if (input.form() != Form.SHEETS && (first == '{' || first == '[')) {
        throw new IntakeException(
            input.file() + ": is JSON, whose names are keys already; a map is for tables");
      }
      TableOpening opening = new TableOpening(catalogue, text);
      if (!opening.isFound()) {
        throw new IntakeException(input.file() + ": " + opening.problem());
      }
      TableLayout layout = opening.plan().layout;
      List<ColumnSurvey> columns = new ArrayList<>();
      for (Column column : layout.columns()) {
        columns.add(new ColumnSurvey(column.name()));
      }
      long[] rows = {0};
      String note = count(opening, layout.delimiter(), columns, rows);
      return new HeaderSurvey(
          input.file(), layout, rows[0], note, new ColumnGuesser(catalogue).guess(columns));
    } catch (CutShort e) {
      throw new IntakeException(input.file() + ": " + e.reason());
    }
  }

  private static String count(
      TableOpening opening, char delimiter, List<ColumnSurvey> columns, long[] rows)
      throws IOException {
    CSVFormat format =
        CSVFormat.RFC4180.builder().setDelimiter(delimiter).setIgnoreEmptyLines(true).get();
    InputStreamReader reader = new InputStreamReader(opening.rows(), StandardCharsets.UTF_8);
    try (CSVParser parser = CSVParser.parse(reader, format)) {
      for (CSVRecord row : parser) {
        if (row.size() == columns.size()) {
          rows[0]++;
          for (int i = 0; i < columns.size(); i++) {
            columns.get(i).add(row.get(i));
          }
        }
      }
      return "";
    } catch (IllegalStateException | java.io.UncheckedIOException e) {
      return "read up to row " + rows[0] + ", where a quoted cell is broken";
    }
  }
}
