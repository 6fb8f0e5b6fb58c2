package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the row of a table is not known, the slack of rounding may still turn it: cannot tell. */
class SlackOfTablesTest {
  private static final String PACK =
      """
      { "pack": "t", "title": "t", "authority": "a", "jurisdictions": ["t"],
        "edition": "2024-01-01", "judgedBy": "as-of",
        "sources": { "s": { "basis": "invented", "title": "t", "section": "1" } },
        "tables": { "frost": { "by": ["site.zone"], "gives": "length", "rows": [
          { "when": ["hill"], "value": "6 ft" }, { "when": ["plain"], "value": "4.5 ft" } ] } },
        "rules": [ { "id": "r", "title": "r", "kind": "deficiency",
          "require": "pitless.depth >= table(frost)",
          "because": "b", "remedy": "r", "source": "s", "examples": [
            { "given": { "pitless.depth": "7 ft" }, "expect": "meets" },
            { "given": { "pitless.depth": "1 ft" }, "expect": "falls short" },
            { "given": { %s }, "expect": "%s" } ] } ] }
      """;

  @TempDir Path dir;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'pitless.depth': '1.37 m', 'site.zone': 'plain' | meets",
        "'pitless.depth': '1.37 m', 'site.zone': 'hill' | falls short",
        "'pitless.depth': '1.37 m' | cannot tell",
        "'pitless.depth': '1.36 m' | falls short",
        "'pitless.depth': '4.49 ft' | falls short",
        "'pitless.depth': '1.83 m' | meets",
      })
  void knowingLessIsNeverWorse(String given, String outcome) throws Exception {
    Path folder = Files.createDirectories(dir.resolve("t"));
    Files.writeString(
        folder.resolve("pack.json"), PACK.formatted(given.replace('\'', '"'), outcome));
    assertEquals("t", PackLoader.loadForAuthor(folder.toString()).id());
  }
}
