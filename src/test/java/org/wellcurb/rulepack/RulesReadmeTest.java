package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/**
 * What rules/README.md teaches holds: its pack loads, its conditions parse, its words are known.
 */
class RulesReadmeTest {
  private static final Path README = Path.of("rules", "README.md");
  private static final Path SCHEMA = Path.of("rules", "schema", "rule-pack.schema.json");
  private static final Path PARSER = Path.of("src/main/java/org/wellcurb/formula/Parser.java");

  private static String block(String kind) throws Exception {
    Matcher found =
        Pattern.compile("```" + kind + "\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(README));
    assertTrue(found.find(), kind);
    return found.group(1);
  }

  @Test
  void theStartingPackLoads(@TempDir Path dir) throws Exception {
    Path folder = Files.createDirectories(dir.resolve("my-county"));
    Files.writeString(folder.resolve("pack.json"), block("json"));
    Pack pack = PackLoader.load(folder.toString());
    assertEquals("my-county", pack.id());
    assertTrue(pack.rules().stream().anyMatch(rule -> rule.id().equals("septic-distance")));
  }

  @Test
  void everyConditionShownParses() throws Exception {
    Table.Row row =
        new Table.Row(List.of(new Table.Any()), AmountText.read("6 ft (1.8 m)", Dimension.LENGTH));
    List<Entry> by = List.of(Catalogue.standard().entry(0));
    Table frost = new Table("frost-depth", by, Dimension.LENGTH, List.of(row));
    PackScope scope = new PackScope(Map.of("frost-depth", frost), Map.of());
    List<String> conditions = block("formula").lines().filter(line -> !line.isBlank()).toList();
    assertTrue(conditions.size() > 10);
    for (String condition : conditions) {
      assertEquals(condition, Formula.condition(condition, scope).text());
    }
  }

  @Test
  void everyKeyOfTheSchemaIsNamed() throws Exception {
    String text = Files.readString(README);
    JsonNode schema = new ObjectMapper().readTree(Files.readString(SCHEMA));
    Set<String> keys = new TreeSet<>();
    for (JsonNode properties : schema.findValues("properties")) {
      properties.fieldNames().forEachRemaining(keys::add);
    }
    assertTrue(keys.containsAll(List.of("pack", "lessStrictOf", "address", "expect")), "" + keys);
    for (String key : keys) {
      boolean isNamed = text.contains("`" + key + "`") || text.contains("`{\"" + key + "\":");
      assertTrue(isNamed, key + " is not in rules/README.md");
    }
  }

  /** The grammar is the parser's own, with what its last words are made of. */
  @Test
  void theGrammarIsTheParsers() throws Exception {
    String parser = Files.readString(PARSER);
    Matcher own = Pattern.compile("<pre>(.*?)</pre>", Pattern.DOTALL).matcher(parser);
    assertTrue(own.find());
    String stated =
        own.group(1)
            .replaceAll("(?m)^ \\* ?", "")
            .replace("&lt;", "<")
            .replace("&gt;", ">")
            .strip();
    assertTrue(stated.startsWith("condition"), stated);
    for (String line : stated.lines().toList()) {
      assertTrue(block("ebnf").contains(line), "not in rules/README.md: " + line);
    }
  }

  @Test
  void everyWordOfTheGrammarIsShownAtWork() throws Exception {
    String shown = block("formula");
    Matcher words = Pattern.compile("\"([a-z_]+)[.]?\"").matcher(block("ebnf"));
    Set<String> all = new TreeSet<>();
    while (words.find()) {
      all.add(words.group(1));
    }
    assertTrue(all.size() > 20, "" + all);
    for (String word : all) {
      assertTrue(Pattern.compile("\\b" + word + "\\b").matcher(shown).find(), word);
    }
  }

  @Test
  void everyCellShownIsRead() throws Exception {
    Entry diameter = Catalogue.standard().find("well.casing_diameter");
    assertNotNull(diameter);
    Matcher row =
        Pattern.compile("(?m)^\\| (`\"[^|]* in\"`) \\|").matcher(Files.readString(README));
    int cells = 0;
    while (row.find()) {
      for (String cell : row.group(1).split("`, `", -1)) {
        if (cell.endsWith(" in\"") || cell.endsWith(" in\"`")) {
          TableCell.read(cell.replaceAll("[`\"]", ""), diameter);
          cells++;
        }
      }
    }
    assertTrue(cells >= 7, "only " + cells);
  }
}
