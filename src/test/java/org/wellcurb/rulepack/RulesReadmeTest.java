package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.formula.Formula;

/**
 * What rules/README.md teaches holds: its pack loads, its conditions parse, its words are known.
 */
class RulesReadmeTest {
  private static final Path README = Path.of("rules", "README.md");

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
    PackScope scope = new PackScope(Map.of(), Map.of());
    List<String> conditions = block("formula").lines().filter(line -> !line.isBlank()).toList();
    assertTrue(conditions.size() > 10);
    for (String condition : conditions) {
      assertEquals(condition, Formula.condition(condition, scope).text());
    }
  }

  @Test
  void everyKeyOfARuleAndAPackIsNamed() throws Exception {
    String text = Files.readString(README);
    for (String key :
        List.of(
            "pack",
            "title",
            "authority",
            "jurisdictions",
            "edition",
            "judgedBy",
            "notice",
            "builtOn",
            "sources",
            "tables",
            "figures",
            "mustApply",
            "drop",
            "rules",
            "id",
            "kind",
            "subject",
            "when",
            "require",
            "inForce",
            "ask",
            "because",
            "remedy",
            "source",
            "examples")) {
      assertTrue(text.contains("`" + key + "`"), key);
    }
  }

  @Test
  void theGrammarKnowsEveryWordOfTheLanguage() throws Exception {
    String grammar = block("ebnf");
    for (String word :
        List.of(
            "if",
            "then",
            "else",
            "or",
            "and",
            "not",
            "between",
            "is",
            "one",
            "of",
            "known",
            "yes",
            "no",
            "as_of",
            "table",
            "min",
            "max",
            "abs",
            "round",
            "workings.",
            "figures.")) {
      assertTrue(grammar.contains("\"" + word + "\""), word);
    }
  }
}
