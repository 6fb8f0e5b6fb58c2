package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.RecordReader;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.RuleResult;
import org.wellcurb.screening.Screener;

/** A figure that hardly any well has stands among what to do first, for it hides what it breaks. */
class FarOffTest {
  private static final LocalDate AS_OF = LocalDate.of(2026, 1, 1);

  private static final Map<String, String> FORM =
      Map.ofEntries(
          Map.entry("record.datum", "ground"),
          Map.entry("well.depth", "200 ft"),
          Map.entry("well.casing_depth", "200 ft"),
          Map.entry("well.casing_diameter", "6 in"),
          Map.entry("water.static_level", "40 ft"),
          Map.entry("tank.volume", "20 gal"),
          Map.entry("relief.fitted", "yes"),
          Map.entry("relief.setting", "75 psi"),
          Map.entry("tank.pressure_rating", "100 psi"),
          Map.entry("well.casing_material", "steel"),
          Map.entry("well.casing_schedule", "40"),
          Map.entry("well.casing_size_is", "nominal"),
          Map.entry("well.open_hole", "no"),
          Map.entry("drop_pipe.length", "150 ft"),
          Map.entry("drop_pipe.inside_diameter", "1 in"),
          Map.entry("service_line.length", "50 ft"),
          Map.entry("service_line.inside_diameter", "1 in"),
          Map.entry("well.stickup", "1 ft"));

  private static String sheet(Map<String, String> form, Language language) throws Exception {
    Screener screener = new Screener(PackLoader.load("common-practice"), AS_OF);
    return new Pages(new PageStyle(language, UnitsShown.AS_WRITTEN))
        .sheet(screener.result(RecordReader.of(form)), AS_OF, "");
  }

  @Test
  void aRatingInAnotherUnitIsAskedAbout() throws Exception {
    assertFalse(sheet(FORM, Language.EN).contains("wells hardly have"));
    Map<String, String> form = new HashMap<>(FORM);
    form.put("tank.pressure_rating", "690 psi");
    String sheet = sheet(form, Language.EN);
    int first = sheet.indexOf("Check this figure, wells hardly have it");
    assertTrue(first > 0 && first < sheet.indexOf("id=\"outcomes\""), sheet);
    assertTrue(sheet.substring(first, first + 200).contains("690 psi"), sheet.substring(first));
    assertTrue(sheet(form, Language.FR).contains("Vérifier ce chiffre"));
  }

  /**
   * Outcomes are as the figure stands; the sheet says what it meets, and doubts before it praises.
   */
  @Test
  void whatSuchAFigureMeetsIsMetAsItStandsAndSaysSo() throws Exception {
    Map<String, String> form = new HashMap<>(FORM);
    form.put("pump.type", "submersible");
    form.put("pump.control", "switch");
    form.put("relief.setting", "200 psi");
    form.put("tank.pressure_rating", "690 psi");
    Screener screener = new Screener(PackLoader.load("common-practice"), AS_OF);
    RuleResult within = result(screener, form, "relief-holds-tank");
    assertEquals(Outcome.MEETS, within.outcome());
    assertTrue(within.explanation().remarks().toString().contains("tank pressure rating"));
    String sheet = sheet(form, Language.EN);
    int doubt = sheet.indexOf("Check this figure");
    int nothing = sheet.indexOf("Nothing falls short");
    assertTrue(doubt > 0 && (nothing < 0 || doubt < nothing), sheet);
    form.put("relief.setting", "75 psi");
    form.put("tank.pressure_rating", "100 psi");
    RuleResult known = result(screener, form, "relief-holds-tank");
    assertEquals(Outcome.MEETS, known.outcome());
    assertFalse(known.explanation().remarks().toString().contains("tank pressure rating"));
  }

  private static int rule(Screener screener, String id) {
    List<Rule> rules = screener.pack().rules();
    for (int i = 0; i < rules.size(); i++) {
      if (rules.get(i).id().equals(id)) {
        return i;
      }
    }
    throw new AssertionError(id);
  }

  private static RuleResult result(Screener screener, Map<String, String> form, String id) {
    return screener.result(RecordReader.of(form)).results().get(rule(screener, id));
  }

  /** A sheet that says how much chlorine to take says how to handle it. */
  @Test
  void aQuantityOfChlorineComesWithItsCaution() throws Exception {
    String caution = "plain unscented hypochlorite";
    Map<String, String> done = new HashMap<>(FORM);
    done.put("dates.completed", "2025-05-01");
    done.put("disinfection.done", "yes");
    done.put("dates.disinfected", "2025-05-02");
    done.put("disinfection.dose", "50 mg/L");
    done.put("disinfection.contact_time", "24 h");
    done.put("disinfection.residual", "10 mg/L");
    assertTrue(sheet(done, Language.EN).contains(caution));
    done.remove("water.static_level");
    assertFalse(sheet(done, Language.EN).contains(caution));
  }
}
