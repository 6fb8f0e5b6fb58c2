package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.RecordReader;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.screening.Screener;

/** What a text recommends is not called common practice, nor the other way round. */
class RecommendedTest {
  private static final LocalDate AS_OF = LocalDate.of(2026, 1, 1);
  private static final String HEADING = "<p class=\"kind\">";

  /** A test too short for a published text, and a cable tied too seldom for common practice. */
  private static final Map<String, String> OF_TEXT =
      Map.of("water.yield", "5 gpm", "water.test_duration", "1 h");

  private static final Map<String, String> OF_PRACTICE = Map.of("pump.cable_tie_spacing", "25 ft");

  private static String sheet(Map<String, String> form, Language language) throws Exception {
    return new Pages(new PageStyle(language, UnitsShown.AS_WRITTEN))
        .sheet(
            new Screener(PackLoader.load("connecticut"), AS_OF).result(RecordReader.of(form)),
            AS_OF,
            "");
  }

  private static long headings(String sheet, String heading) {
    return sheet.split(Pattern.quote(HEADING + heading), -1).length - 1L;
  }

  @Test
  void aTextIsSaidToRecommend() throws Exception {
    String sheet = sheet(OF_TEXT, Language.EN);
    assertTrue(sheet.contains("Look at one recommendation of the text named:"), sheet);
    assertEquals(1, headings(sheet, "Advisory: a recommendation of the text named"));
    assertEquals(0, headings(sheet, "Advisory: common practice"));
    sheet = sheet(OF_TEXT, Language.FR);
    assertTrue(sheet.contains("Regarder une recommandation du texte"), sheet);
    assertTrue(sheet.contains("e de lui, n"), "the heading in French");
  }

  @Test
  void commonPracticeIsSaidToBeSo() throws Exception {
    String sheet = sheet(OF_PRACTICE, Language.EN);
    assertTrue(sheet.contains("Look at one point of common practice:"), sheet);
    assertEquals(1, headings(sheet, "Advisory: common practice is not followed"));
    assertEquals(0, headings(sheet, "Advisory: a recommendation"));
  }
}
