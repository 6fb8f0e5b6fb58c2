package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What the index page says of the batch as a whole. */
class CrossMakerTest {
  private static CrossPage.Part part(CrossView view, String title) {
    return new CrossMaker(view, PageStyle.PLAIN)
        .page().parts().stream()
            .filter(part -> part.title().startsWith(title))
            .findFirst()
            .orElseThrow();
  }

  /**
   * Remarks on how far the search went stand among the sentences, and are none of what is shown.
   */
  @Test
  void remarksAreNotCounted() {
    CrossView view = Crosses.view(60, 5);
    CrossPage.Part near = part(view, "Records that are nearly the same");
    assertEquals("Shown: 4 of 60. All are in crosscheck.json.", near.cut());
    assertEquals(5, near.sentences().size(), "and how many could not be laid beside all others");
    CrossPage.Part rules = part(view, "Rules that one group");
    assertEquals("Shown: 3 of 5. All are in crosscheck.json.", rules.cut());
    assertEquals(6, rules.sentences().size(), "and what was left out of the comparison");
    assertTrue(part(Crosses.view(4, 3), "Records that are nearly").cut().isEmpty());
  }

  /** A list of wells unlike their neighbours says nothing of a figure that was not compared. */
  @Test
  void saysWhatWasNotComparedAndWhy() {
    CrossPage.Part unlike = part(Crosses.view(), "Wells unlike");
    List<String> said = unlike.sentences();
    assertTrue(
        said.contains("depth: 200 wells were compared with their neighbours."), said::toString);
    assertTrue(
        said.contains(
            "height of the water above the sea: not compared: no well has neighbours enough that"
                + " agree."),
        said::toString);
    assertTrue(
        said.stream()
            .anyMatch(
                each ->
                    each.startsWith(
                        "yield: not compared: neighbours do not agree enough here. 90 wells")),
        said::toString);
    assertEquals("Shown: 3 of 5. All are in crosscheck.json.", unlike.cut());
  }
}
