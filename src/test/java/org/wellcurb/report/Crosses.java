package org.wellcurb.report;

import java.util.List;
import java.util.Map;
import org.wellcurb.crosscheck.Copying;
import org.wellcurb.crosscheck.CrossResult;
import org.wellcurb.crosscheck.Duplicates;
import org.wellcurb.crosscheck.Field;
import org.wellcurb.crosscheck.Seen;
import org.wellcurb.crosscheck.Share;

/** What a whole batch might show, one of each. */
public final class Crosses {
  private static final CrossResult.Rank RANK = new CrossResult.Rank(2, 1);

  private Crosses() {}

  public static CrossView view() {
    return view(4, 3);
  }

  /**
   * The same, of which more was found than is described.
   *
   * @param nearCopies groups of near copies; four are described
   * @param rules rules that a group falls short of; three are described
   */
  static CrossView view(long nearCopies, long rules) {
    Seen a = new Seen("forms.csv", 2, 0);
    Seen b = new Seen("forms.csv", 9, 7);
    return new CrossView(
        new CrossResult(
            40,
            3,
            new Duplicates.Found(
                List.of(
                    new Duplicates.SameNumber(9, List.of(a, b), List.of("well.depth")),
                    new Duplicates.SameNumber(9, List.of(a, b), List.of())),
                2,
                4,
                List.of(
                    new Duplicates.NearCopy(2, List.of(a, b), 31, List.of("site.latitude")),
                    new Duplicates.NearCopy(2, List.of(a, b), 31, List.of()),
                    new Duplicates.NearCopy(12, List.of(a, b), 31, List.of("site.latitude")),
                    new Duplicates.NearCopy(12, List.of(a, b), 31, List.of())),
                nearCopies,
                28,
                12),
            List.of(
                figure(Copying.Kind.REPEATED, 40),
                figure(Copying.Kind.ROUND, Double.NaN),
                figure(Copying.Kind.RUN, 40),
                figure(Copying.Kind.DIGIT, 7)),
            List.of(
                rule(CrossResult.By.CONTRACTOR, "D-1"),
                rule(CrossResult.By.ZONE, "hill"),
                rule(CrossResult.By.YEAR, "2004")),
            rules,
            1,
            38,
            List.of(
                new CrossResult.SlipHint(
                    "D-2", false, 18, Share.of(18, 20), 12, 0.31, 1e-9, 1e-7, RANK, List.of(a, b)),
                new CrossResult.SlipHint(
                    "old.csv", true, 18, Share.of(18, 20), 12, 3.3, 1e-9, 1e-7, RANK, List.of(b))),
            new CrossResult.Tests(20, 10, 40, List.of(10L, 5L, 5L)),
            List.of(
                new CrossResult.NeighbourHint(a, Field.DEPTH, 300, 60, 4, 6, 8, 40),
                new CrossResult.NeighbourHint(a, Field.STATIC_LEVEL, 12, 60, 0.2, 1, 6, 48),
                new CrossResult.NeighbourHint(b, Field.YIELD, 0.2, -1, 0.1, 0.1, 8, 12)),
            5,
            List.of(
                new CrossResult.Looked(Field.DEPTH, 200, CrossResult.How.COMPARED),
                new CrossResult.Looked(Field.STATIC_LEVEL, 0, CrossResult.How.NONE_NEAR),
                new CrossResult.Looked(Field.YIELD, 90, CrossResult.How.TELLS_TOO_LITTLE)),
            List.of(
                new CrossResult.GroupRate(
                    "D-1", Share.of(5, 50), 0.11, 0, 0.3, false, 0.5, 0.7, 1.2, RANK),
                new CrossResult.GroupRate(
                    "D-2", Share.of(25, 50), 0.2, 0.1, 0.4, false, 1e-6, 1e-5, 1.2, RANK),
                new CrossResult.GroupRate(
                    "D-3", Share.of(1, 50), 0.2, 0.1, 0.4, false, 1e-6, 1e-5, 1.2, RANK),
                new CrossResult.GroupRate(
                    "",
                    Share.of(1, 5),
                    0.2,
                    0,
                    0.7,
                    true,
                    Double.NaN,
                    Double.NaN,
                    1.2,
                    CrossResult.Rank.NONE)),
            List.of(),
            List.of()),
        List.of(
            new RuleCount(
                "demo", "relief", "The relief valve opens", "deficiency", Share.of(20, 50), 9)),
        List.of(new AskLine("well.depth", 9, 4)),
        40,
        Map.of(0, "FW-1", 7, "FW-2"));
  }

  private static CrossResult.RuleHint rule(CrossResult.By by, String group) {
    return new CrossResult.RuleHint(
        by,
        group,
        "demo",
        "relief",
        "The relief valve opens",
        Share.of(20, 50),
        0.1,
        0.2,
        1e-6,
        1e-4,
        RANK);
  }

  private static CrossResult.FigureHint figure(Copying.Kind kind, double figure) {
    return new CrossResult.FigureHint(
        "D-1",
        kind == Copying.Kind.RUN ? "" : "hill",
        Field.STATIC_LEVEL,
        kind,
        figure,
        12,
        30,
        Share.of(12, 30),
        0.04,
        1e-6,
        1e-4,
        RANK,
        List.of(new Seen("forms.csv", 2, 0)));
  }
}
