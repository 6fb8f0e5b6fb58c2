package org.wellcurb.crosscheck;

import java.io.IOException;
import java.util.List;
import org.wellcurb.record.Catalogue;

/**
 * Looks at a whole batch. Each check reads the columns that it needs, into {@link Columns}, so that
 * the heap does not grow with the batch.
 */
public final class CrossCheck {
  /** Records that are named with a hint. */
  static final int NAMED = 10;

  private final SurveyFile survey;
  private final Catalogue catalogue;
  private final int most;

  /**
   * @param most groups, pairs and wells that are described of each kind; all are counted
   */
  public CrossCheck(SurveyFile survey, Catalogue catalogue, int most) {
    this.survey = survey;
    this.catalogue = catalogue;
    this.most = most;
  }

  /** Runs every check, one after the other. */
  public CrossResult run() throws IOException {
    return run(1);
  }

  /**
   * Runs every check; where there are two threads, those on what wells are alike in and on where
   * they stand beside those on figures and rules, which take as long. What comes of it is the same.
   */
  public CrossResult run(int threads) throws IOException {
    survey.complete();
    try (Beside<OfWells> beside = new Beside<>(this::ofWells, threads > 1)) {
      return run(beside);
    }
  }

  /** What rests on single wells, and on where they stand. */
  private record OfWells(
      Duplicates.Found duplicates, SlipHints slips, NeighbourHints neighbours) {}

  private OfWells ofWells() throws IOException {
    Duplicates.Found duplicates = new Duplicates(survey, catalogue, most).find();
    SlipHints slips = new SlipHints(survey);
    return new OfWells(duplicates, slips, NeighbourHints.of(survey, slips.off(), most));
  }

  private CrossResult run(Beside<OfWells> beside) throws IOException {
    List<Copying.Tried> figures = FigureHints.tried(survey);
    SlipHints slips = beside.get().slips();
    Groups groups = new Groups(survey, slips.off());
    TestPool pool = new TestPool();
    pool.add(slips.p(figures));
    groups.addTo(pool);
    double[] q = pool.q();
    CrossResult.Rank[] ranks = pool.ranks();
    List<CrossResult.FigureHint> figureHints = FigureHints.hints(survey, figures, q, ranks);
    List<CrossResult.SlipHint> slipHints = slips.hints(q, ranks, figures.size());
    NeighbourHints neighbours = beside.get().neighbours();
    List<CrossResult.RuleHint> rules = groups.hints(q, ranks);
    return new CrossResult(
        survey.rows(),
        survey.unnamed(),
        beside.get().duplicates(),
        figureHints,
        rules.subList(0, Math.min(most, rules.size())),
        rules.size(),
        groups.leftOut(),
        slips.off().cardinality(),
        slipHints,
        groups.tests(figures.size(), slips.tests()),
        neighbours.shown(),
        neighbours.total(),
        neighbours.looked(),
        groups.rates(CrossResult.By.CONTRACTOR, q, ranks),
        groups.rates(CrossResult.By.ZONE, q, ranks),
        groups.rates(CrossResult.By.YEAR, q, ranks));
  }
}
