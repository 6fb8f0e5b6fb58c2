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
  private Crosses() {}

  public static CrossView view() {
    Seen a = new Seen("forms.csv", 2, 0);
    Seen b = new Seen("forms.csv", 9, 7);
    return new CrossView(
        new CrossResult(
            40,
            new Duplicates.Found(
                List.of(
                    new Duplicates.SameNumber(List.of(a, b), List.of("well.depth")),
                    new Duplicates.SameNumber(List.of(a, b), List.of())),
                2,
                4,
                List.of(new Duplicates.NearCopy(a, b, 31, List.of("site.latitude"))),
                1),
            List.of(
                figure(Copying.Kind.REPEATED, 40),
                figure(Copying.Kind.ROUND, Double.NaN),
                figure(Copying.Kind.RUN, 40)),
            List.of(
                new CrossResult.SlipHint("D-2", false, 18, Share.of(18, 20), 0.31, 1e-9, 1e-7),
                new CrossResult.SlipHint("old.csv", true, 18, Share.of(18, 20), 3.3, 1e-9, 1e-7)),
            90,
            List.of(
                new CrossResult.NeighbourHint(a, Field.DEPTH, 300, 60, 4, 8, 40),
                new CrossResult.NeighbourHint(a, Field.STATIC_LEVEL, 12, 60, 1, 6, 48),
                new CrossResult.NeighbourHint(b, Field.YIELD, 0.2, -1, 0.1, 8, 12)),
            5,
            200,
            List.of(
                new CrossResult.GroupRate("D-1", Share.of(5, 50), false, 0.5, 0.7),
                new CrossResult.GroupRate("D-2", Share.of(25, 50), false, 1e-6, 1e-5),
                new CrossResult.GroupRate("", Share.of(1, 5), true, Double.NaN, Double.NaN)),
            List.of(),
            List.of()),
        Map.of(0, "FW-1", 7, "FW-2"));
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
        List.of(new Seen("forms.csv", 2, 0)));
  }
}
