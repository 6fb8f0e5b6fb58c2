package org.wellcurb.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.wellcurb.judgement.OneRule.entry;
import static org.wellcurb.judgement.OneRule.requires;
import static org.wellcurb.judgement.Outcome.CANNOT_TELL;
import static org.wellcurb.judgement.Outcome.FALLS_SHORT;
import static org.wellcurb.judgement.Outcome.MEETS;
import static org.wellcurb.judgement.Outcome.NOT_APPLICABLE;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;

/** The numbered sentences of "Truth and amounts", each on both sides. */
class TruthAndAmountsTest {
  private static final String TANK = "setback.septic_tank";

  @Test
  void s01_aBlankIsTheWidestInterval() {
    assertEquals(CANNOT_TELL, requires("setback.septic_tank >= 50 ft").on(TANK, ""));
    // Never the plausible range: 0 to 50,000 ft would meet this.
    assertEquals(CANNOT_TELL, requires("setback.septic_tank >= 0 ft").on(TANK, "unknown"));
  }

  @Test
  void s01_moreThanIsHalfOpen() {
    assertEquals(MEETS, requires("water.yield >= 100 gpm").on("water.yield", ">100 gpm"));
    assertEquals(CANNOT_TELL, requires("water.yield >= 101 gpm").on("water.yield", ">100 gpm"));
    assertEquals(FALLS_SHORT, requires("water.yield <= 99 gpm").on("water.yield", ">100 gpm"));
    assertEquals(CANNOT_TELL, requires("water.yield <= 100 gpm").on("water.yield", ">100 gpm"));
  }

  @Test
  void s01_lessThanStartsAtZeroForKindsThatCannotBeNegative() {
    assertEquals(MEETS, requires("sample.nitrate >= 0 mg/L").on("sample.nitrate", "<0.1 mg/L"));
    assertEquals(
        CANNOT_TELL, requires("water.static_level >= 0 ft").on("water.static_level", "<10 ft"));
  }

  @Test
  void s02_aComparisonHoldsForEveryPairOrForNone() {
    OneRule rule = requires("water.yield >= 12 gpm");
    assertEquals(MEETS, rule.on("water.yield", "12-15 gpm"));
    assertEquals(CANNOT_TELL, rule.on("water.yield", "10-15 gpm"));
    assertEquals(FALLS_SHORT, rule.on("water.yield", "10-11 gpm"));
  }

  @Test
  void s02_equalNeedsPointsAndNotEqualIsItsNegation() {
    assertEquals(MEETS, requires("tank.count = 2").on("tank.count", "2"));
    assertEquals(FALLS_SHORT, requires("tank.count = 2").on("tank.count", "3"));
    assertEquals(CANNOT_TELL, requires("water.yield = 12 gpm").on("water.yield", "10-15 gpm"));
    assertEquals(FALLS_SHORT, requires("water.yield = 16 gpm").on("water.yield", "10-15 gpm"));
    assertEquals(MEETS, requires("water.yield <> 16 gpm").on("water.yield", "10-15 gpm"));
    assertEquals(CANNOT_TELL, requires("water.yield <> 12 gpm").on("water.yield", "10-15 gpm"));
    assertEquals(FALLS_SHORT, requires("tank.count <> 2").on("tank.count", "2"));
  }

  @Test
  void s02_kleenesTables() {
    String yes = "tank.count = 1";
    String no = "tank.count = 2";
    String unknown = "pump.stages = 1";
    assertEquals(FALLS_SHORT, requires(no + " and " + unknown).on("tank.count", "1"));
    assertEquals(CANNOT_TELL, requires(yes + " and " + unknown).on("tank.count", "1"));
    assertEquals(MEETS, requires(yes + " or " + unknown).on("tank.count", "1"));
    assertEquals(CANNOT_TELL, requires(no + " or " + unknown).on("tank.count", "1"));
    assertEquals(CANNOT_TELL, requires("not " + unknown).on("tank.count", "1"));
    assertEquals(MEETS, requires("not " + no).on("tank.count", "1"));
  }

  @Test
  void s03_amountsWithinABillionthAreEqual() {
    assertEquals(MEETS, requires("sample.arsenic <= 10 ug/L").on("sample.arsenic", "0.010 mg/L"));
    assertEquals(
        FALLS_SHORT, requires("sample.arsenic < 10 ug/L").on("sample.arsenic", "0.010 mg/L"));
    assertEquals(
        CANNOT_TELL, requires("sample.arsenic <= 10 ug/L").on("sample.arsenic", "<20 ug/L"));
    OneRule sum = requires("well.casing_length + well.liner_top = 13 ft");
    assertEquals(MEETS, sum.on("well.casing_length", "12.2 ft", "well.liner_top", "0.8 ft"));
    assertEquals(
        FALLS_SHORT, sum.on("well.casing_length", "12.2 ft", "well.liner_top", "0.8001 ft"));
  }

  @Test
  void s04_zeroTimesInfinityIsZero() {
    OneRule rule = requires("tank.count * water.yield <= 0 gpm");
    assertEquals(MEETS, rule.on("tank.count", "0", "water.yield", ">5 gpm"));
  }

  @Test
  void s04_aDivisorThatHoldsZeroIsUnboundedOnThatSide() {
    OneRule rule = requires("water.test_rate / water.yield >= 2");
    assertEquals(MEETS, rule.on("water.test_rate", "10 gpm", "water.yield", "0-5 gpm"));
    assertEquals(CANNOT_TELL, rule.on("water.test_rate", "10 gpm", "water.yield", "0-6 gpm"));
    assertEquals(CANNOT_TELL, rule.on("water.test_rate", "10 gpm", "water.yield", "0 gpm"));
  }

  @Test
  void s04_infinityLessInfinityIsUnbounded() {
    OneRule rule = requires("water.test_rate - water.yield >= 0 gpm");
    assertEquals(CANNOT_TELL, rule.on("water.test_rate", ">10 gpm", "water.yield", ">5 gpm"));
  }

  @Test
  void s17_ofSeveralWaysOutTheOneWithALimitDecides() {
    OneRule rule =
        requires(
            "pressure.gauge_reading = 0 psi or pressure.gauge_reading between 35 psi and 65 psi");
    for (String[] each : new String[][] {{"9 psi", "35", "-26"}, {"75 psi", "65", "-10"}}) {
      Deciding deciding = rule.explained("pressure.gauge_reading", each[0]).deciding();
      assertEquals(Double.parseDouble(each[1]), deciding.limit(), 1e-9);
      assertEquals(Double.parseDouble(each[2]), deciding.margin(), 1e-9);
    }
    OneRule equal = requires("pump.leads = 2 or pump.leads = 3");
    assertEquals(3, equal.explained("pump.leads", "5").deciding().limit(), 1e-9);
  }

  @Test
  void s04_ifWithAnUnknownTestIsTheHull() {
    OneRule rule = requires("tank.volume >= (if tank.type is 'bladder' then 20 gal else 30 gal)");
    assertEquals(MEETS, rule.on("tank.volume", "30 gal"));
    assertEquals(CANNOT_TELL, rule.on("tank.volume", "25 gal"));
    assertEquals(FALLS_SHORT, rule.on("tank.volume", "19 gal"));
    assertEquals(MEETS, rule.on("tank.volume", "25 gal", "tank.type", "bladder"));
  }

  @Test
  void s04_roundsHalfAwayFromZero() {
    OneRule rule = requires("round(water.static_level, 1 ft) = 3 ft");
    assertEquals(MEETS, rule.on("water.static_level", "2.5 ft"));
    assertEquals(FALLS_SHORT, rule.on("water.static_level", "2.4 ft"));
    assertEquals(
        MEETS,
        requires("round(water.static_level, 1 ft) = -3 ft").on("water.static_level", "-2.5 ft"));
  }

  @Test
  void s05_whenDecidesFirst() {
    OneRule rule = requires("well.depth >= 50 ft").when("well.use is 'household'");
    assertEquals(NOT_APPLICABLE, rule.on("well.use", "monitoring", "well.depth", "20 ft"));
    assertEquals(FALLS_SHORT, rule.on("well.use", "household", "well.depth", "20 ft"));
    assertEquals(MEETS, rule.on("well.use", "household", "well.depth", "60 ft"));
    assertEquals(CANNOT_TELL, rule.on("well.use", "household"));
  }

  @Test
  void s05_anUnknownWhenIsNoMatterWhereTheRequirementIsMet() {
    OneRule rule = requires("well.depth >= 50 ft").when("well.use is 'household'");
    assertEquals(MEETS, rule.on("well.depth", "60 ft"));
    assertEquals(CANNOT_TELL, rule.on("well.depth", "20 ft"));
  }

  @Test
  void s06_notApplicableIsVoid() {
    assertEquals(NOT_APPLICABLE, requires("setback.privy >= 50 ft").on("setback.privy", "n/a"));
    OneRule both = requires("setback.privy >= 50 ft and setback.septic_tank >= 50 ft");
    assertEquals(MEETS, both.on("setback.privy", "n/a", TANK, "60 ft"));
    assertEquals(FALLS_SHORT, both.on("setback.privy", "n/a", TANK, "40 ft"));
    assertEquals(NOT_APPLICABLE, both.on("setback.privy", "n/a", TANK, "n/a"));
    assertEquals(
        NOT_APPLICABLE, requires("not (setback.privy >= 50 ft)").on("setback.privy", "n/a"));
    assertEquals(
        FALLS_SHORT,
        requires("setback.privy >= 50 ft or setback.septic_tank >= 50 ft")
            .on("setback.privy", "n/a", TANK, "40 ft"));
  }

  @Test
  void s06_knownIsTrueForWhateverCouldBeRead() {
    OneRule rule = requires("known(water.yield)");
    assertEquals(MEETS, rule.on("water.yield", "10-15 gpm"));
    assertEquals(MEETS, rule.on("water.yield", ">3 gpm"));
    assertEquals(FALLS_SHORT, rule.on("water.yield", ""));
    assertEquals(FALLS_SHORT, rule.on("water.yield", "j20"));
    assertEquals(NOT_APPLICABLE, rule.on("water.yield", "n/a"));
  }

  @Test
  void s06_whatMustApplyCountsAsBlank() {
    OneRule rule = requires("known(well.depth)").mustApply("well.depth");
    assertEquals(FALLS_SHORT, rule.on("well.depth", "n/a"));
    assertEquals(MEETS, rule.on("well.depth", "100 ft"));
    assertEquals(
        CANNOT_TELL,
        requires("well.depth > 50 ft").mustApply("well.depth").on("well.depth", "n/a"));
  }

  @Test
  void s06_partsThatTheFormDoesNotCoverCountAsNotApplicable() {
    OneRule rule = requires("known(pump.intake_depth)");
    assertEquals(NOT_APPLICABLE, rule.on("record.covers", "well"));
    assertEquals(NOT_APPLICABLE, rule.on("record.covers", "well", "pump.intake_depth", "90 ft"));
    assertEquals(FALLS_SHORT, rule.on("record.covers", "pump"));
    assertEquals(FALLS_SHORT, rule.on("record.covers", ""));
    assertEquals(FALLS_SHORT, rule.on("record.covers", "well and pump"));
  }

  @Test
  void s06_aRepairMakesNothingAnOmission() {
    OneRule rule = requires("known(pump.intake_depth)").omission();
    assertEquals(NOT_APPLICABLE, rule.on("record.covers", "repair"));
    assertEquals(FALLS_SHORT, rule.on("record.covers", "pump"));
  }

  @Test
  void s07_theTextInForceOnTheDayJudges() {
    OneRule rule =
        OneRule.dated()
            .text(null, "2009-12-31", "setback.septic_tank >= 50 ft")
            .text("2010-01-01", null, "setback.septic_tank >= 75 ft");
    assertEquals(MEETS, rule.on(TANK, "60 ft", "dates.completed", "2009-12-31"));
    assertEquals(FALLS_SHORT, rule.on(TANK, "60 ft", "dates.completed", "2010-01-01"));
    assertEquals(FALLS_SHORT, rule.on(TANK, "60 ft", "dates.completed", "2012"));
    assertEquals(CANNOT_TELL, rule.on(TANK, "60 ft"));
    assertEquals(MEETS, rule.on(TANK, "80 ft"));
    assertEquals(FALLS_SHORT, rule.on(TANK, "40 ft"));
    assertEquals(List.of("dates.completed"), rule.explained(TANK, "60 ft").needs());
  }

  @Test
  void s07_whereNoTextIsInForceTheRuleDoesNotApply() {
    OneRule rule = OneRule.dated().text("2010-01-01", "2015-12-31", "setback.septic_tank >= 75 ft");
    assertEquals(NOT_APPLICABLE, rule.on(TANK, "60 ft", "dates.completed", "2009-06-01"));
    assertEquals(NOT_APPLICABLE, rule.on(TANK, "60 ft", "dates.completed", "2016-01-01"));
    assertEquals(FALLS_SHORT, rule.on(TANK, "60 ft", "dates.completed", "2015-12-31"));
    assertEquals(CANNOT_TELL, rule.on(TANK, "60 ft", "dates.completed", "2015 to 2016"));
    assertEquals(CANNOT_TELL, rule.on(TANK, "60 ft"));
  }

  @Test
  void s07_theMildestOfSeveralDaysStands() {
    OneRule rule =
        OneRule.dated()
            .text(null, "2009-12-31", "setback.septic_tank >= 50 ft")
            .text("2010-01-01", null, "setback.septic_tank >= 75 ft")
            .judgedBy(
                new JudgedBy.LessStrictOf(List.of(entry("dates.completed"), new JudgedBy.AsOf())));
    assertEquals(MEETS, rule.on(TANK, "60 ft", "dates.completed", "2005-01-01"));
    assertEquals(FALLS_SHORT, rule.on(TANK, "60 ft", "dates.completed", "2012-01-01"));
    assertEquals(CANNOT_TELL, rule.on(TANK, "60 ft"));
  }

  @Test
  void s07_aDayThatDoesNotApplyIsLeftOutOfTheMilder() {
    OneRule rule =
        OneRule.dated()
            .text(null, "2009-12-31", "setback.septic_tank >= 50 ft")
            .text("2010-01-01", null, "setback.septic_tank >= 75 ft")
            .judgedBy(
                new JudgedBy.LessStrictOf(
                    List.of(entry("dates.source_installed"), entry("dates.completed"))));
    String[] well = {
      TANK, "60 ft", "dates.source_installed", "n/a", "dates.completed", "2012-01-01"
    };
    assertEquals(FALLS_SHORT, rule.on(well));
    assertEquals(List.of(), rule.explained(well).needs());
    well[5] = "2005-01-01";
    assertEquals(MEETS, rule.on(well));
    well[5] = "";
    assertEquals(CANNOT_TELL, rule.on(well));
    assertEquals(List.of("dates.completed"), rule.explained(well).needs());
    well[5] = "n/a";
    assertEquals(CANNOT_TELL, rule.on(well));
    assertEquals(List.of("dates.source_installed"), rule.explained(well).needs());
    // One as mild by every text needs no day.
    assertEquals(MEETS, rule.on(TANK, "80 ft", "dates.source_installed", "n/a"));
  }

  @Test
  void s07_theOnlyDayIsNamedThoughItDoesNotApply() {
    for (JudgedBy day :
        List.of(
            entry("dates.completed"), new JudgedBy.LaterOf(List.of(entry("dates.completed"))))) {
      OneRule rule =
          OneRule.dated()
              .text(null, "2009-12-31", "setback.septic_tank >= 50 ft")
              .text("2010-01-01", null, "setback.septic_tank >= 75 ft")
              .judgedBy(day);
      String[] well = {TANK, "60 ft", "dates.completed", "n/a"};
      assertEquals(CANNOT_TELL, rule.on(well));
      Explanation explained = rule.explained(well);
      assertEquals(List.of("dates.completed"), explained.needs());
      assertTrue(
          explained.remarks().stream()
              .anyMatch(said -> said.contains("cannot be told from dates completed;")),
          explained.remarks().toString());
    }
  }

  @Test
  void s07_ofSeveralDaysOnlyThoseThatAreNotKnownAreAskedFor() {
    OneRule rule =
        OneRule.dated()
            .text(null, "2009-12-31", "setback.septic_tank >= 50 ft")
            .text("2010-01-01", null, "setback.septic_tank >= 75 ft")
            .judgedBy(
                new JudgedBy.LaterOf(
                    List.of(entry("dates.completed"), entry("dates.source_installed"))));
    String[] well = {TANK, "60 ft", "dates.completed", "2005-06-01"};
    assertEquals(CANNOT_TELL, rule.on(well));
    assertEquals(List.of("dates.source_installed"), rule.explained(well).needs());
  }

  @Test
  void s07_asOfJudgesByTheDayOfTheRun() {
    OneRule rule =
        OneRule.dated()
            .text(null, "2025-12-31", "setback.septic_tank >= 50 ft")
            .text("2026-01-01", null, "setback.septic_tank >= 75 ft")
            .judgedBy(new JudgedBy.AsOf());
    assertEquals(FALLS_SHORT, rule.on(TANK, "60 ft", "dates.completed", "2005-01-01"));
  }

  @Test
  void s08_depthsFromTheCasingTopAreReducedByTheStickup() {
    OneRule rule = requires("well.casing_depth >= 20 ft");
    String[] top = {
      "record.datum", "casing top", "well.stickup", "2 ft", "well.casing_depth", "21 ft"
    };
    assertEquals(FALLS_SHORT, rule.on(top));
    assertEquals(19, rule.explained(top).deciding().value(), 1e-9);
    assertEquals(MEETS, rule.on("record.datum", "ground", "well.casing_depth", "21 ft"));
    assertEquals(MEETS, requires("well.casing_depth = 19 ft").on(top));
  }

  @Test
  void s08_aBlankDatumIsJudgedForEach() {
    OneRule rule = requires("well.casing_depth >= 20 ft");
    assertEquals(
        CANNOT_TELL,
        rule.on("record.datum", "", "well.stickup", "2 ft", "well.casing_depth", "21 ft"));
    assertEquals(
        MEETS, rule.on("record.datum", "", "well.stickup", "2 ft", "well.casing_depth", "22 ft"));
    assertEquals(
        FALLS_SHORT,
        rule.on("record.datum", "", "well.stickup", "2 ft", "well.casing_depth", "19 ft"));
    assertEquals(
        List.of("record.datum"),
        rule.explained("record.datum", "", "well.stickup", "2 ft", "well.casing_depth", "21 ft")
            .needs());
  }

  @Test
  void s08_aBlankStickupIsJudgedAtItsEnds() {
    OneRule rule = requires("well.casing_depth >= 20 ft");
    assertEquals(CANNOT_TELL, rule.on("record.datum", "casing top", "well.casing_depth", "25 ft"));
    assertEquals(MEETS, rule.on("record.datum", "casing top", "well.casing_depth", "30 ft"));
    assertEquals(FALLS_SHORT, rule.on("record.datum", "casing top", "well.casing_depth", "9 ft"));
    assertEquals(
        CANNOT_TELL,
        rule.on(
            "record.datum",
            "casing top",
            "well.stickup",
            "1-2 ft",
            "well.casing_depth",
            "21.5 ft"));
    assertEquals(
        List.of("well.stickup"),
        rule.explained("record.datum", "casing top", "well.casing_depth", "25 ft").needs());
  }

  @Test
  void s08_differencesOfLikeDepthsNeverSuffer() {
    OneRule rule = requires("well.casing_depth <= well.depth");
    assertEquals(
        MEETS, rule.on("record.datum", "", "well.casing_depth", "99 ft", "well.depth", "100 ft"));
    assertEquals(
        MEETS,
        requires("workings.drawdown = 30 ft")
            .on(
                "record.datum",
                "casing top",
                "water.pumping_level",
                "80 ft",
                "water.static_level",
                "50 ft"));
  }

  @Test
  void s08_eachDatumHasItsOwn() {
    OneRule rule = requires("pump.intake_depth - water.static_level >= 20 ft");
    String[] apart = {
      "record.datum", "ground",
      "water.datum", "casing top",
      "well.stickup", "2 ft",
      "pump.intake_depth", "60 ft",
      "water.static_level", "41 ft"
    };
    assertEquals(MEETS, rule.on(apart));
    assertEquals(
        MEETS,
        requires("pump.intake_depth = 64 ft")
            .on("pump.datum", "pitless", "pitless.depth", "4 ft", "pump.intake_depth", "60 ft"));
  }

  @Test
  void s08_entriesFromTheGroundNeverMove() {
    assertEquals(
        MEETS,
        requires("pitless.depth = 5 ft")
            .on("record.datum", "casing top", "well.stickup", "2 ft", "pitless.depth", "5 ft"));
  }

  @Test
  void s09_theBracketedSideIsForThoseWhoWroteInItsUnits() {
    OneRule rule = requires("setback.septic_tank >= 50 ft (15 m)");
    assertEquals(MEETS, rule.on(TANK, "15 m"));
    assertEquals(FALLS_SHORT, rule.on(TANK, "14.9 m"));
    assertEquals(MEETS, rule.on(TANK, "50 ft"));
    assertEquals(FALLS_SHORT, rule.on(TANK, "49.9 ft"));
    assertEquals(CANNOT_TELL, rule.on());
  }

  @Test
  void s09_theFigureOutsideTheBracketsIsPrimary() {
    // 15 m is 49.2 ft: stricter than the bracketed 49 ft.
    OneRule rule = requires("setback.septic_tank >= 15 m (49 ft)");
    assertEquals(MEETS, rule.on(TANK, "49 ft"));
    assertEquals(FALLS_SHORT, rule.on(TANK, "14.9 m"));
    OneRule two = requires("setback.septic_tank + setback.privy >= 50 ft (15 m)");
    assertEquals(MEETS, two.on(TANK, "10 m", "setback.privy", "5 m"));
    assertEquals(FALLS_SHORT, two.on(TANK, "10 m", "setback.privy", "16.4 ft"));
  }

  @Test
  void s09_unitsOfBothSystemsDecideNothing() {
    OneRule rule = requires("setback.septic_tank * tank.count >= 50 ft (15 m)");
    assertEquals(MEETS, rule.on(TANK, "15 m", "tank.count", "1"));
  }

  @Test
  void s10_aFigureInTheOtherSystemHasHalfItsLastPlace() {
    OneRule rule = requires("setback.septic_tank >= 50 ft");
    assertEquals(MEETS, rule.on(TANK, "15.2 m"));
    assertEquals(FALLS_SHORT, rule.on(TANK, "15.1 m"));
    assertEquals(FALLS_SHORT, rule.on(TANK, "49.9 ft"));
    assertEquals(FALLS_SHORT, rule.on(TANK, "49 ft 11 in"));
    assertTrue(
        rule.explained(TANK, "15.2 m").remarks().stream().anyMatch(r -> r.contains("rounded")));
    assertTrue(rule.explained(TANK, "15.2 m").deciding().margin() < 0);
  }

  @Test
  void s10_wholeMetresHaveHalfAMetre() {
    OneRule rule = requires("setback.septic_tank >= 67 ft");
    assertEquals(MEETS, rule.on(TANK, "20 m"));
    assertEquals(FALLS_SHORT, rule.on(TANK, "20.0 m"));
  }

  @Test
  void s10_noSlackUnderNotNorForSumsNorForRanges() {
    assertEquals(FALLS_SHORT, requires("not (setback.septic_tank < 50 ft)").on(TANK, "15.2 m"));
    assertEquals(MEETS, requires("not (setback.septic_tank >= 50 ft)").on(TANK, "15.2 m"));
    assertEquals(
        FALLS_SHORT,
        requires("setback.septic_tank + setback.privy >= 50 ft")
            .on(TANK, "15.2 m", "setback.privy", "0 m"));
    assertEquals(FALLS_SHORT, requires("setback.septic_tank >= 50 ft").on(TANK, "15.0-15.2 m"));
    assertEquals(
        FALLS_SHORT,
        requires("setback.septic_tank >= setback.privy")
            .on(TANK, "15.2 m", "setback.privy", "50 ft"));
  }

  private static Table frost() {
    Catalogue catalogue = Catalogue.standard();
    return new Table(
        "frost",
        List.of(catalogue.entry(catalogue.index("site.zone"))),
        Dimension.LENGTH,
        List.of(
            new Table.Row(
                List.of(new Table.Words(List.of("hill"))),
                new Table.Amount(6 * 0.3048, Units.FOOT, 1.8, Units.METRE)),
            new Table.Row(
                List.of(new Table.Words(List.of("plain"))),
                new Table.Amount(4 * 0.3048, Units.FOOT, Double.NaN, null))));
  }

  @Test
  void s11_aTableGivesItsFirstMatchingRow() {
    OneRule rule = OneRule.withTable(frost()).text(null, null, "pitless.depth >= table(frost)");
    assertEquals(MEETS, rule.on("site.zone", "Hill", "pitless.depth", "6 ft"));
    assertEquals(FALLS_SHORT, rule.on("site.zone", "hill", "pitless.depth", "5.9 ft"));
    assertEquals(MEETS, rule.on("site.zone", "hill", "pitless.depth", "1.8 m"));
    assertEquals(MEETS, rule.on("site.zone", " PLAIN ", "pitless.depth", "4 ft"));
  }

  @Test
  void s11_anUnknownKeyGivesTheHullAndOneWithoutARowCannotTell() {
    OneRule rule = OneRule.withTable(frost()).text(null, null, "pitless.depth >= table(frost)");
    assertEquals(MEETS, rule.on("pitless.depth", "7 ft"));
    assertEquals(CANNOT_TELL, rule.on("pitless.depth", "5 ft"));
    assertEquals(FALLS_SHORT, rule.on("pitless.depth", "3 ft"));
    Explanation none = rule.explained("site.zone", "marsh", "pitless.depth", "9 ft");
    assertEquals(CANNOT_TELL, none.outcome());
    assertTrue(none.remarks().stream().anyMatch(r -> r.contains("marsh")), none.toString());
    assertEquals(List.of(), none.needs(), "what is given is not asked for");
    assertEquals(1, none.noRows().size(), none.noRows().toString());
  }

  /** Which text is in force hangs on a day that is blank: the margin is that of the strictest. */
  @Test
  void s17_ofTextsThatMayBeInForceTheMarginIsTheWorst() {
    OneRule rule =
        OneRule.dated()
            .text(null, "1999-12-31", "setback.septic_tank >= 50 ft")
            .text("2000-01-01", "2009-12-31", "setback.septic_tank >= 100 ft")
            .text("2010-01-01", null, "setback.septic_tank >= 75 ft");
    assertEquals(CANNOT_TELL, rule.on("setback.septic_tank", "80 ft"));
    Deciding blank = Objects.requireNonNull(rule.decided("setback.septic_tank", "80 ft"));
    assertEquals(-20, blank.margin(), 1e-9);
    assertEquals(100, blank.limit(), 1e-9);
    String[] early = {"setback.septic_tank", "80 ft", "dates.completed", "1990-05-01"};
    assertEquals(MEETS, rule.on(early));
    assertEquals(30, Objects.requireNonNull(rule.decided(early)).margin(), 1e-9);
    String[] year = {"setback.septic_tank", "60 ft", "dates.completed", "1999-2000"};
    assertEquals(
        -40,
        Objects.requireNonNull(rule.decided("setback.septic_tank", "60 ft", "dates.completed", ""))
            .margin(),
        1e-9,
        String.join(" ", year));
  }

  /** Which limit binds hangs on a word that is blank: the margin is that of the stricter one. */
  @Test
  void s17_ofBranchesEitherOfWhichMayHoldTheMarginIsTheWorst() {
    String mild = "setback.septic_tank >= 50 ft";
    String strict = "setback.septic_tank >= 100 ft";
    for (String rule :
        List.of(
            "if well.use is 'household' then " + mild + " else " + strict,
            "if well.use is 'household' then " + strict + " else " + mild,
            "not (if well.use is 'household' then setback.septic_tank < 50 ft"
                + " else setback.septic_tank < 100 ft)",
            "setback.septic_tank >= (if well.use is 'household' then 50 ft else 100 ft)")) {
      Explanation blank = requires(rule).explained("setback.septic_tank", "80 ft");
      assertEquals(CANNOT_TELL, blank.outcome(), rule);
      assertEquals(-20, Objects.requireNonNull(blank.deciding()).margin(), 1e-9, rule);
      Explanation under = requires(rule).explained("setback.septic_tank", "40 ft");
      assertEquals(FALLS_SHORT, under.outcome(), rule);
      assertEquals(-60, Objects.requireNonNull(under.deciding()).margin(), 1e-9, rule);
    }
    String[] use = {"setback.septic_tank", "80 ft", "well.use", "household"};
    assertEquals(
        30,
        requires("if well.use is 'household' then " + mild + " else " + strict)
            .explained(use)
            .deciding()
            .margin(),
        1e-9);
  }

  /** Distances of two kinds cannot be compared: what is missed is said before what is kept. */
  @Test
  void s17_ofBranchesOfTwoKindsTheOneThatIsMissedIsSaid() {
    OneRule rule =
        requires("if well.use is 'household' then well.depth >= 50 ft else water.yield >= 10 gpm");
    Deciding decided = rule.explained("well.depth", "80 ft", "water.yield", "8 gpm").deciding();
    assertEquals("water.yield", decided.entry());
    assertEquals(-2, decided.margin(), 1e-9);
    Deciding other = rule.explained("well.depth", "40 ft", "water.yield", "12 gpm").deciding();
    assertEquals("well.depth", other.entry());
    assertEquals(
        "well.depth",
        rule.explained("well.depth", "40 ft", "water.yield", "n/a").deciding().entry(),
        "what does not apply is nothing to come up to");
  }

  @Test
  void s12_choicesCompareWithoutCaseAndOuterBlanks() {
    OneRule rule = requires("well.casing_material is one of 'Steel', 'pvc'");
    assertEquals(MEETS, rule.on("well.casing_material", "  STEEL "));
    assertEquals(FALLS_SHORT, rule.on("well.casing_material", "concrete"));
    assertEquals(CANNOT_TELL, rule.on("well.casing_material", "tin"));
  }

  @Test
  void s14_aRuleThatOnlyAPersonCanJudgeAsks() {
    assertEquals(
        CANNOT_TELL.ordinal(),
        judge(
            new RuleProgram(
                null, List.of(new DatedText(null, null, null, null)), new JudgedBy.AsOf(), false)));
  }

  private static int judge(RuleProgram program) {
    Judge judge = new Judge(Catalogue.standard(), java.time.LocalDate.of(2026, 1, 1), List.of());
    judge.take(OneRule.record());
    return judge.outcome(program);
  }

  @Test
  void s17_whatCountsAsEqualIsAtNoDistance() {
    OneRule rule = requires("sample.arsenic <= 10 ug/L");
    assertEquals(0, rule.explained("sample.arsenic", "0.010 mg/L").deciding().margin(), 0);
    assertTrue(rule.explained("sample.arsenic", "0.0101 mg/L").deciding().margin() < 0);
  }

  @Test
  void s17_aLimitThatWouldNotDoItselfIsStrict() {
    for (String[] each :
        new String[][] {
          {"pump.intake_depth < well.depth", "true"},
          {"pump.intake_depth <= well.depth", "false"},
          {"well.depth > pump.intake_depth", "true"},
          {"not pump.intake_depth > well.depth", "false"},
          {"not pump.intake_depth >= well.depth", "true"},
          {"pump.intake_depth between 10 ft and 200 ft", "false"},
        }) {
      Deciding deciding =
          requires(each[0])
              .explained("pump.intake_depth", "242 ft", "well.depth", "230 ft")
              .deciding();
      assertEquals(Boolean.parseBoolean(each[1]), deciding.isStrict(), each[0]);
    }
  }

  @Test
  void s17_ofRangesTheMarginOfTheBetterEndsIsKeptToo() {
    Deciding point = requires("setback.septic_tank >= 75 ft").explained(TANK, "40 ft").deciding();
    assertEquals(-35, point.leastMargin(), 1e-9);
    Deciding range =
        requires("setback.septic_tank >= 75 ft").explained(TANK, "40 to 60 ft").deciding();
    assertEquals(-35, range.margin(), 1e-9);
    assertEquals(-15, range.leastMargin(), 1e-9);
    Deciding limit =
        requires("relief.setting > pressure.cut_out")
            .explained("relief.setting", "40 psi", "pressure.cut_out", "60-90 psi")
            .deciding();
    assertEquals(-50, limit.margin(), 1e-9);
    assertEquals(-20, limit.leastMargin(), 1e-9);
    assertEquals("60 psi to 90 psi", limit.limitText());
    Deciding open =
        requires("pump.intake_depth <= 50 ft").explained("pump.intake_depth", ">100 ft").deciding();
    assertTrue(Double.isNaN(open.margin()));
    Deciding dates =
        requires("dates.received <= dates.completed + 30 days")
            .explained("dates.completed", "2020-01", "dates.received", "2020-03-03")
            .deciding();
    assertEquals(-32, dates.margin(), 1e-9);
    assertEquals(-2, dates.leastMargin(), 1e-9);
    assertEquals("2020-01-31 to 2020-03-01", dates.limitText());
  }

  @Test
  void s17_theMarginIsValueLessLimitInTheUnitWritten() {
    assertEquals(
        -0.5,
        requires("setback.septic_tank >= 50 ft").explained(TANK, "49.5 ft").deciding().margin(),
        1e-9);
    assertEquals(
        15.0 - 15.24,
        requires("setback.septic_tank >= 50 ft").explained(TANK, "15.0 m").deciding().margin(),
        1e-9);
    assertEquals(
        2,
        requires("water.yield <= 10 gpm").explained("water.yield", "8 gpm").deciding().margin(),
        1e-9);
    assertEquals(
        -2,
        requires("water.yield >= 12 gpm").explained("water.yield", "10-15 gpm").deciding().margin(),
        1e-9);
    assertEquals(
        -3,
        requires("dates.received <= dates.completed + 30 days")
            .explained("dates.completed", "2020-01-01", "dates.received", "2020-02-03")
            .deciding()
            .margin(),
        1e-9);
    assertTrue(
        Double.isNaN(
            requires("well.use is 'household'")
                .explained("well.use", "public")
                .deciding()
                .margin()));
    assertEquals(
        -10,
        requires(
                "setback.septic_tank >= 100 ft or (well.casing_depth >= 100 ft and setback.septic_tank >= 50 ft)")
            .explained(TANK, "40 ft", "well.casing_depth", "120 ft")
            .deciding()
            .margin(),
        1e-9);
  }
}
