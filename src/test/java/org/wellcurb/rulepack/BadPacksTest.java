package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every fault of a pack, with what is said of it: one small pack for each, beside its golden {@code
 * expected.txt}. Run with {@code -Dgoldens=rewrite} to write them anew, and read what changed.
 */
class BadPacksTest {
  private static final Path FOLDER = Path.of("src/test/resources/bad-packs");

  static List<String> bad() throws IOException {
    return PackFinder.names(FOLDER).stream().filter(name -> !name.startsWith("sound-")).toList();
  }

  static List<String> sound() throws IOException {
    return PackFinder.names(FOLDER).stream().filter(name -> name.startsWith("sound-")).toList();
  }

  @ParameterizedTest
  @MethodSource("bad")
  void isRefusedWithPlaceLineCaretAndMend(String name) throws IOException {
    Path folder = FOLDER.resolve(name);
    PackException e =
        assertThrows(PackException.class, () -> PackLoader.load(folder.toString()), name);
    String said = e.shown().replace(FOLDER.toString().replace('\\', '/') + "/", "") + "\n";
    Path golden = folder.resolve("expected.txt");
    if ("rewrite".equals(System.getProperty("goldens"))) {
      Files.writeString(golden, said);
    }
    assertEquals(Files.readString(golden), said, name);
    for (PackProblem problem : e.problems()) {
      assertFalse(problem.mend().isEmpty(), "nothing would mend it: " + problem.text());
      assertFalse(problem.text().contains("\n"), "not one line: " + problem.text());
    }
  }

  @ParameterizedTest
  @MethodSource("bad")
  void itsAuthorIsToldTheSame(String name) {
    String folder = FOLDER.resolve(name).toString();
    PackException quick = assertThrows(PackException.class, () -> PackLoader.load(folder));
    PackException whole = assertThrows(PackException.class, () -> PackLoader.loadForAuthor(folder));
    assertEquals(quick.shown(), whole.shown());
  }

  @ParameterizedTest
  @MethodSource("sound")
  void aSoundOneLoads(String name) throws PackException {
    assertTrue(PackLoader.load(FOLDER.resolve(name).toString()).rules().size() > 0);
  }
}
