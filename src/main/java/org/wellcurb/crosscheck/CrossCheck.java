package org.wellcurb.crosscheck;

import java.io.IOException;
import java.util.List;
import org.wellcurb.record.Catalogue;

/**
 * Looks at a whole batch. Each check reads the columns that it needs and lets go of them before the
 * next begins, so that few numbers a record are in memory at a time.
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

  /** Runs every check. */
  public CrossResult run() throws IOException {
    Duplicates.Found duplicates = new Duplicates(survey, catalogue, most).find();
    List<Copying.Tried> figures = FigureHints.tried(survey);
    SlipHints slips = new SlipHints(survey);
    TestPool pool = new TestPool();
    pool.add(slips.p(figures));
    Groups groups = new Groups(survey);
    groups.addTo(pool);
    double[] q = pool.q();
    List<CrossResult.FigureHint> figureHints = FigureHints.hints(survey, figures, q);
    List<CrossResult.SlipHint> slipHints = slips.hints(q, figures.size());
    NeighbourHints neighbours = NeighbourHints.of(survey, most);
    List<CrossResult.RuleHint> rules = groups.hints(q);
    return new CrossResult(
        survey.rows(),
        survey.unnamed(),
        duplicates,
        figureHints,
        rules.subList(0, Math.min(most, rules.size())),
        rules.size(),
        groups.tests(),
        groups.leftOut(),
        slipHints,
        q.length,
        neighbours.shown(),
        neighbours.total(),
        neighbours.compared(),
        groups.rates(CrossResult.By.CONTRACTOR, q),
        groups.rates(CrossResult.By.ZONE, q),
        groups.rates(CrossResult.By.YEAR, q));
  }
}
