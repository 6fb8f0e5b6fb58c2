package org.wellcurb.rulepack.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;

/** Every fact that was read is held by a rule, or is left out with a reason that the page gives. */
class LeftOutTest {
  private static final Path PAGE = Path.of("rules", "LEFT-OUT.md");
  private static final Path FRESH = Path.of("target", "LEFT-OUT.md");

  @BeforeAll
  static void runTheTestsBySection() throws ReflectiveOperationException, IOException {
    Facts.forget();
    TestsBySection.run();
  }

  @Test
  void everyFactIsHeldOrLeftOutWithAReason() {
    List<String> lost = new ArrayList<>();
    int held = 0;
    for (CSVRecord row : Facts.rows()) {
      held += LeftOut.isHeld(row) ? 1 : 0;
      if (!LeftOut.isHeld(row) && LeftOut.reason(row).isEmpty()) {
        lost.add(row.toList().subList(0, 6).toString());
      }
    }
    assertTrue(held >= 450, "only " + held + " are held");
    assertEquals(List.of(), lost);
  }

  @Test
  void everyReasonIsNeededAndEveryRuleItNamesIsThere() throws PackException {
    List<String> idle = new ArrayList<>();
    for (CSVRecord reason : LeftOut.reasons()) {
      boolean isUsed =
          Facts.rows().stream()
              .filter(row -> !Facts.isStated(row) && !Facts.isFromMemory(row))
              .anyMatch(row -> LeftOut.first(row) == reason);
      if (!isUsed) {
        idle.add(reason.toList().toString());
      }
      String rule = LeftOut.rule(reason.get("reason"));
      if (!rule.isEmpty() && !hasRule(rule)) {
        idle.add("there is no rule " + rule);
      }
    }
    assertEquals(List.of(), idle);
  }

  @Test
  void pageAgreesWithTheFacts() throws IOException {
    String fresh = LeftOut.page();
    Files.createDirectories(FRESH.getParent());
    Files.writeString(FRESH, fresh, StandardCharsets.UTF_8);
    String page = Files.exists(PAGE) ? Files.readString(PAGE, StandardCharsets.UTF_8) : "";
    assertTrue(
        fresh.equals(page),
        PAGE + " is out of date: copy " + FRESH + " over it, having read the change");
  }

  private static boolean hasRule(String name) throws PackException {
    int slash = name.indexOf('/');
    return PackLoader.load(name.substring(0, slash)).rules().stream()
        .anyMatch(rule -> rule.id().equals(name.substring(slash + 1)));
  }
}
