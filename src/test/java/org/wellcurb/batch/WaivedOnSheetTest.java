package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet says waived of a rule that a variance waives, and of no other that the form names. */
class WaivedOnSheetTest {
  private static final String FORM =
      "record.id,record.jurisdiction,pump.control,pressure.cut_out,relief.setting,record.variances\n"
          + "A,fenwick,switch,60,60,relief-ten-above-cut-out: B-17\n"
          + "B,fenwick,switch,60,75,relief-ten-above-cut-out: B-17\n";

  @TempDir Path dir;

  private String sheet(String id) throws Exception {
    return Files.readString(dir.resolve("out/sheets/" + id + ".html"));
  }

  @Test
  void aRuleThatIsMetIsNotWaived() throws Exception {
    Path file = Files.writeString(dir.resolve("wells.csv"), FORM);
    ScreenRequest plain = Runs.request(dir.resolve("out"), List.of("fenwick-county"), file);
    Runs.run(Runs.withSheets(plain, SheetsFor.ALL, 2));
    assertEquals(1, sheet("A").split("Waived under B-17", -1).length - 1);
    assertEquals(0, sheet("B").split("Waived under B-17", -1).length - 1);
  }
}
