package org.wellcurb.rulepack.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The table of published limits agrees with the packs, and each limit says how it was read. */
class PublishedTableTest {
  private static final Path PAGE = Path.of("rules", "PUBLISHED.md");
  private static final Path FRESH = Path.of("target", "PUBLISHED.md");

  @Test
  void pageAgreesWithThePacks() throws IOException {
    String fresh = PublishedTable.render();
    Files.createDirectories(FRESH.getParent());
    Files.writeString(FRESH, fresh, StandardCharsets.UTF_8);
    String page = Files.exists(PAGE) ? Files.readString(PAGE, StandardCharsets.UTF_8) : "";
    assertEquals(
        fresh, page, PAGE + " is out of date: copy " + FRESH + " over it, having read the change");
  }

  @Test
  void whatWasNotReadInTheTextItselfIsAnAdvisoryThatSaysSo() throws IOException {
    List<String> silent = new ArrayList<>();
    for (JsonNode pack : PublishedTable.packs()) {
      for (JsonNode rule : pack.path("rules")) {
        JsonNode source = pack.path("sources").path(rule.path("source").asText());
        String note =
            (source.path("edition").asText("") + source.path("note").asText(""))
                .toLowerCase(Locale.ROOT);
        boolean isDoubtful =
            note.contains("unofficial")
                || note.contains("second-hand")
                || note.contains("restatement")
                || note.contains("an inference")
                || note.contains("inferred");
        if (isDoubtful && !rule.path("kind").asText().equals("advisory")) {
          silent.add(pack.path("pack").asText() + " " + rule.path("id").asText());
        }
      }
    }
    assertEquals(List.of(), silent);
  }

  @Test
  void everyPackSaysWhatItIsOnItsFace() throws IOException {
    List<JsonNode> packs = PublishedTable.packs();
    assertTrue(packs.size() >= 12, "there are " + packs.size());
    for (JsonNode pack : packs) {
      String notice = pack.path("notice").asText();
      String name = pack.path("pack").asText();
      for (String must :
          List.of("in our own words", "not legal", "ask the", "left out|and so not here")) {
        boolean says = false;
        for (String either : must.split("\\|", -1)) {
          says |= notice.contains(either);
        }
        assertTrue(says, name + " does not say: " + must);
      }
    }
  }

  @Test
  void everySourceSaysWhichEditionItIsAndWhenItWasRead() throws IOException {
    List<String> silent = new ArrayList<>();
    int sources = 0;
    for (JsonNode pack : PublishedTable.packs()) {
      String name = pack.path("pack").asText();
      for (Map.Entry<String, JsonNode> source : pack.path("sources").properties()) {
        sources++;
        for (String key : List.of("title", "section", "edition", "read", "address")) {
          if (source.getValue().path(key).asText("").isBlank()) {
            silent.add(name + " " + source.getKey() + " has no " + key);
          }
        }
      }
      if (!pack.path("notice").asText().matches(".*Read on \\d{4}-\\d{2}-\\d{2} .*")) {
        silent.add(name + " does not say on its face when it was read");
      }
    }
    assertTrue(sources >= 200, "there are " + sources);
    assertEquals(List.of(), silent);
  }

  @Test
  void everyPackHasEnoughRulesToBeUseful() throws IOException {
    List<String> few = new ArrayList<>();
    for (JsonNode pack : PublishedTable.packs()) {
      int judged = 0;
      for (JsonNode rule : pack.path("rules")) {
        judged += rule.has("ask") ? 0 : 1;
      }
      if (judged < 5) {
        few.add(pack.path("pack").asText() + " has " + judged);
      }
    }
    assertEquals(List.of(), few);
  }
}
