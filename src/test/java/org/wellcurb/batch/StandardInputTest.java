package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedInputStream;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Standard input is read to its end, and hashed, although whoever reads it closes it. */
class StandardInputTest {
  @TempDir Path dir;

  @Test
  void isScreenedAndHashed() throws Exception {
    Path records =
        Files.writeString(dir.resolve("wells.csv"), "record.id,well.depth\nA,120 ft\nB,90 ft\n");
    ScreenRequest plain =
        Runs.request(dir.resolve("out"), List.of("common-practice"), Path.of("-"));
    // As that of a process: after it is closed, it cannot be read.
    InputStream in = new BufferedInputStream(Files.newInputStream(records));
    ScreenRequest request = plain.with(plain.input().from(in)).by(2);
    assertEquals(2, Runs.run(request).screened());
    String hash =
        HexFormat.of()
            .formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(records)));
    assertTrue(Files.readString(dir.resolve("out/run.json")).contains(hash));
  }
}
