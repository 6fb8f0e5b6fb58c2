package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What only the whole batch shows, in a run. */
class CrossRunTest {
  private static final String HEADER =
      "record.id,driller.licence,dates.completed,well.depth,well.casing_depth,water.static_level,"
          + "water.pumping_level,water.yield,water.test_rate,pump.intake_depth,pressure.cut_in,"
          + "pressure.cut_out,tank.precharge,well.use,well.method\n";

  @TempDir Path dir;

  private JsonNode run(LookOptions looks, String... rows) throws Exception {
    Path records =
        Files.writeString(dir.resolve("wells.csv"), HEADER + String.join("\n", rows) + "\n");
    Runs.run(Runs.request(dir.resolve("out"), List.of("common-practice"), records).with(looks));
    return new ObjectMapper().readTree(dir.resolve("out/crosscheck.json").toFile());
  }

  private static String row(String id, String day, int depth, int level) {
    return String.join(
        ",",
        id,
        "D1",
        day,
        "" + depth,
        "41",
        "" + level,
        "" + (level + 33),
        "7",
        "7.5",
        "" + (depth - 17),
        "30",
        "50",
        "28",
        "household",
        "rotary");
  }

  @Test
  void aNumberOnSeveralRowsIsSaidWithWhatDiffers() throws Exception {
    JsonNode cross =
        run(
            LookOptions.PLAIN,
            row("A", "2020-01-01", 210, 40),
            row("B", "2020-01-02", 310, 61),
            row("A", "2021-01-01", 210, 55));
    JsonNode same = cross.path("sameNumber");
    assertEquals(1, same.path("total").asInt());
    assertEquals(2, same.path("rows").asInt());
    JsonNode first = same.path("shown").path(0);
    assertEquals(4, first.path("records").path(1).path("row").asInt());
    assertEquals("A", first.path("records").path(0).path("record_id").asText());
    assertEquals("dates.completed", first.path("different").path(0).asText());
    assertEquals(3, first.path("different").size(), "day, static and pumping level");
    assertEquals(3, Runs.rows(dir.resolve("out/records.csv")).size(), "all rows are kept");
  }

  @Test
  void aCopyUnderAnotherNumberIsSaid() throws Exception {
    JsonNode near =
        run(
                LookOptions.PLAIN,
                row("A", "2020-01-01", 210, 40),
                row("=B", "2021-06-02", 210, 40),
                row("C", "2020-01-01", 325, 71))
            .path("nearCopy");
    assertEquals(1, near.path("total").asInt());
    assertEquals(
        "=B", near.path("shown").path(0).path("records").path(1).path("record_id").asText());
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("A and =B agree in"), page);
  }

  @Test
  void likeWellsOfOneStreetAreNoCopies() throws Exception {
    JsonNode near =
        run(
                LookOptions.PLAIN,
                row("A", "2020-01-01", 210, 40),
                row("B", "2020-01-01", 215, 45),
                row("C", "2020-01-01", 220, 41))
            .path("nearCopy");
    assertEquals(0, near.path("total").asInt());
  }

  @Test
  void nothingIsWrittenWhereItIsNotAskedFor() throws Exception {
    Path records = Files.writeString(dir.resolve("wells.csv"), HEADER);
    Files.writeString(records, HEADER + row("A", "2020-01-01", 210, 40) + "\n");
    LookOptions none = new LookOptions(false, null, null, null);
    Runs.run(Runs.request(dir.resolve("out"), List.of("common-practice"), records).with(none));
    assertFalse(Files.exists(dir.resolve("out/crosscheck.json")));
    assertFalse(Files.exists(dir.resolve("out/" + ScreenRun.SURVEY)));
    assertFalse(Files.readString(dir.resolve("out/index.html")).contains("id=\"cross\""));
  }

  @Test
  void theSurveyIsGoneWhenAllIsWhole() throws Exception {
    run(LookOptions.PLAIN, row("A", "2020-01-01", 210, 40));
    assertFalse(Files.exists(dir.resolve("out/" + ScreenRun.SURVEY)));
  }
}
