package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.intake.HeaderSurvey;
import org.wellcurb.intake.Input;
import org.wellcurb.intake.Inputs;
import org.wellcurb.intake.MapDraft;
import org.wellcurb.record.Catalogue;

/**
 * An export of a hundred columns, with a log of layers, in the ways of an office that never was:
 * the map that is drafted for it, the map that somebody made of the draft, and what the reading
 * report says of every column.
 */
class UnfamiliarExportTest {
  private static final Path EXPORTS = Path.of("src/test/resources/exports");
  private static final Path REGISTER = EXPORTS.resolve("register.csv");
  private static final Path LOG = EXPORTS.resolve("register-log.txt");
  private static final Path READING = EXPORTS.resolve("register-reading.txt");
  private static final List<String> STATES =
      List.of("given", "blank", "unknown", "notApplicable", "unreadable");

  @TempDir Path dir;

  private JsonNode run(Path map, Path... inputs) throws Exception {
    ScreenRequest request = Runs.request(dir.resolve("out"), List.of("common-practice"), inputs);
    Runs.run(Runs.withSheets(request, SheetsFor.NONE, 0).withHeaders(map));
    return new ObjectMapper().readTree(dir.resolve("out/run.json").toFile());
  }

  private Path draft() throws Exception {
    List<Input> inputs =
        Inputs.of(List.of(REGISTER.toString()), InputStream.nullInputStream()).inputs();
    HeaderSurvey survey = HeaderSurvey.of(inputs.get(0), Catalogue.standard());
    return Files.writeString(dir.resolve("draft.json"), MapDraft.of(survey));
  }

  /** Rows of a hundred cells that are wells, read by another hand. */
  private static List<CSVRecord> wells() throws Exception {
    String text = Files.readString(REGISTER, StandardCharsets.UTF_8);
    List<CSVRecord> wells = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
      for (CSVRecord row : parser) {
        if (row.get(0).startsWith("WP") && row.size() == 100) {
          wells.add(row);
        }
      }
    }
    return wells;
  }

  private static void accountsForEveryCell(JsonNode register) throws Exception {
    List<CSVRecord> wells = wells();
    assertEquals(48, wells.size());
    assertEquals(48, register.path("screened").asInt());
    assertEquals(5, register.path("setAside").asInt(), "total, header, short row, total, remark");
    assertEquals(100, register.path("columns").size());
    for (int i = 0; i < 100; i++) {
      JsonNode column = register.path("columns").get(i);
      int at = i;
      long blank = wells.stream().filter(row -> row.get(at).isBlank()).count();
      assertEquals(blank, column.path("blank").asLong(), column.toString());
      long sum = STATES.stream().mapToLong(state -> column.path(state).asLong()).sum();
      assertEquals(48, sum, column.toString());
    }
  }

  @Test
  void theDraftAccountsForEveryCellAndTakesNothingForWhatItIsNot() throws Exception {
    JsonNode register = run(draft(), REGISTER).at("/inputs/0");
    accountsForEveryCell(register);
    assertEquals("record.id", register.at("/columns/0/entry").asText());
    assertEquals("well.depth", register.at("/columns/22/entry").asText());
    assertEquals("unit of TOT_DEPTH", register.at("/columns/23/said").asText());
    assertEquals("part of site.latitude", register.at("/columns/11/said").asText());
    assertEquals("pump.phase", register.at("/columns/65/entry").asText());
    assertEquals("", register.at("/columns/15/entry").asText(), "a method of position");
    assertEquals("", register.at("/columns/90/entry").asText(), "whether there was an old well");
  }

  @Test
  void theReadingReportSaysOfEachColumnWhatBecameOfIt() throws Exception {
    JsonNode run = run(EXPORTS.resolve("register-map.json"), REGISTER, LOG);
    accountsForEveryCell(run.at("/inputs/0"));
    for (JsonNode column : run.at("/inputs/1/columns")) {
      long sum = STATES.stream().mapToLong(state -> column.path(state).asLong()).sum();
      assertEquals(144, sum, column.toString());
    }
    String told = told(run);
    if ("remake".equals(System.getProperty("reading"))) {
      Files.writeString(READING, told);
    }
    assertEquals(Files.readString(READING), told);
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("TOT_DEPTH_UOM") && page.contains("unit of TOT_DEPTH"));
  }

  private static String told(JsonNode run) {
    StringBuilder out = new StringBuilder();
    for (JsonNode input : run.path("inputs")) {
      out.append(input.path("file").asText()).append(": ").append(input.path("format").asText());
      out.append("; read ").append(input.path("rowsRead")).append(", screened ");
      out.append(input.path("screened")).append(", set aside ").append(input.path("setAside"));
      out.append('\n');
      for (JsonNode column : input.path("columns")) {
        out.append("  ").append(column.path("name").asText()).append(" -> ");
        out.append(column.path("entry").asText("-"));
        for (String also : List.of("unit", "said")) {
          if (column.has(also)) {
            out.append("; ").append(column.path(also).asText());
          }
        }
        STATES.forEach(
            state -> {
              if (column.path(state).asLong() > 0) {
                out.append("; ").append(state).append(' ').append(column.path(state));
              }
            });
        for (String also : List.of("units", "notes", "doubts")) {
          if (column.has(also)) {
            out.append("; ").append(column.path(also));
          }
        }
        out.append('\n');
      }
    }
    return out.toString();
  }
}
