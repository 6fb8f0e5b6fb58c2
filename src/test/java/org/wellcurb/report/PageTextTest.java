package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;

/** What sheets say in words. */
final class PageTextTest {
  private static final LocalDate AS_OF = LocalDate.of(2026, 1, 1);

  private static String sheet(WellRecord record, Language language) {
    PageStyle style = new PageStyle(language, UnitsShown.AS_WRITTEN);
    return new Pages(style).sheet(Results.of(record), AS_OF, "");
  }

  @Test
  void aYieldThatIsMoreThanTheBusiestHoursDrawIsSaidInFull() {
    WellRecord plenty =
        new Form("W-1")
            .text("record.units", "us")
            .text("well.use", "household")
            .amount("site.dwellings", 1, Units.ONE)
            .amount("site.bedrooms", 4, Units.ONE)
            .amount("site.occupants", 4, Units.ONE)
            .amount("water.yield", 9, Units.GPM)
            .amount("pump.rated_flow", 10, Units.GPM)
            .amount("well.casing_diameter", 6, Units.INCH)
            .amount("water.static_level", 44, Units.FOOT)
            .amount("pump.intake_depth", 240, Units.FOOT)
            .amount("tank.volume", 44, Units.US_GALLON)
            .amount("pressure.cut_in", 40, Units.PSI_UNIT)
            .amount("pressure.cut_out", 60, Units.PSI_UNIT)
            .amount("tank.precharge", 38, Units.PSI_UNIT)
            .record();
    // 9 gpm over 2 h are 1080 gal, over a day 12960.
    assertTrue(sheet(plenty, Language.EN).contains("(it could give 1080 gal)"));
    assertTrue(sheet(plenty, Language.EN).contains("12960 gal"));
    assertTrue(sheet(plenty, Language.FR).contains("(au plus 1080 gal)"));
  }

  @Test
  void theWordsOfADrawingTellItsLettersToo() {
    String sheet = sheet(Forms.full(), Language.EN);
    assertTrue(sheet.contains("<li>Letter A: "), "as the drawing marks them");
    assertTrue(sheet(Forms.full(), Language.FR).contains("<li>Lettre A\u00a0: "));
  }

  @Test
  void aFrenchSheetNamesCommonPracticeInFrenchAndSaysOnceThatPacksAreEnglish() {
    String sheet = sheet(Forms.full(), Language.FR);
    assertFalse(sheet.contains("<span lang=\"en\">common practice</span>"));
    assertFalse(sheet.contains("(from memory)</span>"));
    assertTrue(sheet.contains("pratique courante"));
    assertEquals(2, sheet.split("pas de version française", -1).length);
    assertEquals(1, sheet(Forms.full(), Language.EN).split("in the language of", -1).length);
  }
}
