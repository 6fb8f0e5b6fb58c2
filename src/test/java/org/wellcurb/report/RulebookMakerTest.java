package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.wellcurb.report.RulebookPage.RulePrint;
import org.wellcurb.report.RulebookPage.SourcePrint;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
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

  @Test
  void whatIsOursSpeaksTheLanguageOfThePage() throws Exception {
    PageStyle french = new PageStyle(Language.FR, UnitsShown.AS_WRITTEN);
    Map<String, RulePrint> rules = new HashMap<>();
    new RulebookMaker(PackLoader.load("fenwick-county"), french)
        .page()
        .groups()
        .forEach(group -> group.rules().forEach(rule -> rules.put(rule.id(), rule)));
    RulePrint ours = Objects.requireNonNull(rules.get("applies-well-depth"));
    assertEquals("Profondeur finie : n'est pas dit sans objet", ours.title());
    assertTrue(ours.remedy().startsWith("Écrire sa valeur"), ours.remedy());
    // A rule that a pack writes about the same is the pack's own.
    RulePrint own = Objects.requireNonNull(rules.get("casing-applies"));
    assertEquals("The form does not say n/a of the casing", own.title());
    RulePrint distance = Objects.requireNonNull(rules.get("surface-water-distance"));
    String given = distance.examples().toString();
    assertTrue(given.contains("Usage du puits : domestique"), given);
  }

  @Test
  void wordsStandAsThePackWritesThem() throws Exception {
    String virginia = page("virginia").groups().toString();
    assertTrue(virginia.contains("is IIIB"), virginia);
  }

  private static RulebookPage page(String pack) throws Exception {
    return new RulebookMaker(PackLoader.load(pack), PageStyle.PLAIN).page();
  }
}
