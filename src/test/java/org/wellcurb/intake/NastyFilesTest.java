package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wellcurb.record.Catalogue;

/**
 * Files that break readers. Each is named after what must come of it: how many records it screens,
 * how many rows it sets aside, or that it is set aside whole; a name without a verdict fails.
 */
class NastyFilesTest {
  private static final Path FOLDER = Path.of("src/test/resources/nasty");
  private static final Pattern VERDICT =
      Pattern.compile(
          ".+-(?:screens-(?<screens>\\d+)(?:-sets-aside-(?<aside>\\d+))?|(?<whole>is-set-aside-whole))"
              + "\\.[a-z.]+");

  static List<Path> files() throws IOException {
    try (Stream<Path> list = Files.list(FOLDER)) {
      return list.sorted().toList();
    }
  }

  @Test
  void thereAreMany() throws IOException {
    assertTrue(files().size() > 60, "the folder was not read");
  }

  @ParameterizedTest
  @MethodSource("files")
  void whatItsNameSaysComesOfIt(Path file) throws IOException {
    Matcher verdict = VERDICT.matcher(file.getFileName().toString());
    assertTrue(verdict.matches(), file + " has no verdict in its name");
    Gathered all = read(file);
    List<String> reasons = new ArrayList<>();
    boolean whole = false;
    for (SetAside aside : all.aside) {
      whole |= aside.isFile();
      reasons.add(aside.row() + ": " + aside.reason());
      assertFalse(aside.reason().isBlank(), file + " sets aside without a reason");
      assertEquals(1, aside.reason().lines().count(), aside.reason());
      assertFalse(aside.reason().contains("Exception"), aside.reason());
    }
    String said = file + " " + reasons;
    assertEquals(verdict.group("whole") != null, whole, said);
    if (whole) {
      assertEquals(1, all.aside.size(), said);
    } else {
      assertEquals(Integer.parseInt(verdict.group("screens")), all.records.size(), said);
      String aside = verdict.group("aside");
      assertEquals(aside == null ? 0 : Integer.parseInt(aside), all.aside.size(), said);
    }
    assertEquals(all.rows, all.recordCount + (whole ? 0 : all.aside.size()), said);
  }

  private static Gathered read(Path file) throws IOException {
    Sources sources = new Sources(Catalogue.standard(), HeaderMap.NONE, 512);
    Inputs inputs = Inputs.of(List.of(file.toString()), InputStream.nullInputStream());
    return Gathered.of(sources, sources.prepare(inputs).inputs());
  }
}
