package org.wellcurb.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.RuleDifference;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.RuleResult;
import org.wellcurb.screening.Tally;
import org.wellcurb.screening.VarianceUse;

/** Runs made by hand, for tests of the batch page. */
public final class Batches {
  private Batches() {}

  /** A run of this many records, those with findings first; every text is {@code text}. */
  public static BatchView of(int records, String text) {
    RecordResult result = Results.of(Forms.full());
    Pack pack = result.pack();
    Tally tally = new Tally(pack);
    for (int i = 0; i < records; i++) {
      byte[] outcomes = new byte[pack.rules().size()];
      for (int rule = 0; rule < outcomes.length; rule++) {
        RuleResult each = result.results().get(rule);
        boolean same = i % (rule + 2) == 0;
        outcomes[rule] = (byte) (same ? each.outcome() : Outcome.MEETS).ordinal();
      }
      tally.add(outcomes);
    }
    List<RecordLine> lines = new ArrayList<>();
    for (int i = 0; i < Math.min(records, Cap.RECORDS_ON_PAGE.most()); i++) {
      lines.add(
          new RecordLine(
              text + i,
              "forms-2019.csv",
              i + 2,
              pack.id(),
              "D-" + i % 7,
              i % 3 == 0 ? "" : "P-" + i % 5,
              new KindCounts(records - i, i % 3, i % 2, i % 4),
              i % 5,
              "Well is far enough from the septic tank",
              i < 500 ? "sheets/w-" + i + ".html" : ""));
    }
    return new BatchView(
        "1.0.0",
        LocalDate.of(2026, 1, 1),
        records + 2,
        records,
        2,
        records,
        records / 2,
        new KindCounts(records, records / 2, 3, records / 3),
        List.of(tally),
        lines,
        List.of(
            new ContractorLine("D-118", 14, 9, new KindCounts(7, 4, 0, 3), "notices/d-118.html"),
            new ContractorLine("P-77", 11, 3, new KindCounts(1, 2, 3, 4), ""),
            new ContractorLine("", 2, 1, new KindCounts(1, 0, 0, 0), "")),
        List.of(new AskLine("setback.fuel_tank", 812, 640), new AskLine("dates.permit", 40, 40)),
        List.of(
            new RuleAsk(
                0,
                0,
                812,
                List.of(
                    new AskLine("setback.fuel_tank", 812, 812), new AskLine("well.use", 3, 3)))),
        grid(text),
        List.of(
            new SetAsideLine(
                "forms-2019.csv", 88, "well.depth", "A quoted cell is not closed.", text),
            new SetAsideLine("old.csv", 0, "", "There is no usable header.", "")),
        List.of(
            new InputLine(
                "forms-2019.csv",
                "CSV, comma, UTF-8",
                "ab",
                records + 1,
                records,
                1,
                0,
                40,
                false,
                List.of(
                    "The column “pump.intake_dept” is no entry; the nearest is pump.intake_depth."),
                List.of(
                    new ColumnLine(
                        "DEPTH",
                        "well.depth",
                        "ft",
                        "",
                        30,
                        5,
                        2,
                        1,
                        2,
                        java.util.Map.of("m", 2L),
                        java.util.Map.of("note.not_a_number", 2L),
                        List.of(
                            new ColumnDoubt("beyond", 2, List.of("99999, " + text)),
                            new ColumnDoubt("zeros", 12, List.of()),
                            new ColumnDoubt("unit_changes", 0, List.of()),
                            new ColumnDoubt("unit_unsaid", 30, List.of("ft"))),
                        List.of(
                            new CodeLine("see log " + text, "unreadable", 2),
                            new CodeLine("UNK", "unknown", 2))),
                    new ColumnLine(
                        text,
                        "",
                        "",
                        "nearest: pump.intake_depth",
                        30,
                        10,
                        0,
                        0,
                        0,
                        java.util.Map.of(),
                        java.util.Map.of(),
                        List.of(),
                        List.of()))),
            new InputLine("old.csv", "CSV", "cd", 1, 0, 1, 3, 3, true, List.of(), List.of())),
        List.of("readme.md"),
        maps(),
        Crosses.view(),
        new Elsewhere(),
        new FollowUp(
            2,
            List.of(new Settlement(3, "FW-9", text, "ok", "A", LocalDate.of(2025, 5, 1), text, "")),
            1,
            List.of(
                new SettledOtherwise(
                    new Settlement(
                        6, "FW-4", "tank", "ok", "A", LocalDate.of(2025, 5, 1), "", "20"),
                    text)),
            1,
            3,
            2,
            List.of(new Corrected(2, "FW-1", "well.depth", "", text)),
            List.of("4: " + text),
            1,
            List.of(
                new Explained(
                    3,
                    "FW-1",
                    "forms.csv",
                    "2",
                    "D-1",
                    "tank",
                    "well.depth",
                    "",
                    "as told",
                    "",
                    false),
                new Explained(
                    4, "FW-2", "", "", "D-1", "tank", "well.depth", "20 ft", "typed", "", true)),
            2,
            List.of(
                new Explained(
                    5, "FW-3", "", "", "D-1", "tank", "tank.volume", "n/a", text, "", true)),
            1,
            List.of(new Refused("a.csv:2", "FW-1, well.depth: " + text, Refused.Why.UNREADABLE)),
            1,
            List.of(
                new IdleVariance(
                    text, "no-such-rule", text, VarianceUse.Does.NO_RULE, "septic-tank-distance")),
            1,
            1,
            new SinceCounts(4, 3, 2, 1, 1, 2, 5, 6, 0)),
        List.of("pressure", "pit", "flowing"),
        records > Cap.RECORDS_ON_PAGE.most()
            ? List.of(new Cut(Cap.RECORDS_ON_PAGE, Cap.RECORDS_ON_PAGE.most(), records))
            : List.of(),
        List.of("findings.csv", "records.csv", "rules.csv", "run.json", "set-aside.csv"));
  }

  private static GridView grid(String text) {
    List<ContractorLine> columns = new ArrayList<>();
    List<Long> counts = new ArrayList<>();
    for (int i = 0; i < Cap.GRID_CONTRACTORS.most(); i++) {
      columns.add(new ContractorLine(text + i, 4L * i, i, new KindCounts(i, 0, 0, 0), ""));
      counts.add((long) i / 2);
    }
    List<GridView.Row> rows = new ArrayList<>();
    for (int rule = 0; rule < 3; rule++) {
      rows.add(new GridView.Row(0, rule, 20, counts));
    }
    return new GridView(columns, rows, 11, 3, 180);
  }

  private static Maps maps() {
    Maps maps = new Maps(1, 100);
    MapCells map = maps.of(0);
    for (int i = 0; i < 60; i++) {
      map.add(new Place(44 + (i * 7 % 13) / 20.0, -76 + (i * 5 % 17) / 20.0, 100), i % 5);
    }
    map.unplaced();
    return maps;
  }

  /** A notice to one licence. */
  public static NoticeView notice() {
    RecordResult result = Results.of(Forms.full());
    return new NoticeView(
        "D-118",
        LocalDate.of(2026, 1, 1),
        LocalDate.of(2026, 1, 31),
        List.of(result.pack()),
        result.findings(),
        result.findings().size() + 3,
        /* advisories= */ 2,
        "D-118.csv",
        Map.of(),
        Map.of(),
        List.of("pressure"));
  }

  /** A batch beside an earlier one. */
  public static SinceView since() {
    SinceCounts counts = new SinceCounts(1, 3, 1, 0, 1, 1, 0, 0, 0);
    SinceCsv.Line line =
        new SinceCsv.Line(
            "FW-1", "forms.csv", "2", "p", "tank", "deficiency", "Far enough", "well.depth");
    return new SinceView(
        LocalDate.of(2026, 1, 1),
        "2025-01-01",
        true,
        true,
        false,
        1,
        List.of("fenwick-county"),
        List.of("tarn-district"),
        counts,
        List.of(new SinceView.Group("D-1", "", counts), new SinceView.Group("", "", counts)),
        List.of(new SinceView.Group("Far enough", "", counts)),
        List.of(new SinceCsv.Changed(line, "D-1", SinceCounts.Change.NEW)),
        3,
        Map.of(SinceView.Told.BY_ROW, 2L));
  }

  /** Two packs on the same records. */
  public static RehearsalView rehearsal() {
    Pack pack = Results.of(Forms.full()).pack();
    Rule rule = pack.rules().get(0);
    return new RehearsalView(
        pack,
        pack,
        LocalDate.of(2026, 1, 1),
        40,
        1,
        new RehearsalView.Turns(3, 2, 1, 1, 1, 0, 1, 0, 1, 1),
        List.of(
            new RehearsalView.Difference(
                null,
                rule,
                new RuleDifference(Set.of(RuleDifference.What.RULE), List.of(), List.of()),
                0,
                40,
                0,
                2,
                2,
                1)),
        List.of(
            new RehearsalView.RuleChange(
                "septic-tank-distance",
                "Well is far enough from the septic tank",
                Outcome.MEETS,
                Outcome.FALLS_SHORT,
                2),
            new RehearsalView.RuleChange("new-rule", "A new rule", null, Outcome.CANNOT_TELL, 1)),
        List.of(new RehearsalView.GroupChange("2019", 30, 3, 2, 1)),
        List.of(new RehearsalView.GroupChange("hill", 30, 3, 2, 1)),
        List.of(new RehearsalView.GroupChange("", 40, 3, 2, 1)),
        List.of(
            new RehearsalView.RecordChange(
                "FW-1",
                "forms.csv",
                2,
                "2019-05-01",
                rule,
                Outcome.MEETS,
                Outcome.FALLS_SHORT,
                null,
                null)),
        3);
  }
}
