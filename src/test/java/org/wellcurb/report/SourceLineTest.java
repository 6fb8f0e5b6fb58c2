package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Source;

/** A source is printed with all that tells how far it can be trusted. */
class SourceLineTest {
  @Test
  void theDayOnWhichASourceWasReadIsSaid() throws Exception {
    Source source = PackLoader.load("wisconsin").sources().get("nr-812-42-e");
    assertEquals("2026-11-25", String.valueOf(source.read()));
    String english = SourceLine.of(source, Words.in(Language.EN)).text();
    assertTrue(english.contains("current through 2024-08-26, read 2026-11-25 ("), english);
    String french = SourceLine.of(source, Words.in(Language.FR)).text();
    assertTrue(french.contains("current through 2024-08-26, lu le 2026-11-25 ("), french);
  }
}
