package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.report.Outputs;

/** Numbers of records, read back from the lines that were written of them. */
class RecordIdsTest {
  @TempDir Path folder;

  @Test
  void quotesAndLineEndsWithinACellEndNoLine() throws Exception {
    StringBuilder text = new StringBuilder("record_id,file\n");
    text.append("A,\"a \"\"b\"\"\nc.csv\"\n\"B\n,\"\"2\",x\n");
    text.append("C,x\n".repeat(40_000)).append("\"D, d\",x\n").append("E,x\n");
    Files.writeString(folder.resolve(Outputs.RECORDS_CSV), text);
    assertEquals(
        Map.of(0, "A", 1, "B\n,\"2", 40_001, "C", 40_002, "D, d"),
        RecordIds.of(folder, new TreeSet<>(List.of(0, 1, 40_001, 40_002))));
    assertEquals(Map.of(), RecordIds.of(folder, new TreeSet<>()));
  }
}
