package org.wellcurb.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.report.BlankForm;
import org.wellcurb.report.PageStyle;

/** What is printed by a process of its own is there to its last character. */
class WholeOutputTest {
  @TempDir Path dir;

  @ParameterizedTest
  @ValueSource(strings = {"csv", "json", "html"})
  void anEmptyFormIsPrintedWhole(String kind) throws Exception {
    Path out = dir.resolve("out");
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:-UsePerfData",
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            "org.wellcurb.cli.Main",
            "blank",
            "--as",
            kind);
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(dir.resolve("err").toFile())
            .start();
    if (!process.waitFor(120, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("the program hangs");
    }
    assertEquals(0, process.exitValue(), Files.readString(dir.resolve("err")));
    PageStyle style = new StyleOptions().style();
    String form =
        switch (kind) {
          case "csv" -> BlankForm.csv(style.units());
          case "json" -> BlankForm.json(style.units());
          default -> BlankForm.html(style);
        };
    assertTrue(form.length() > 500, form);
    assertEquals(form, Files.readString(out, StandardCharsets.UTF_8));
  }
}
