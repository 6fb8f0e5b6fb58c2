package org.wellcurb.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.wellcurb.report.Outputs;

/**
 * Numbers of records by their place, from {@code records.csv}, whose lines stand in the order of
 * the records. Only the lines asked for are read cell by cell; of the others no more is seen than
 * where they end.
 */
final class RecordIds {
  private static final int BUFFER = 1 << 16;

  private RecordIds() {}

  static Map<Integer, String> of(Path folder, NavigableSet<Integer> places) throws IOException {
    Map<Integer, String> ids = new HashMap<>();
    if (places.isEmpty()) {
      return ids;
    }
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    byte[] bytes = new byte[BUFFER];
    // The header is the line before the first record.
    int place = -1;
    boolean isQuoted = false;
    boolean isWanted = false;
    try (InputStream in = Files.newInputStream(folder.resolve(Outputs.RECORDS_CSV))) {
      for (int count = in.read(bytes); count >= 0; count = in.read(bytes)) {
        int from = 0;
        for (int i = 0; i < count; i++) {
          // A quote within a quoted cell stands twice, so that two turns leave it quoted.
          isQuoted ^= bytes[i] == '"';
          if (bytes[i] == '\n' && !isQuoted) {
            if (isWanted) {
              line.write(bytes, from, i - from);
              ids.put(place, id(line.toString(StandardCharsets.UTF_8)));
              line.reset();
            }
            if (place == places.last()) {
              return ids;
            }
            place++;
            isWanted = places.contains(place);
            from = i + 1;
          }
        }
        if (isWanted) {
          line.write(bytes, from, count - from);
        }
      }
    }
    return ids;
  }

  private static String id(String line) throws IOException {
    try (CSVParser cells = CSVParser.parse(line, CSVFormat.RFC4180)) {
      return EarlierReport.plain(cells.iterator().next().get(0));
    }
  }
}
