package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exports that were put together of parts in two encodings. */
class LostCharactersTest {
  private static final Charset WINDOWS = Charset.forName("windows-1252");

  @TempDir Path dir;

  private JsonNode run(byte[] bytes) throws Exception {
    Path file = Files.write(dir.resolve("wells.csv"), bytes);
    ScreenRequest request = Runs.request(dir.resolve("out"), List.of("common-practice"), file);
    Runs.run(Runs.withSheets(request, SheetsFor.NONE, 0));
    return new ObjectMapper().readTree(dir.resolve("out/run.json").toFile()).at("/inputs/0");
  }

  private static byte[] file(int rows, int other) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write("record.id,well.depth [ft],remark\n".getBytes(StandardCharsets.UTF_8));
    for (int i = 0; i < rows; i++) {
      String row = "W-" + i + ",120,gr\u00e8s et argile" + " bleue".repeat(20) + "\n";
      out.write(row.getBytes(i >= rows - other ? WINDOWS : StandardCharsets.UTF_8));
    }
    return out.toByteArray();
  }

  @Test
  void bytesOfAnotherEncodingFarDownAreCountedAndTheirFirstLineNamed() throws Exception {
    byte[] bytes = file(12_000, 7);
    assertTrue(bytes.length > 1 << 20, "beyond what is looked at beforehand");
    JsonNode input = run(bytes);
    assertEquals(12_000, input.path("screened").asInt());
    assertEquals("CSV, comma, UTF-8", input.path("format").asText());
    String notes = input.path("notes").toString();
    assertTrue(notes.contains("7 rows hold bytes that are no character"), notes);
    assertTrue(notes.contains("the first on line 11995"), notes);
    String page = Files.readString(dir.resolve("out/index.html"));
    assertTrue(page.contains("7 rows hold bytes that are no character"));
  }

  @Test
  void ofAFileInOneEncodingNothingIsSaid() throws Exception {
    assertFalse(run(file(50, 0)).path("notes").toString().contains("no character"));
    JsonNode windows = run(file(50, 50));
    assertEquals("CSV, comma, Windows-1252", windows.path("format").asText());
    assertFalse(windows.path("notes").toString().contains("no character"));
  }
}
