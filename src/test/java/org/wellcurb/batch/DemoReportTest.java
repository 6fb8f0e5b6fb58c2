package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The committed sample report is what the README's first command makes, byte for byte. Where a
 * change is meant, run that command and commit the new report with it.
 */
class DemoReportTest {
  private static final Path COMMITTED = Path.of("reports", "demo");

  @Test
  void isWhatTheSampleRecordsGive(@TempDir Path dir) throws Exception {
    Path made = dir.resolve("demo");
    Runs.run(
        Runs.request(made, List.of("fenwick-county", "tarn-district"), Path.of("sample-records")));
    assertEquals(files(COMMITTED), files(made));
    for (String file : files(COMMITTED)) {
      assertArrayEquals(
          Files.readAllBytes(COMMITTED.resolve(file)),
          Files.readAllBytes(made.resolve(file)),
          file);
    }
  }

  private static TreeSet<String> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      TreeSet<String> files = new TreeSet<>();
      all.filter(Files::isRegularFile)
          .forEach(path -> files.add(folder.relativize(path).toString().replace('\\', '/')));
      return files;
    }
  }
}
