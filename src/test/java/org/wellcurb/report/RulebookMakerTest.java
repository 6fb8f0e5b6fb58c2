package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.report.RulebookPage.SourcePrint;
import org.wellcurb.rulepack.PackLoader;

/** What a rulebook says of its pack is so. */
class RulebookMakerTest {
  @Test
  void aRuleCountsForTheSourceOfEachOfItsDatedTexts() throws Exception {
    Map<String, Integer> rules = new HashMap<>();
    for (SourcePrint source : page("quebec").sources()) {
      rules.put(source.id(), source.rules());
      assertTrue(source.rules() > 0, source.id());
    }
    // Two rules of distances read the older text, and no rule's last text does.
    assertEquals(2, rules.get("r35-2-17-1"));
  }

  private static RulebookPage page(String pack) throws Exception {
    return new RulebookMaker(PackLoader.load(pack), PageStyle.PLAIN).page();
  }
}
