package org.wellcurb.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Explanation;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.RuleProgram;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackFile;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.Source;
import org.wellcurb.screening.Ask;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.PossibleReading;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.RuleResult;

/** Results made by hand, for tests of pages. */
public final class Results {
  private static final Source BYLAW =
      new Source("fw-4", Source.Basis.INVENTED, "Fenwick well by-law", "4", "2024", null, "", "");
  private static final Source PRACTICE =
      new Source("practice", Source.Basis.COMMON_PRACTICE, "", "", "", null, "", "");

  private Results() {}

  private static Rule rule(
      String id, String title, FindingKind kind, String because, String remedy, Source source) {
    return new Rule(
        id,
        "fenwick-county",
        title,
        kind,
        "",
        new RuleProgram(
            null, List.of(new DatedText(null, null, null, null)), new JudgedBy.AsOf(), false),
        because,
        remedy,
        /* atOnce= */ "",
        source,
        List.of(),
        "",
        List.of(),
        "",
        "");
  }

  private static RuleResult result(
      Rule rule,
      Outcome outcome,
      String requirement,
      String numbers,
      @Nullable Deciding deciding,
      List<WorkingShown> workings,
      List<String> needs,
      List<String> remarks) {
    return new RuleResult(
        rule,
        outcome,
        new Explanation(
            outcome, requirement, "", numbers, deciding, workings, needs, remarks, 0, false),
        "",
        outcome == Outcome.WAIVED ? "V-2019-31" : "");
  }

  /** Outcomes that fit {@link Forms#full()}, on any record. */
  public static RecordResult of(WellRecord record) {
    WorkingShown submergence =
        new WorkingShown(
            "pump_submergence",
            "water over the intake in the test",
            "pump intake - pumping level",
            "238.5 ft - 249.5 ft",
            "-11 ft",
            "common practice",
            List.of(),
            List.of());
    List<RuleResult> results = new ArrayList<>();
    results.add(
        result(
            rule(
                "septic-tank-distance",
                "Well is far enough from the septic tank",
                FindingKind.DEFICIENCY,
                "Sewage can reach the intake through shallow ground.",
                "Re-measure; if it stands, ask the authority about a variance.",
                BYLAW),
            Outcome.FALLS_SHORT,
            "distance to the septic tank is at least 50 ft (15 m)",
            "49.9 ft is at least 50 ft",
            new Deciding(
                "setback.septic_tank", "49.9 ft", 49.9, Units.FOOT, 50, -0.1, "", "", false),
            List.of(),
            List.of(),
            List.of("The limit in feet was used, as the distance was written in feet.")));
    results.add(
        result(
            rule(
                "relief-above-cut-out",
                "Relief valve opens well above cut-out",
                FindingKind.DEFICIENCY,
                "A relief set at cut-out weeps, and is then shut off by someone.",
                "Set or replace the relief valve; drain the system first.",
                PRACTICE),
            Outcome.FALLS_SHORT,
            "relief setting is at least cut-out + 10 psi",
            "60 psi is at least 60 psi + 10 psi",
            new Deciding("relief.setting", "60 psi", 60, Units.PSI_UNIT, 70, -10, "", "", false),
            List.of(),
            List.of(),
            List.of()));
    results.add(
        result(
            rule(
                "pump-submergence",
                "Pump stays under water in the test",
                FindingKind.ADVISORY,
                "A pump that draws air wears out and loses its prime.",
                "Ask how the test was made; lower the pump or fit dry-run protection.",
                PRACTICE),
            Outcome.FALLS_SHORT,
            "water over the intake in the test is more than 0 ft",
            "-11 ft is more than 0 ft",
            new Deciding(
                "pump.intake_depth",
                "240 ft",
                -11,
                Units.FOOT,
                0,
                -11,
                "",
                "",
                false,
                "water over the intake in the test"),
            List.of(submergence),
            List.of(),
            List.of("Depths were brought to ground level with the stick-up of 1.5 ft.")));
    results.add(
        result(
            rule(
                "permit-before-start",
                "Permit is there before work begins",
                FindingKind.OMISSION,
                "Without its date nobody can tell.",
                "Give the date of the permit.",
                BYLAW),
            Outcome.FALLS_SHORT,
            "permit issued is given",
            "",
            new Deciding(
                "dates.permit", "", Double.NaN, null, Double.NaN, Double.NaN, "", "", false),
            List.of(),
            List.of(),
            List.of()));
    results.add(
        result(
            rule(
                "fuel-tank-distance",
                "Well is far enough from the fuel tank",
                FindingKind.DEFICIENCY,
                "Fuel spoils water for years.",
                "Measure.",
                BYLAW),
            Outcome.CANNOT_TELL,
            "distance to the fuel tank is at least 25 ft",
            "not known is at least 25 ft",
            null,
            List.of(),
            List.of("setback.fuel_tank"),
            List.of()));
    results.add(
        result(
            rule(
                "property-line",
                "Well is far enough from the property line",
                FindingKind.DEFICIENCY,
                "The neighbour may build.",
                "Ask for a variance.",
                BYLAW),
            Outcome.WAIVED,
            "distance to the property line is at least 15 ft",
            "12 ft is at least 15 ft",
            new Deciding("setback.property_line", "12 ft", 12, Units.FOOT, 15, -3, "", "", false),
            List.of(),
            List.of(),
            List.of()));
    results.add(
        result(
            rule(
                "field-distance",
                "Well is far enough from the absorption field",
                FindingKind.DEFICIENCY,
                "Sewage.",
                "Measure.",
                BYLAW),
            Outcome.MEETS,
            "distance to the absorption field is at least 100 ft",
            "112 ft is at least 100 ft",
            new Deciding(
                "setback.absorption_field", "112 ft", 112, Units.FOOT, 100, 12, "", "", false),
            List.of(),
            List.of(),
            List.of()));
    results.add(
        result(
            rule(
                "jet-lift",
                "Jet pump can lift so far",
                FindingKind.ADVISORY,
                "Air.",
                "-",
                PRACTICE),
            Outcome.NOT_APPLICABLE,
            "suction lift is at most 25 ft",
            "",
            null,
            List.of(),
            List.of(),
            List.of()));
    List<Finding> findings = new ArrayList<>();
    for (RuleResult each : results) {
      Deciding deciding = each.explanation().deciding();
      if (each.outcome() == Outcome.FALLS_SHORT && deciding != null) {
        boolean pump = each.rule().id().equals("pump-submergence");
        findings.add(
            new Finding(
                record.id(),
                record.file(),
                record.row(),
                "fenwick-county",
                each.rule(),
                deciding,
                pump ? "The pumping level may have been read from an air line." : "",
                0,
                Double.NaN));
      }
    }
    return new RecordResult(
        record,
        pack(results.stream().map(RuleResult::rule).toList()),
        results,
        findings,
        List.of(new Ask("setback.fuel_tank", 1), new Ask("water.test_duration", 1)),
        List.of(
            new PossibleReading(
                "tank.precharge",
                "",
                "42 psi",
                "It may be 24 psi with two digits swapped",
                2,
                List.of())),
        List.of(
            submergence,
            new WorkingShown(
                "drawdown",
                "fall of the water level in the test",
                "pumping level - static level",
                "251 ft - 44 ft",
                "207 ft",
                "common practice",
                List.of(),
                List.of("the pumping level was measured while pumping")),
            new WorkingShown(
                "recovery_inflow",
                "inflow that the recovery implies",
                "-",
                "",
                "",
                "from memory",
                List.of("water.recovery_rise", "water.recovery_time"),
                List.of())),
        List.of(),
        List.of("wiring", "pressure", "coliform"));
  }

  /** A pack of these rules. */
  public static Pack pack(List<Rule> rules) {
    return new Pack(
        "fenwick-county",
        "Fenwick County private wells (invented for the examples)",
        "Fenwick County Health Office (invented)",
        List.of("fenwick"),
        LocalDate.of(2024, 4, 1),
        new JudgedBy.Entry(
            Catalogue.standard().entry(Catalogue.standard().index("dates.completed"))),
        "Invented for the examples; no real county.",
        List.of("common-practice"),
        Map.of(),
        Map.of(),
        List.of(),
        List.of(),
        null,
        Map.of(),
        rules,
        List.of(new PackFile("fenwick-county", "ab12", "{}")));
  }
}
