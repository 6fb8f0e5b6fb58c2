package org.wellcurb.rulepack.published;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The table of published limits, as the packs under {@code rules} give it. */
final class PublishedTable {
  private static final String NO_DAY = "first day not read";

  private final StringBuilder out = new StringBuilder();
  private int limits;
  private int textCount;
  private int undated;

  /** The whole page. */
  static String render() throws IOException {
    PublishedTable table = new PublishedTable();
    List<JsonNode> packs = packs();
    packs.forEach(table::pack);
    return """
        # Limits read in published text

        Every limit that a shipped pack takes from a published text: the rule that holds it, since when and until
        when, the section, and how it was read. In our own words and figures; never the authority's own words. Read
        what each pack says on its face, and ask the authority.

        There are %d limits in %d packs (entries that a record must hold, and questions for a person, not counted).
        Of %d texts of rules %d have no first day here, because nobody read since when they have been in force: they
        judge wells of any age, though an older text may bind an older well. Rulebooks say so of each of them, sheets
        and notices of all that is more than advice.
        This page is made from the packs; a test compares it with them.
        """
            .formatted(table.limits, packs.size(), table.textCount, table.undated)
        + table.out;
  }

  /** The packs whose sources are all published, in order of their names. */
  static List<JsonNode> packs() throws IOException {
    List<Path> files;
    try (Stream<Path> folders = Files.list(Path.of("rules"))) {
      files = folders.map(f -> f.resolve("pack.json")).filter(Files::exists).sorted().toList();
    }
    List<JsonNode> packs = new ArrayList<>();
    for (Path file : files) {
      JsonNode pack = new ObjectMapper().readTree(Files.readAllBytes(file));
      if (hasPublishedRule(pack)) {
        packs.add(pack);
      }
    }
    return packs;
  }

  private static boolean hasPublishedRule(JsonNode pack) {
    boolean all = !pack.path("sources").isEmpty();
    for (JsonNode source : pack.path("sources")) {
      all &= source.path("basis").asText().equals("published");
    }
    return all;
  }

  private void pack(JsonNode pack) {
    out.append("\n## ").append(pack.path("title").asText()).append("\n\n");
    out.append("Pack `").append(pack.path("pack").asText()).append("`. ");
    out.append(pack.path("notice").asText()).append("\n\n");
    out.append("| rule | kind | asks | when | in force | section | how it was read |\n");
    out.append("|---|---|---|---|---|---|---|\n");
    for (JsonNode rule : pack.path("rules")) {
      rule(pack, rule);
    }
    for (Map.Entry<String, JsonNode> table : pack.path("tables").properties()) {
      table(table.getKey(), table.getValue());
    }
  }

  private void rule(JsonNode pack, JsonNode rule) {
    List<JsonNode> texts = new ArrayList<>();
    rule.path("inForce").forEach(texts::add);
    if (texts.isEmpty()) {
      texts.add(rule);
    }
    for (JsonNode text : texts) {
      String source = text.path("source").asText(rule.path("source").asText());
      String kind = rule.path("kind").asText();
      textCount += text.has("require") ? 1 : 0;
      undated += days(text).equals(NO_DAY) ? 1 : 0;
      if (text.has("require") && !kind.equals("omission")) {
        limits++;
      }
      row(
          "`" + rule.path("id").asText() + "`",
          rule.has("ask") ? "ask" : kind,
          text.has("require")
              ? "`" + text.path("require").asText() + "`"
              : rule.path("ask").asText(),
          rule.has("when") ? "`" + rule.path("when").asText() + "`" : "",
          days(text),
          section(pack.path("sources").path(source)),
          read(pack.path("sources").path(source)));
    }
  }

  private static String days(JsonNode text) {
    String from = text.path("from").asText("");
    String until = text.path("until").asText("");
    if (from.isEmpty() && until.isEmpty() && text.has("require")) {
      return NO_DAY;
    }
    return ((from.isEmpty() ? "" : "from " + from) + (until.isEmpty() ? "" : " until " + until))
        .trim();
  }

  private static String section(JsonNode source) {
    return "["
        + source.path("section").asText()
        + "]("
        + source.path("address").asText().replace("(", "%28").replace(")", "%29")
        + ")";
  }

  private static String read(JsonNode source) {
    String note = source.path("note").asText("");
    String day = ", read " + source.path("read").asText();
    return source.path("edition").asText() + day + (note.isEmpty() ? "" : ". " + note);
  }

  private void table(String name, JsonNode table) {
    List<String> keys = new ArrayList<>();
    table.path("by").forEach(key -> keys.add("`" + key.asText() + "`"));
    out.append("\nTable `").append(name).append("`:\n\n");
    out.append("| ").append(String.join(" | ", keys)).append(" | gives |\n");
    out.append("|").append("---|".repeat(keys.size() + 1)).append("\n");
    for (JsonNode row : table.path("rows")) {
      List<String> cells = new ArrayList<>();
      for (JsonNode cell : row.path("when")) {
        cells.add(cell.isArray() ? words(cell) : cell.asText());
      }
      cells.add(row.path("value").asText());
      row(cells.toArray(String[]::new));
      limits++;
    }
  }

  private static String words(JsonNode list) {
    List<String> words = new ArrayList<>();
    list.forEach(word -> words.add(word.asText()));
    return String.join(", ", words);
  }

  private void row(String... cells) {
    out.append("|");
    for (String cell : cells) {
      out.append(' ').append(cell.replace("|", "\\|")).append(" |");
    }
    out.append('\n');
  }
}
