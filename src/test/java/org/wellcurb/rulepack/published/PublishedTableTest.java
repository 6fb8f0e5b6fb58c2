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
        String note = source.path("note").asText("").toLowerCase(Locale.ROOT);
        boolean isDoubtful =
            note.contains("unofficial")
                || note.contains("second-hand")
                || note.contains("restatement")
                || note.contains("an inference")
                || note.contains("number is inferred");
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
}
