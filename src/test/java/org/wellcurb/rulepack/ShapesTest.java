package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every shape that published codes take names a rule that ships, or says why it cannot be one. */
class ShapesTest {
  private static final int SHAPES = 35;
  private static final Path TESTS = Path.of("src/test/java/org/wellcurb/rulepack/published");
  private static final Pattern ALSO = Pattern.compile("`([a-z0-9-]+)/([a-z0-9-]+)`");

  private final Map<String, Pack> packs = new HashMap<>();

  @Test
  void everyShapeIsNumberedOnce() throws IOException {
    List<String[]> rows = rows();
    assertEquals(SHAPES, rows.size());
    for (int i = 0; i < SHAPES; i++) {
      assertEquals(Integer.toString(i + 1), rows.get(i)[0]);
    }
  }

  @Test
  void everyRuleNamedShips() throws IOException, PackException {
    for (String[] row : rows()) {
      if (row[2].equals("-")) {
        assertTrue(row[4].startsWith("not expressible: "), row[1] + " says why not");
        continue;
      }
      assertShips(row[2], row[3]);
      Matcher also = ALSO.matcher(row[4]);
      while (also.find()) {
        assertShips(also.group(1), also.group(2));
      }
      assertFalse(row[4].isBlank(), row[1] + " says how");
    }
  }

  /** A test that names the rule holds it to the figure of the text. */
  @Test
  void everyRuleNamedHasATestByName() throws IOException {
    StringBuilder tests = new StringBuilder();
    try (Stream<Path> files = Files.list(TESTS)) {
      for (Path file : files.sorted().toList()) {
        tests.append(Files.readString(file));
      }
    }
    List<String> untested = new ArrayList<>();
    for (String[] row : rows()) {
      List<String> named = new ArrayList<>(row[2].equals("-") ? List.of() : List.of(row[3]));
      ALSO.matcher(row[4]).results().forEach(also -> named.add(also.group(2)));
      named.stream()
          .filter(rule -> tests.indexOf('"' + rule + '"') < 0)
          .forEach(rule -> untested.add(row[0] + " " + rule));
    }
    assertEquals(List.of(), untested);
  }

  private void assertShips(String pack, String rule) throws PackException {
    Pack loaded = packs.get(pack);
    if (loaded == null) {
      loaded = PackLoader.load(pack);
      packs.put(pack, loaded);
    }
    assertTrue(
        loaded.rules().stream().anyMatch(r -> r.id().equals(rule) && r.pack().equals(pack)),
        pack + " has no rule " + rule);
  }

  private static List<String[]> rows() throws IOException {
    List<String[]> rows = new ArrayList<>();
    for (String line : Files.readAllLines(Path.of("rules", "SHAPES.md"))) {
      if (line.matches("\\| [0-9]+ \\|.*")) {
        String[] cells = line.substring(2, line.length() - 2).split(" \\| ", -1);
        assertEquals(5, cells.length, line);
        rows.add(cells);
      }
    }
    return rows;
  }
}
