package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All nasty files in one run: its counts are those of their names, file by file and in all. */
class NastyFolderTest {
  private static final Pattern VERDICT =
      Pattern.compile("(?:.*!)?.*-screens-(\\d+)(?:-sets-aside-(\\d+))?\\.[a-z.]+(?:!.*)?");

  @TempDir Path dir;

  @Test
  void everyRowOfEveryFileIsAccountedFor() throws Exception {
    Path folder = Path.of("src/test/resources/nasty");
    Path out = dir.resolve("out");
    ScreenSummary summary =
        Runs.run(Runs.withWorkers(Runs.request(out, List.of(Runs.ALDER), folder), 2));
    Map<String, long[]> byFile = new HashMap<>();
    JsonNode run = new ObjectMapper().readTree(out.resolve("run.json").toFile());
    long rows = 0;
    for (JsonNode input : run.get("inputs")) {
      long screened = input.get("screened").asLong();
      long aside = input.get("setAside").asLong();
      assertEquals(input.get("rowsRead").asLong(), screened + aside, input.toString());
      rows += screened + aside;
      long[] sum =
          byFile.computeIfAbsent(
              input.get("file").asText().replaceAll("!.*", ""), f -> new long[2]);
      sum[0] += screened;
      sum[1] += aside;
    }
    assertEquals(summary.rowsRead(), rows);
    assertEquals(summary.rowsRead(), summary.screened() + summary.setAside());
    assertEquals(summary.screened(), Runs.rows(out.resolve("records.csv")).size());
    assertTrue(byFile.size() > 55, byFile.keySet().toString());
    byFile.forEach(
        (file, sum) -> {
          Matcher verdict = VERDICT.matcher(file);
          if (verdict.matches()) {
            assertEquals(Long.parseLong(verdict.group(1)), sum[0], file);
            assertEquals(
                verdict.group(2) == null ? 0 : Long.parseLong(verdict.group(2)), sum[1], file);
          } else {
            assertEquals(0, sum[0], file);
          }
        });
    for (Map.Entry<String, String> file : Runs.files(out).entrySet()) {
      assertFalse(file.getValue().contains("Exception"), file.getKey());
      assertFalse(file.getKey().contains(".."), file.getKey());
    }
    assertFalse(Files.readString(out.resolve("index.html")).contains("<script>x"));
  }
}
