package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody writes an input, or takes it away, while it is read. */
class ChangingInputTest {
  @TempDir Path dir;

  private interface Change {
    void on(Path file) throws IOException;
  }

  private void refused(Change change, String saying) throws Exception {
    Path in = dir.resolve("in.csv");
    Path out = dir.resolve("out");
    StringBuilder text = new StringBuilder("record.id,record.jurisdiction\n");
    for (int i = 0; i < 60_000; i++) {
      text.append("W-").append(i).append(",alder\n");
    }
    Files.writeString(in, text);
    ScreenRequest request =
        Runs.withSheets(Runs.request(out, List.of(Runs.ALDER), in), SheetsFor.NONE, 0);
    Runs.run(request);
    Map<String, String> before = Runs.files(out);
    boolean[] done = {false};
    Progress meddler =
        rows -> {
          if (!done[0]) {
            done[0] = true;
            try {
              change.on(in);
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          }
        };
    RunFailure failure =
        assertThrows(RunFailure.class, () -> new ScreenRun(request, meddler, new Stop()).run());
    assertEquals(RunFailure.Kind.NO_INPUT, failure.kind());
    assertTrue(failure.line().contains(saying), failure.line());
    assertEquals(1, failure.line().lines().count());
    assertEquals(before, Runs.files(out));
    assertEquals(
        List.of(), Folders.list(dir).stream().filter(p -> p.toString().contains("/.out")).toList());
  }

  @Test
  void aFileThatShrinksWhileItIsRead() throws Exception {
    refused(
        file -> {
          try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.truncate(500_000);
          }
        },
        "in.csv: changed while it was read");
  }

  @Test
  void aFileThatGrowsWhileItIsRead() throws Exception {
    refused(
        file -> Files.writeString(file, "W-x,alder\n", StandardOpenOption.APPEND),
        "in.csv: changed while it was read");
  }

  @Test
  void aFileThatGoesAwayWhileItIsRead() throws Exception {
    refused(Files::delete, "in.csv: changed while it was read");
  }
}
