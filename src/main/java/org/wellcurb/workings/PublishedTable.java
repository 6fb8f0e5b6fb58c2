package org.wellcurb.workings;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The tables of figures that ship beside the functions; each row names its source. */
final class PublishedTable {
  private PublishedTable() {}

  /** The rows of a table, in order. */
  static List<CSVRecord> rows(String name) {
    try (InputStream in = PublishedTable.class.getResourceAsStream(name)) {
      String text =
          new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
      CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      try (CSVParser parser = CSVParser.parse(text, format)) {
        return parser.getRecords();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
