package org.wellcurb.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Runs of the tests, and what they wrote. */
final class Runs {
  static final LocalDate AS_OF = LocalDate.of(2026, 1, 1);
  static final String ALDER = "src/test/resources/batch/packs/alder";
  static final String BIRCH = "src/test/resources/batch/packs/birch";

  private Runs() {}

  static ScreenRequest request(Path out, List<String> packs, Path... records) {
    return ScreenRequest.plain(
        Arrays.stream(records).map(Path::toString).toList(), packs, out, AS_OF);
  }

  static ScreenRequest withWorkers(ScreenRequest plain, int workers) {
    return plain.with(plain.output().withOutcomes()).by(workers);
  }

  static ScreenRequest withSheets(ScreenRequest plain, SheetsFor sheets, int most) {
    return plain.with(plain.output().with(sheets, most));
  }

  static ScreenSummary run(ScreenRequest request) throws RunFailure {
    return new ScreenRun(request, Progress.SILENT, new Stop()).run();
  }

  /** Every file below a folder, by path, as Latin-1 text (a character a byte). */
  static Map<String, String> files(Path folder) {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path path : walk.filter(Files::isRegularFile).toList()) {
        files.put(
            folder.relativize(path).toString(),
            Files.readString(path, java.nio.charset.StandardCharsets.ISO_8859_1));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  /** The rows of a CSV file, by header. */
  static List<Map<String, String>> rows(Path csv) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    List<Map<String, String>> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(Files.readString(csv), format)) {
      for (CSVRecord row : parser) {
        rows.add(row.toMap());
      }
    }
    return rows;
  }
}
