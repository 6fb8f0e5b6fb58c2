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
    boolean isOwn = threads > 1;
    // The look at units is soon done, and groups need no more of what rests on where wells stand.
    try (Beside<SlipHints> units = new Beside<>(() -> new SlipHints(survey), isOwn);
        Beside<OfWells> wells = new Beside<>(() -> ofWells(units), isOwn)) {
      return run(units, wells);
    }
  }

  /** What rests on single wells, and on those beside them. */
  private record OfWells(Duplicates.Found duplicates, NeighbourHints neighbours) {}

  private OfWells ofWells(Beside<SlipHints> units) throws IOException {
    Duplicates.Found duplicates = new Duplicates(survey, catalogue, most).find();
    return new OfWells(duplicates, NeighbourHints.of(survey, units.get().off(), most));
  }

  private CrossResult run(Beside<SlipHints> units, Beside<OfWells> wells) throws IOException {
    List<Copying.Tried> figures = FigureHints.tried(survey);
    SlipHints slips = units.get();
    Groups groups = new Groups(survey, slips.off());
    TestPool pool = new TestPool();
    pool.add(slips.p(figures));
    groups.addTo(pool);
    double[] q = pool.q();
    CrossResult.Rank[] ranks = pool.ranks();
    List<CrossResult.FigureHint> figureHints = FigureHints.hints(survey, figures, q, ranks);
    List<CrossResult.SlipHint> slipHints = slips.hints(q, ranks, figures.size());
    NeighbourHints neighbours = wells.get().neighbours();
    List<CrossResult.RuleHint> rules = groups.hints(q, ranks);
    return new CrossResult(
        survey.rows(),
        survey.unnamed(),
        wells.get().duplicates(),
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
