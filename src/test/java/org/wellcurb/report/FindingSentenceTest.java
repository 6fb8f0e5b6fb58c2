package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Finding;

/** What a finding says: a limit where there is one, figures that a person can use. */
final class FindingSentenceTest {
  private static List<Rule> rules;

  @BeforeAll
  static void load() throws Exception {
    rules = PackLoader.load("common-practice").rules();
  }

  private static String said(FindingKind kind, Deciding deciding, Language language) {
    Rule rule = rules.stream().filter(each -> each.kind() == kind).findFirst().orElseThrow();
    Finding finding = new Finding("W1", "f.csv", 2, "p", rule, deciding, "", 0, Double.NaN);
    return new FindingSentence(new PageStyle(language, UnitsShown.AS_WRITTEN)).of(finding);
  }

  private static Deciding depth(double value, double limit, String subject) {
    return new Deciding(
        "pump.intake_depth",
        "242",
        value,
        Units.FOOT,
        limit,
        -Math.abs(value - limit),
        "",
        "",
        false,
        subject);
  }

  private static Deciding day(String value, String limit) {
    double at = LocalDate.parse(value).toEpochDay();
    double bound = LocalDate.parse(limit).toEpochDay();
    @Nullable Unit none = null;
    return new Deciding(
        "dates.started", value, at, none, bound, -Math.abs(at - bound), "", "", true);
  }

  private static Deciding range(
      double value, double limit, double least, String valueText, String limitText) {
    return new Deciding(
        "tank.volume",
        "<20",
        value,
        Units.US_GALLON,
        limit,
        -Math.abs(value - limit),
        valueText,
        limitText,
        false,
        "",
        "",
        false,
        least);
  }

  @Test
  void anAmountWithoutALowerEndIsAtLeastSoMuchTooLittle() {
    Deciding open = range(0, 30, -10, "20 gal or less", "");
    assertEquals(
        "Tank volume: 20 gal or less. The limit is 30 gal, so it is at least 10 gal too little.",
        said(FindingKind.ADVISORY, open, Language.EN));
    assertTrue(
        said(FindingKind.ADVISORY, open, Language.FR).endsWith("il manque au moins 10 gal."));
    assertEquals(
        "Tank volume: 10 to 20 gal. The limit is 30 gal, so it is 10 to 20 gal too little.",
        said(FindingKind.ADVISORY, range(10, 30, -10, "10 to 20 gal", ""), Language.EN));
  }

  @Test
  void anAmountWithoutAnUpperEndIsAtLeastSoMuchTooMuch() {
    assertEquals(
        "Tank volume: 40 gal or more. The limit is 30 gal, so it is at least 10 gal too much.",
        said(FindingKind.ADVISORY, range(Double.NaN, 30, -10, "40 gal or more", ""), Language.EN));
  }

  @Test
  void ofARangeThatOthersLeaveTheEndThatWouldDoIsSaid() {
    String said =
        said(FindingKind.DISCREPANCY, range(34, 0, -14, "", "0 gal to 20 gal"), Language.EN);
    assertTrue(said.contains("it would be 20 gal or less; it is at least 14 gal more"), said);
  }

  @Test
  void anIntakeAboveTheWaterIsSaidInWords() {
    assertEquals(
        "The pump intake hangs 18 ft above the pumping level, so the pump would draw air.",
        said(FindingKind.ADVISORY, depth(-18, -10, "pump submergence"), Language.EN));
    assertEquals(
        "At its rated flow the pump would draw the water down to 3 ft below its intake, and take in"
            + " air.",
        said(FindingKind.ADVISORY, depth(-3, 0, "submergence at rated flow"), Language.EN));
    assertEquals(
        "Pump submergence: 2 ft. The limit is 10 ft, so it is 8 ft too little.",
        said(FindingKind.ADVISORY, depth(2, 10, "pump submergence"), Language.EN));
  }

  @Test
  void aDayAfterTodayIsSaidToBeOne() {
    Deciding plain = day("2026-01-31", "2026-01-01");
    Deciding ahead =
        new Deciding(
            plain.entry(),
            plain.written(),
            plain.value(),
            plain.unit(),
            plain.limit(),
            plain.margin(),
            "",
            "",
            /* isDate= */ true,
            "",
            "the as-of date",
            /* isStrict= */ false,
            plain.margin());
    assertEquals(
        "Construction started: 2026-01-31. That lies 30 days after 2026-01-01, the day that counts"
            + " as today.",
        said(FindingKind.DISCREPANCY, ahead, Language.EN));
  }

  /** What is written is not missing. */
  @Test
  void whatCouldNotBeReadIsToBeWrittenAgain() {
    assertEquals(
        "Permit issued: “3/2/2026” may be 2026-02-03 or 2026-03-02. Write the one that is meant.",
        said(FindingKind.OMISSION, permit("3/2/2026"), Language.EN));
    assertEquals(
        "Permit issued: unknown. What is asked for: something written.",
        said(FindingKind.OMISSION, permit("unknown"), Language.EN));
    assertEquals(
        "Permit issued: “04-13-26” may be 1926-04-13 or 2026-04-13. Write the one that is meant.",
        said(FindingKind.OMISSION, permit("04-13-26"), Language.EN));
    assertEquals(
        "Permit issued: “no. 7” stands there, and cannot be read for sure. Write it again.",
        said(FindingKind.OMISSION, permit("no. 7"), Language.EN));
  }

  private static Deciding permit(String written) {
    return new Deciding(
        "dates.permit",
        written,
        Double.NaN,
        null,
        Double.NaN,
        Double.NaN,
        "",
        "given",
        /* isDate= */ false);
  }

  @Test
  void aLimitIsALimit() {
    assertEquals(
        "Pump intake: 61 ft. The limit is 75 ft, so it is 14 ft too little.",
        said(FindingKind.DEFICIENCY, depth(61, 75, ""), Language.EN));
  }

  @Test
  void entriesThatContradictEachOtherHaveNone() {
    assertEquals(
        "Pump intake: 242 ft. To fit the rest it would be 230 ft or less; it is 12 ft more.",
        said(FindingKind.DISCREPANCY, depth(242, 230, ""), Language.EN));
    assertEquals(
        "Pump intake: 242 ft. To fit the rest it would be 250 ft or more; it is 8 ft less.",
        said(FindingKind.DISCREPANCY, depth(242, 250, ""), Language.EN));
    assertEquals(
        "Construction started: 2019-07-08. To fit the rest it would be 2019-07-06 or earlier;"
            + " it is 2 days later.",
        said(FindingKind.DISCREPANCY, day("2019-07-08", "2019-07-06"), Language.EN));
    assertEquals(
        "Construction started: 2019-07-05. To fit the rest it would be 2019-07-06 or later;"
            + " it is 1 day earlier.",
        said(FindingKind.DISCREPANCY, day("2019-07-05", "2019-07-06"), Language.EN));
    assertEquals(
        "Aspiration de la pompe\u00a0: 242 pi. Pour aller avec le reste, ce serait 230 pi ou moins\u00a0;"
            + " c'est 12 pi de plus.",
        said(FindingKind.DISCREPANCY, depth(242, 230, ""), Language.FR));
  }

  private static Deciding against(Deciding d, String... others) {
    return new Deciding(
        d.entry(),
        d.written(),
        d.value(),
        d.unit(),
        d.limit(),
        d.margin(),
        d.valueText(),
        d.limitText(),
        d.isDate(),
        d.subject(),
        d.limitName(),
        d.isStrict(),
        d.leastMargin(),
        List.of(others));
  }

  @Test
  void bothSidesOfAContradictionAreNamedForEitherMayBeWrong() {
    Deciding intake = depth(242, 230, "");
    assertEquals(
        "Pump intake: 242 ft. To fit Finished depth (230 ft) it would be 230 ft or less;"
            + " it is 12 ft more. Either may be the wrong one.",
        said(FindingKind.DISCREPANCY, against(intake, "Finished depth (230 ft)"), Language.EN));
    assertEquals(
        "Pump intake: 242 ft. To fit A (1) and B (2) it would be 230 ft or less;"
            + " it is 12 ft more. Any of these may be the wrong one.",
        said(FindingKind.DISCREPANCY, against(intake, "A (1)", "B (2)"), Language.EN));
    assertEquals(
        "Pump intake: 242 ft. The limit is 230 ft, so it is 12 ft too much.",
        said(FindingKind.DEFICIENCY, against(intake, "Finished depth (230 ft)"), Language.EN));
    assertEquals(
        "Pump intake less Pitless depth: 242 ft. To fit the rest it would be 230 ft or less;"
            + " it is 12 ft more. Any of the entries in it may be the wrong one.",
        said(FindingKind.DISCREPANCY, depth(242, 230, "Pump intake - Pitless depth"), Language.EN));
  }

  @Test
  void whatIsWorkedOutIsRoundedUnlessThatHidesTheDifference() {
    assertEquals(
        "Pump intake: 242.125 ft. The limit is 21.38 ft, so it is 220.745 ft too much.",
        said(FindingKind.DEFICIENCY, depth(242.125, 21.3756, ""), Language.EN));
    assertEquals(
        "Drawdown: 34.13 ft. The limit is 4.103 ft, so it is 30.027 ft too much.",
        said(FindingKind.DEFICIENCY, depth(34.1253, 4.1025, "drawdown"), Language.EN));
    assertEquals(
        "Drawdown: 50.0012 ft. The limit is 50 ft, so it is 0.0012 ft too much.",
        said(FindingKind.DEFICIENCY, depth(50.0012, 50, "drawdown"), Language.EN));
  }

  @Test
  void whoeverSubtractsTheLimitComesToTheMargin() {
    Deciding drop =
        new Deciding(
            "wire.gauge", "14", 11.4446, Units.PERCENT, 5, -6.4446, "", "", false, "Voltage drop");
    assertEquals(
        "Voltage drop: 11.44 %. The limit is 5 %, so it is 6.44 percentage points too much.",
        said(FindingKind.DEFICIENCY, drop, Language.EN));
    assertEquals(
        "Voltage drop\u00a0: 11,44 %. La limite est 5 %\u00a0; c'est 6,44 points de pourcentage de trop.",
        said(FindingKind.DEFICIENCY, drop, Language.FR));
  }

  private static Deciding strict(Deciding d) {
    return new Deciding(
        d.entry(),
        d.written(),
        d.value(),
        d.unit(),
        d.limit(),
        d.margin(),
        d.valueText(),
        d.limitText(),
        d.isDate(),
        d.subject(),
        d.limitName(),
        /* isStrict= */ true,
        d.leastMargin());
  }

  private static Deciding range(
      String value, double limit, String limits, double most, double least) {
    return new Deciding(
        "setback.septic_tank",
        "40-60 ft",
        limit + most,
        Units.FOOT,
        limit,
        most,
        value,
        limits,
        false,
        "",
        "",
        /* isStrict= */ false,
        least);
  }

  @Test
  void daysAreSaidInTheLanguageOfThePage() {
    Deciding age =
        new Deciding("dates.sampled", "", 91, Units.DAY, 90, -1, "", "", false, "Sample age");
    assertEquals(
        "Sample age: 91 days. The limit is 90 days, so it is 1 day too much.",
        said(FindingKind.DEFICIENCY, age, Language.EN));
    assertEquals(
        "Sample age\u00a0: 91 jours. La limite est 90 jours\u00a0; c'est 1 jour de trop.",
        said(FindingKind.DEFICIENCY, age, Language.FR));
  }

  @Test
  void ofARangeBothEndsAreSaid() {
    assertEquals(
        "Distance to septic tank: 40 ft to 60 ft. The limit is 75 ft, so it is 15 to 35 ft too"
            + " little.",
        said(FindingKind.DEFICIENCY, range("40 ft to 60 ft", 75, "", -35, -15), Language.EN));
    assertEquals(
        "Distance to septic tank: 40 ft. The limit is 50 ft to 75 ft, so it is 10 to 35 ft too"
            + " little.",
        said(FindingKind.DEFICIENCY, range("", 75, "50 ft to 75 ft", -35, -10), Language.EN));
    Deciding day = day("2019-07-05", "2019-07-31");
    Deciding month =
        new Deciding(
            day.entry(),
            "",
            day.value(),
            null,
            day.limit(),
            -26,
            "2019-07-05 to 2019-07-21",
            "",
            true,
            "",
            "",
            false,
            -10);
    assertEquals(
        "Construction started: 2019-07-05 to 2019-07-21. The limit is 2019-07-31, so it is 10 to"
            + " 26 days too early.",
        said(FindingKind.DEFICIENCY, month, Language.EN));
  }

  @Test
  void aLimitThatMayNotBeReachedIsNotSaidToBeTheLimit() {
    assertEquals(
        "Pump intake: 300 ft. It has to be less than 280 ft, and is 20 ft more.",
        said(FindingKind.DEFICIENCY, strict(depth(300, 280, "")), Language.EN));
    assertEquals(
        "Pump intake: 20 ft. It has to be more than 40 ft, and is 20 ft less.",
        said(FindingKind.DEFICIENCY, strict(depth(20, 40, "")), Language.EN));
    assertEquals(
        "Aspiration de la pompe\u00a0: 300 pi. Il faut moins de 280 pi\u00a0; c'est 20 pi de plus.",
        said(FindingKind.DEFICIENCY, strict(depth(300, 280, "")), Language.FR));
    assertEquals(
        "Pump intake: 300 ft. To fit the rest it would be less than 280 ft; it is 20 ft more.",
        said(FindingKind.DISCREPANCY, strict(depth(300, 280, "")), Language.EN));
    assertEquals(
        "Construction started: 2019-07-05. It has to be after 2019-07-06, and is 1 day earlier.",
        said(FindingKind.DEFICIENCY, strict(day("2019-07-05", "2019-07-06")), Language.EN));
    assertEquals(
        "Début des travaux\u00a0: 2019-07-08. Pour aller avec le reste, ce serait avant le"
            + " 2019-07-06\u00a0; c'est 2 jours plus tard.",
        said(FindingKind.DISCREPANCY, strict(day("2019-07-08", "2019-07-06")), Language.FR));
  }

  @Test
  void aCodeStandsBesideWhatItWasTakenFor() {
    Deciding coli = word("sample.coliform", "P", "present", "absent");
    assertEquals(
        "Coliform bacteria: present (written: P). What is asked for: absent.",
        said(FindingKind.DEFICIENCY, coli, Language.EN));
    assertEquals(
        "Coliform bacteria: present. What is asked for: absent.",
        said(
            FindingKind.DEFICIENCY,
            word("sample.coliform", "Present", "present", "absent"),
            Language.EN));
    assertTrue(
        said(FindingKind.DEFICIENCY, word("well.open_hole", "Y", "yes", "no"), Language.EN)
            .endsWith(": yes. What is asked for: no."));
  }

  private static Deciding word(String entry, String written, String value, String limit) {
    return new Deciding(
        entry, written, Double.NaN, null, Double.NaN, Double.NaN, value, limit, false);
  }
}
