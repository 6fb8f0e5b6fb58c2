package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;

/** What a sheet asks for, and in which order. */
class AsksTest {
  private static List<String> asks(Map<String, String> form) throws PackException {
    Screener screener = new Screener(PackLoader.load("fenwick-county"), LocalDate.of(2026, 1, 1));
    return screener.result(RecordReader.of(form)).asks().stream().map(Ask::entry).toList();
  }

  private static Map<String, String> form(String... cells) {
    Map<String, String> form = new HashMap<>(Map.of("record.id", "A", "well.use", "household"));
    for (int i = 0; i < cells.length; i += 2) {
      form.put(cells[i], cells[i + 1]);
    }
    return form;
  }

  @Test
  void whatHarmsFirstIsAskedForFirst() throws PackException {
    List<String> asks = asks(form("dates.completed", "2015-05-01", "well.depth", "120 ft"));
    int sample = asks.indexOf("sample.coliform");
    int sewage = asks.indexOf("setback.septic_tank");
    int head = asks.indexOf("well.head");
    int grout = asks.indexOf("grout.bottom");
    assertTrue(0 <= sample && sample < sewage && sewage < head && head < grout, asks::toString);
    assertTrue(sample < 3, asks::toString);
    assertFalse(asks.contains("sample.coliform_again"), asks::toString);
  }

  @Test
  void noReliefValveHasASettingToAskFor() throws PackException {
    List<String> asks =
        asks(
            form(
                "pump.type", "submersible",
                "pump.control", "switch",
                "relief.fitted", "no",
                "drop_pipe.pressure_rating", "160 psi",
                "drop_pipe.material", "pe",
                "service_line.pressure_rating", "160 psi",
                "service_line.material", "pe"));
    assertTrue(asks.contains("pump.shutoff_pressure"), asks::toString);
    assertFalse(asks.stream().anyMatch(key -> key.startsWith("relief.")), asks::toString);
    assertFalse(asks.contains("pressure.set_point"), asks::toString);
  }

  @Test
  void aFormOfThePumpAloneIsNotAskedForTheSite() throws PackException {
    Map<String, String> form =
        form("record.covers", "pump", "pump.type", "submersible", "dates.completed", "1974-05-01");
    List<String> asks = asks(form);
    assertFalse(
        asks.stream().anyMatch(key -> key.startsWith("setback.") || key.startsWith("site.s")),
        asks::toString);
    assertFalse(asks.contains("dates.completed"), asks::toString);
    form.put("record.covers", "well and pump");
    assertTrue(asks(form).contains("setback.septic_tank"));
  }

  @Test
  void nothingThatIsFilledIsAskedFor() throws PackException {
    Map<String, String> form = form("dates.completed", "2009", "well.depth", "120 ft");
    List<String> before = asks(form);
    assertTrue(before.contains("dates.completed"), before::toString);
    form.put("dates.completed", "2009-06-01");
    assertFalse(asks(form).contains("dates.completed"));
    assertEquals(List.of(), asks(form).stream().filter(form::containsKey).toList());
  }

  /** A form that has no open hole has none of which the diameter could be told. */
  @Test
  void whatNothingHangsOnIsNotAskedFor() throws PackException {
    Map<String, String> form =
        form(
            "record.datum", "ground",
            "pump.type", "submersible",
            "pump.rated_flow", "10 gpm",
            "pump.motor_diameter", "3.75 in",
            "pump.power", "3 hp",
            "pump.flow_sleeve", "no",
            "water.static_level", "40 ft",
            "water.yield", "2 gpm",
            "well.depth", "120 ft",
            "well.casing_depth", "60 ft",
            "well.open_hole", "no");
    List<String> asks = asks(form);
    assertTrue(asks.contains("well.casing_diameter"), asks::toString);
    for (String idle :
        List.of("well.open_hole_diameter", "pump.sleeve_diameter", "well.casing_length")) {
      assertFalse(asks.contains(idle), asks::toString);
    }
    form.put("well.open_hole", "yes");
    assertTrue(asks(form).contains("well.open_hole_diameter"), () -> asks + "");
  }

  /** Bacteria that a later sample did not show may come again, and the sheet says so. */
  @Test
  void aClearSampleAfterOneWithBacteriaIsNoProof() throws PackException {
    Map<String, String> form =
        form(
            "sample.coliform", "present",
            "sample.e_coli", "absent",
            "dates.disinfected", "2021-04-20",
            "dates.sampled", "2021-04-27",
            "dates.sampled_again", "2021-05-20",
            "sample.coliform_again", "absent");
    Screener screener = new Screener(PackLoader.load("fenwick-county"), LocalDate.of(2026, 1, 1));
    RecordResult result = screener.result(RecordReader.of(form));
    assertTrue(result.cautions().contains("coliform.again"), result.cautions()::toString);
    assertTrue(hasFinding(result, "disinfected-before-clear-sample"));
    form.put("dates.disinfected", "2021-05-02");
    assertFalse(
        hasFinding(screener.result(RecordReader.of(form)), "disinfected-before-clear-sample"));
    form.put("sample.coliform_again", "present");
    assertFalse(screener.result(RecordReader.of(form)).cautions().contains("coliform.again"));
  }

  private static boolean hasFinding(RecordResult result, String rule) {
    return result.findings().stream().anyMatch(each -> each.rule().id().equals(rule));
  }

  /** What the water passes the motor in is the open hole or the casing, by where the pump hangs. */
  @Test
  void whereThePumpHangsIsAskedForOfAWellWithAnOpenHole() throws PackException {
    Map<String, String> form =
        form(
            "record.datum", "ground",
            "pump.type", "submersible",
            "pump.power", "3 hp",
            "pump.rated_flow", "10 gpm",
            "pump.motor_diameter", "3.75 in",
            "well.casing_depth", "60 ft",
            "well.casing_diameter", "7.3 in",
            "well.casing_size_is", "nominal",
            "well.open_hole_diameter", "6 in");
    Screener screener = new Screener(PackLoader.load("common-practice"), LocalDate.of(2026, 1, 1));
    RuleResult cooled =
        screener.result(RecordReader.of(form)).results().stream()
            .filter(result -> result.rule().id().equals("motor-cooled"))
            .findFirst()
            .orElseThrow();
    assertTrue(
        cooled.explanation().needs().contains("pump.intake_depth"),
        () -> cooled.explanation().needs() + "");
  }
}
