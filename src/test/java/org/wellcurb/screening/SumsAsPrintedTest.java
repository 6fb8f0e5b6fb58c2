package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wellcurb.formula.Speech;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.workings.Working;
import org.wellcurb.workings.WorkingCatalogue;

/** How the numbers stand in a printed sum: brackets, signs, words, the language. */
class SumsAsPrintedTest {
  private static final Map<String, String> FORM =
      Map.ofEntries(
          Map.entry("record.datum", "ground"),
          Map.entry("well.depth", "200 ft"),
          Map.entry("well.casing_length", "62 ft"),
          Map.entry("well.stickup", "1 ft to 2 ft"),
          Map.entry("well.rock_depth", "40 ft"),
          Map.entry("well.casing_material", "STEEL"),
          Map.entry("well.casing_diameter", "6 in"),
          Map.entry("well.casing_size_is", "nominal"),
          Map.entry("well.bore_diameter", "10 in"),
          Map.entry("water.static_level", "-5 ft"),
          Map.entry("water.pumping_level", "80 ft to 90 ft"),
          Map.entry("water.test_rate", ">10 gpm"),
          Map.entry("pump.intake_depth", "150 ft"),
          Map.entry("pump.shutoff_pressure", "127 psi"),
          Map.entry("pump.rated_flow", "7 gpm"),
          Map.entry("pressure.switch_height", "-8 ft"),
          Map.entry("pressure.cut_in", "40 psi"),
          Map.entry("pressure.cut_out", "60 psi"),
          Map.entry("service_line.burial_depth", "5 ft"),
          Map.entry("relief.fitted", "N"));

  private static WorkingShown shown(Map<String, String> form, String name, Speech speech)
      throws Exception {
    Screener screener =
        new Screener(PackLoader.load("common-practice"), LocalDate.of(2026, 1, 1), speech);
    return screener.result(RecordReader.of(form)).workings().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Speech french() {
    return new Speech(
        Locale.FRENCH,
        UnitSystem.NEUTRAL,
        Speech::plainLabel,
        choice -> choice.equals("steel") ? "acier" : choice);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          drawdown                | (80 ft to 90 ft) - (-5 ft)
          available_drawdown      | 150 ft - (-5 ft)
          casing_into_rock        | (not known, or 62 ft - (1 ft to 2 ft)) - 40 ft
          annulus_width           | (10 in - 6.625 in) / 2
          lift                    | (-5 ft to 61.5 ft) + (-8 ft)
          pressure_on_service_line| min(132.64 psi, none) + 0 psi; 60 psi
          cooling_velocity        | 7 gpm / (pi/4 x ((6.065 in)^2 - (3.75 in)^2))
          """)
  void bracketsKeepAmountsTogether(String name, String sum) throws Exception {
    Map<String, String> form = new HashMap<>(FORM);
    form.put("pump.motor_diameter", "3.75 in");
    form.put("well.casing_schedule", "40");
    assertEquals(sum, shown(form, name, Speech.plain()).withNumbers());
  }

  @Test
  void noReliefValveIsNoneAndNotUnknown() throws Exception {
    Map<String, String> form = new HashMap<>(FORM);
    String without = shown(form, "drop_pipe_net_pressure", Speech.plain()).withNumbers();
    assertTrue(without.contains("none") && !without.contains("not known"), without);
    form.put("relief.fitted", "yes");
    form.put("relief.setting", "75 psi");
    String maybe = shown(form, "pressure_on_service_line", Speech.plain()).withNumbers();
    assertTrue(maybe.contains("75 psi or more"), maybe);
    form.remove("relief.setting");
    String unknown = shown(form, "pressure_on_service_line", Speech.plain()).withNumbers();
    assertTrue(unknown.contains("not known"), unknown);
  }

  @Test
  void aFrenchSumIsFrench() throws Exception {
    Map<String, String> form = new HashMap<>(FORM);
    form.put("well.stickup", "1.5 ft");
    WorkingShown rock = shown(form, "casing_into_rock", french());
    assertEquals("(inconnu, ou 62 pi - 1,5 pi) - 40 pi", rock.withNumbers());
    assertTrue(rock.formula().contains(", ou "), rock.formula());
    WorkingShown size = shown(form, "casing_outside_diameter", french());
    assertEquals("6 po, nominal, acier: 6,625 po", size.withNumbers());
    WorkingShown power = shown(form, "least_power", french());
    assertTrue(
        power.withNumbers().startsWith("1000 kg/m3 x 9,80665 m/s2 x 7 gal/min"),
        power::withNumbers);
  }

  /**
   * What stands between the places of a formula: signs, figures, units, and words of the bundle.
   */
  @Test
  void everyWordOfAFormulaIsPutIntoFrench() {
    Set<String> alike = Set.of("max", "min", "ln", "pi");
    Pattern word = Pattern.compile("up to|[a-z]{2,}+(?![/\\d])");
    Set<String> lacking = new TreeSet<>();
    ResourceBundle french = ResourceBundle.getBundle("org.wellcurb.formula.phrases", Locale.FRENCH);
    for (Working working : WorkingCatalogue.standard().workings()) {
      word.matcher(working.formula().replaceAll("\\{[^}]*}", "#"))
          .results()
          .map(found -> found.group())
          .filter(found -> !alike.contains(found))
          .filter(found -> !french.containsKey("formula." + found.replace(' ', '-')))
          .forEach(lacking::add);
      for (String figure : working.figures()) {
        if (!french.containsKey("figure." + figure)) {
          lacking.add(figure);
        }
      }
    }
    assertEquals(Set.of(), lacking, List.of("words without French").toString());
  }
}
