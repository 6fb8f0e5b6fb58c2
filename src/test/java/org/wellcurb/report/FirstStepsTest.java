package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.RecordReader;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.screening.Screener;

/** What a sheet says to do first, and in which order. */
class FirstStepsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 1, 1);
  private static final Words WORDS = Words.in(Language.EN);

  private static SheetView sheet(String... form) throws PackException {
    Map<String, String> given = new LinkedHashMap<>();
    given.put("record.id", "W-1");
    given.put("dates.completed", "2020-05-01");
    given.put("well.use", "household");
    for (int i = 0; i < form.length; i += 2) {
      given.put(form[i], form[i + 1]);
    }
    Screener screener =
        new Screener(PackLoader.load("fenwick-county"), DAY, PageStyle.PLAIN.speech());
    return new SheetMaker(screener.result(RecordReader.of(given)), PageStyle.PLAIN, finding -> null)
        .sheet(DAY);
  }

  private static List<String> rules(Step step) {
    return step.findings().stream().map(FindingView::ruleId).toList();
  }

  private static List<String> labels(List<AskedEntry> entries) {
    return entries.stream().map(AskedEntry::label).toList();
  }

  @Test
  void unfitWaterComesBeforeAnyOtherLimit() throws PackException {
    SheetView sheet = sheet("setback.septic_tank", "20 ft", "sample.coliform", "present");
    assertEquals(WORDS.say("first.bacteria"), sheet.steps().get(0).text());
    assertEquals(List.of("coliform-absent", "e-coli-stated"), rules(sheet.steps().get(0)));
    assertEquals(List.of("septic-tank-distance"), rules(sheet.steps().get(1)));
    assertTrue(sheet.steps().get(1).text().contains(sheet.askOf()), sheet.steps().toString());
  }

  @Test
  void whatMayHurtSomeoneAnyDayComesNextInTheWordsOfThePack() throws PackException {
    SheetView sheet =
        sheet(
            "sample.coliform", "present",
            "setback.septic_tank", "20 ft",
            "water_heater.relief_valve", "no",
            "pump.type", "submersible",
            "well.casing_material", "steel",
            "wire.casing_bonded", "no");
    assertEquals(WORDS.say("first.bacteria"), sheet.steps().get(0).text());
    assertEquals(List.of("casing-bonded"), rules(sheet.steps().get(1)));
    Step heater = sheet.steps().get(2);
    assertEquals(List.of("heater-relief-valve"), rules(heater));
    assertEquals(WORDS.say("first.at_once", heater.findings().get(0).atOnce()), heater.text());
    assertTrue(heater.isNow());
    assertEquals(List.of("septic-tank-distance"), rules(sheet.steps().get(3)));
    assertTrue(
        sheet.cautions().containsAll(List.of("shock", "heater")), sheet.cautions().toString());
  }

  /** A caution on every sheet is read on none. */
  @Test
  void chlorineIsCautionedAgainstWhereItMustBeHandledOrASumSaysHowMuch() throws PackException {
    SheetView bare = sheet("sample.coliform", "absent");
    assertFalse(bare.cautions().contains("chlorine"), bare.cautions().toString());
    assertFalse(bare.chlorine());
    SheetView bacteria = sheet("sample.coliform", "present");
    assertTrue(bacteria.cautions().contains("chlorine"), bacteria.cautions().toString());
    SheetView sums =
        sheet(
            "well.depth", "200 ft",
            "water.static_level", "30 ft",
            "well.casing_diameter", "6 in",
            "disinfection.dose", "100 mg/L");
    assertFalse(sums.cautions().contains("chlorine"), sums.cautions().toString());
    assertTrue(sums.chlorine(), sums.workings().toString());
  }

  @Test
  void nobodyIsToldToBoilWaterWithNitrate() throws PackException {
    SheetView sheet = sheet("sample.nitrate", "14 mg/L", "sample.coliform", "present");
    assertEquals(WORDS.say("first.bacteria.nitrate"), sheet.steps().get(0).text());
    assertFalse(sheet.steps().get(0).isNow());
    assertEquals(
        WORDS.say("first.nitrate"), sheet("sample.nitrate", "14 mg/L").steps().get(0).text());
  }

  @Test
  void aLaterClearSampleCountsAndOneOfSewageDoesNot() throws PackException {
    assertFalse(
        sheet("sample.coliform", "present", "sample.coliform_again", "absent").steps().stream()
            .anyMatch(step -> step.text().equals(WORDS.say("first.bacteria"))));
    assertEquals(
        WORDS.say("first.bacteria"),
        sheet("sample.e_coli", "present", "sample.coliform_again", "absent").steps().get(0).text());
  }

  @Test
  void whatAReadingWouldSettleWaitsForItAndHasNoLimitInDrawings() throws PackException {
    SheetView sheet =
        sheet(
            "pump.control", "switch",
            "tank.type", "bladder",
            "pressure.cut_in", "60 psi",
            "pressure.cut_out", "40 psi",
            "tank.precharge", "38 psi");
    assertEquals(1, sheet.doubts().size(), sheet.steps().toString());
    Step first = sheet.steps().get(0);
    assertFalse(first.isNow());
    assertTrue(rules(first).contains("cut-in-below-cut-out"), rules(first).toString());
    for (Step later : sheet.steps().subList(1, sheet.steps().size())) {
      assertTrue(rules(later).stream().noneMatch(rules(first)::contains), later.text());
    }
    assertTrue(
        sheet.drawings().stream()
            .filter(drawing -> drawing.id().equals("ladder"))
            .flatMap(drawing -> drawing.words().stream())
            .noneMatch(line -> line.startsWith("Limit")));
  }

  /** Nitrate harms infants, arsenic everyone: the milder advice alone would mislead. */
  @Test
  void nitrateAndArsenicTogetherAreNotForAnyone() throws PackException {
    SheetView sheet = sheet("sample.nitrate", "23 mg/L", "sample.arsenic", "45 ug/L");
    assertEquals(WORDS.say("first.nitrate.arsenic"), sheet.steps().get(0).text());
  }

  /** An intake below the bottom may be a slip of the pen: advice on it waits for that. */
  @Test
  void adviceOnWhatContradictsOtherEntriesWaits() throws PackException {
    SheetView sheet =
        sheet(
            "pump.type", "submersible",
            "pump.intake_depth", "140 ft",
            "well.depth", "130 ft");
    Step last =
        sheet.steps().stream()
            .filter(step -> rules(step).contains("intake-off-bottom"))
            .findFirst()
            .orElseThrow(() -> new AssertionError(sheet.steps().toString()));
    assertEquals(WORDS.count("first.advice.hangs", rules(last).size()), last.text());
  }

  @Test
  void aTestOnASampleThatDoesNotCountIsNotAmongWhatIsMet() throws PackException {
    SheetView sheet =
        sheet(
            "sample.coliform", "absent",
            "dates.sampled", "2020-05-02",
            "dates.disinfected", "2020-05-06");
    assertTrue(sheet.findings().get(0).sentence().contains("(Disinfected on)"));
    OutcomeGroup doubted =
        sheet.outcomes().stream()
            .filter(group -> group.key().equals("outcome.doubted"))
            .findFirst()
            .orElseThrow();
    assertTrue(
        doubted.lines().stream().anyMatch(line -> line.ruleId().equals("coliform-absent")),
        doubted.toString());
    assertFalse(
        sheet.outcomes().stream()
            .filter(group -> group.key().equals("outcome.meets"))
            .flatMap(group -> group.lines().stream())
            .anyMatch(line -> line.ruleId().equals("coliform-absent")));
  }

  /** Whether a rule applies may be all that is open: what it asks for is not met then. */
  @Test
  void limitsAreNamedThatOnlyTheirConditionLeavesOpen() throws PackException {
    SheetView open = sheet("tank.precharge", "46 psi", "pressure.cut_in", "40 psi");
    OpenLimit precharge =
        open.open().stream()
            .filter(each -> each.sentence().startsWith("Tank pre-charge: 46 psi."))
            .findFirst()
            .orElseThrow();
    assertTrue(
        labels(precharge.entries()).contains("How the pump is controlled"), precharge.toString());
    // Below the limit nothing is said, nor where the figure itself leaves it open.
    for (String figure : List.of("38 psi", "35-46 psi", "unknown")) {
      assertEquals(
          List.of(),
          sheet("tank.precharge", figure, "pressure.cut_in", "40 psi").open().stream()
              .filter(each -> each.sentence().contains("pre-charge"))
              .toList(),
          figure);
    }
  }

  @Test
  void nobodyIsToldToBoilWaterWithArsenic() throws PackException {
    SheetView sheet = sheet("sample.arsenic", "25 ug/L", "sample.e_coli", "present");
    assertEquals(WORDS.say("first.bacteria.arsenic"), sheet.steps().get(0).text());
    assertFalse(sheet.steps().get(0).isNow());
    assertTrue(sheet.cautions().containsAll(List.of("bacteria", "arsenic")), "" + sheet.cautions());
    assertEquals(
        WORDS.say("first.arsenic"), sheet("sample.arsenic", "25 ug/L").steps().get(0).text());
  }

  @Test
  void aLaterClearSampleEndsTheCaution() throws PackException {
    String[] later = {"sample.coliform", "present", "sample.coliform_again", "absent"};
    assertFalse(sheet(later).cautions().contains("bacteria"));
    assertTrue(sheet("sample.coliform", "present").cautions().contains("bacteria"));
  }

  @Test
  void whatMayBeOverIsSaidToBeSo() throws PackException {
    SheetView over = sheet("sample.nitrate", ">10 mg/L");
    assertEquals(WORDS.say("first.nitrate"), over.steps().get(0).text());
    assertTrue(over.cautions().contains("nitrate"), "" + over.cautions());
    SheetView perhaps = sheet("sample.nitrate", "9-11 mg/L");
    assertTrue(perhaps.cautions().contains("nitrate.perhaps"), "" + perhaps.cautions());
    assertFalse(perhaps.cautions().contains("nitrate"), "" + perhaps.cautions());
    assertFalse(sheet("sample.nitrate", "10 mg/L").cautions().contains("nitrate"));
  }

  /** A table without a row is a matter for the authority: the driller wrote all there is. */
  @Test
  void aTableWithoutARowIsSaidAndNothingGivenIsAskedFor() throws PackException {
    String[] pitless = {
      "pitless.depth", "5 ft", "pitless.fitted", "yes", "pump.type", "submersible",
      "well.method", "driven", "service_line.burial_depth", "5 ft", "site.zone", "moor"
    };
    SheetView sheet = sheet(pitless);
    Step lacking =
        sheet.steps().stream()
            .filter(step -> step.text().startsWith("A table of limits says nothing"))
            .findFirst()
            .orElseThrow();
    assertTrue(lacking.text().contains("Fenwick County Health Office"), lacking.text());
    assertEquals(List.of("Table frost has no row for Zone moor"), lacking.quoted());
    assertTrue(
        sheet.asks().stream().noneMatch(ask -> labels(ask.entries()).contains("Zone")),
        sheet.asks().toString());
    // A blank is still asked for.
    pitless[pitless.length - 1] = "";
    SheetView blank = sheet(pitless);
    assertTrue(
        blank.asks().stream().anyMatch(ask -> labels(ask.entries()).contains("Zone")),
        blank.asks().toString());
  }

  @Test
  void whatNoRuleOfThePackJudgesIsNamed() throws PackException {
    SheetView sheet =
        sheet("sample.lead", "100 ug/L", "sample.fluoride", "10 mg/L", "sample.iron", "0.2 mg/L");
    String first = sheet.steps().get(0).text();
    assertTrue(first.startsWith("Beyond what federal texts for public water allow"), first);
    assertTrue(first.contains("100 µg/L (limit 15 µg/L)"), first);
    assertTrue(first.contains("10 mg/L (limit 4 mg/L)"), first);
    assertFalse(first.contains("0.2"), first);
    assertTrue(sheet.cautions().containsAll(List.of("lead", "fluoride")), "" + sheet.cautions());
    String last = sheet.steps().get(sheet.steps().size() - 1).text();
    assertTrue(last.startsWith("No rule used here judges these 2 figures"), last);
    assertFalse(last.contains("Iron"), last);
    // At the limit nothing is over it, and what a rule reads is judged.
    SheetView at = sheet("sample.lead", "0.015 mg/L", "sample.nitrate", "3 mg/L");
    assertTrue(at.steps().stream().noneMatch(step -> step.text().startsWith("Beyond")));
    assertFalse(at.cautions().contains("lead"));
    assertTrue(
        at.steps().stream()
            .filter(step -> step.text().startsWith("No rule used here"))
            .allMatch(step -> step.text().contains("Lead") && !step.text().contains("Nitrate")));
    assertTrue(sheet("sample.lead", "10-20 ug/L").cautions().contains("lead"));
  }

  @Test
  void nobodyIsToDrinkMuchChlorine() throws PackException {
    assertTrue(sheet("sample.chlorine_residual", "30 mg/L").cautions().contains("chlorinated"));
    assertTrue(sheet("disinfection.dose", "1500 mg/L").cautions().contains("chlorinated"));
    assertFalse(
        sheet("sample.chlorine_residual", "4 mg/L", "disinfection.dose", "200 mg/L")
            .cautions()
            .contains("chlorinated"));
  }

  @Test
  void aPumpThatMayBeLiveComesBeforeTheSettingsOfATank() throws PackException {
    SheetView sheet =
        sheet(
            "pump.type", "submersible",
            "pump.control", "switch",
            "tank.type", "bladder",
            "pressure.cut_in", "40 psi",
            "pressure.cut_out", "60 psi",
            "tank.precharge", "45 psi",
            "pump.insulation_resistance", "0.01 Mohm",
            "wire.grounding", "no");
    List<String> rules = sheet.findings().stream().map(FindingView::ruleId).toList();
    int live = rules.indexOf("damaged-motor-grounded");
    assertTrue(live >= 0 && live < rules.indexOf("precharge-below-cut-in"), rules.toString());
    assertFalse(rules.contains("insulation-of-new-motor"), rules.toString());
  }

  @Test
  void whatSettlesLimitsIsAskedForFirst() throws PackException {
    SheetView sheet = sheet("pump.type", "submersible", "record.covers", "well and pump");
    List<String> first =
        sheet.asks().subList(0, 8).stream().flatMap(a -> labels(a.entries()).stream()).toList();
    assertTrue(first.stream().noneMatch(WORDS.entry("pump.power")::equals), first.toString());
    assertTrue(first.contains(WORDS.entry("relief.fitted")), first.toString());
  }

  @Test
  void aLinerOfWhichOnlyTheDepthsAreGivenTakesItsDiameter() throws PackException {
    SheetView sheet =
        sheet(
            "pump.type", "submersible",
            "pump.motor_diameter", "3.75 in",
            "well.casing_diameter", "6 in",
            "well.liner_top", "20 ft",
            "well.liner_bottom", "200 ft");
    OutcomeLine room =
        sheet.outcomes().stream()
            .flatMap(group -> group.lines().stream())
            .filter(line -> line.ruleId().equals("motor-fits-casing"))
            .findFirst()
            .orElseThrow();
    assertEquals(List.of(WORDS.entry("well.liner_inside_diameter")), room.needs());
  }
}
