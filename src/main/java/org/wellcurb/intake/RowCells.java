package org.wellcurb.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The cells of rows whose ends are known. */
final class RowCells {
  private RowCells() {}

  /**
   * RFC 4180 with this delimiter: what reads every row that holds a quoted cell. Empty lines are no
   * rows.
   */
  static CSVFormat format(byte delimiter) {
    return CSVFormat.RFC4180
        .builder()
        .setDelimiter((char) delimiter)
        .setIgnoreEmptyLines(true)
        .get();
  }

  /** A parser over rows of sound quoting, as many as the bytes hold. */
  static CSVParser parser(byte[] bytes, int from, int to, CSVFormat format) {
    try {
      return CSVParser.parse(
          new InputStreamReader(
              new ByteArrayInputStream(bytes, from, to - from), StandardCharsets.UTF_8),
          format);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The cells of one row, for the few rows that are looked at before reading begins. */
  static List<String> of(byte[] bytes, int from, int to, byte status, byte delimiter) {
    List<String> cells = new ArrayList<>();
    if (status == RowMarks.QUOTED) {
      try (CSVParser parser = parser(bytes, from, to, format(delimiter))) {
        for (CSVRecord row : parser) {
          row.forEach(cells::add);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      return cells;
    }
    int start = from;
    for (int i = from; i <= to; i++) {
      if (i == to || bytes[i] == delimiter) {
        cells.add(new String(bytes, start, i - start, StandardCharsets.UTF_8));
        start = i + 1;
      }
    }
    return cells;
  }
}
