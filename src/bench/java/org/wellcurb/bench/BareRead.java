package org.wellcurb.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The least that reading a table can cost: each cell of the file touched once, on one thread. */
public final class BareRead {
  private BareRead() {}

  /** FILE. */
  public static void main(String[] arguments) throws IOException {
    long rows = 0;
    long letters = 0;
    try (CSVParser parser =
        CSVParser.parse(Path.of(arguments[0]), StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
      for (CSVRecord row : parser) {
        rows++;
        for (String cell : row) {
          letters += cell.length();
        }
      }
    }
    System.out.println(rows + " rows, " + letters + " letters");
  }
}
