package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Where it is written that an entry must be there, a finding of its lack says so. */
class MustApplySourceTest {
  private static final String FOLDER = "src/test/resources/doubtful-packs/";

  private static List<String> sections(String name) throws PackException {
    return PackLoader.load(FOLDER + name).rules().stream()
        .filter(MustApply::isOne)
        .map(rule -> rule.source().basis().label() + " " + rule.source().section())
        .toList();
  }

  @Test
  void theRuleOfEachEntryRestsOnIt() throws PackException {
    assertEquals(List.of("invented 9", "invented 9"), sections("must-apply-with-a-source"));
  }

  @Test
  void withoutOneItIsAFactOfTheTrade() throws PackException {
    Pack fenwick = PackLoader.load("rules/fenwick-county");
    assertEquals(
        List.of(Source.Basis.COMMON_PRACTICE, Source.Basis.COMMON_PRACTICE),
        fenwick.rules().stream()
            .filter(MustApply::isOne)
            .map(rule -> rule.source().basis())
            .toList());
  }
}
