package org.wellcurb.crosscheck;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wellcurb.record.Catalogue;

/** Looks at a whole batch. */
public final class CrossCheck {
  /** Records that are named with a hint. */
  private static final int NAMED = 10;

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
    List<Copying.Tried> figures = new ArrayList<>();
    Copying copying = new Copying(survey);
    for (Field field : Field.values()) {
      figures.addAll(copying.tried(field, written(field)));
    }
    UnitSlips unitSlips = new UnitSlips(survey);
    int nobody = survey.contractors().indexOf("");
    List<UnitSlips.Tried> byContractor = unitSlips.tried(survey.ints(SurveyRow.CONTRACTOR), nobody);
    List<UnitSlips.Tried> byInput =
        survey.files().size() < 2 ? List.of() : unitSlips.tried(survey.ints(SurveyRow.FILE), -1);
    double[] q = q(figures, byContractor, byInput);
    List<CrossResult.SlipHint> slips = new ArrayList<>();
    slips(slips, byContractor, false, q, figures.size(), unitSlips);
    slips(slips, byInput, true, q, figures.size() + byContractor.size(), unitSlips);
    slips.sort(
        Comparator.comparingDouble(CrossResult.SlipHint::q)
            .thenComparing(CrossResult.SlipHint::group));
    List<Neighbours.Unlike> unlike = new ArrayList<>();
    long compared = neighbours(unlike);
    List<CrossResult.NeighbourHint> shown = new ArrayList<>();
    for (Neighbours.Unlike each : unlike.subList(0, Math.min(most, unlike.size()))) {
      shown.add(
          new CrossResult.NeighbourHint(
              survey.seen(each.place()),
              each.field(),
              each.value(),
              each.median(),
              each.spread(),
              each.neighbours(),
              each.score()));
    }
    Groups groups = new Groups(survey);
    List<CrossResult.RuleHint> rules = new ArrayList<>();
    long ruleTests = groups.hints(rules);
    return new CrossResult(
        survey.rows(),
        duplicates,
        hints(figures, q),
        rules.subList(0, Math.min(most, rules.size())),
        rules.size(),
        ruleTests,
        groups.leftOut(),
        slips,
        q.length,
        shown,
        unlike.size(),
        compared,
        groups.rates(CrossResult.By.CONTRACTOR),
        groups.rates(CrossResult.By.ZONE),
        groups.rates(CrossResult.By.YEAR));
  }

  private float[] written(Field field) throws IOException {
    return survey.floats(SurveyRow.WRITTEN + 4 * field.ordinal());
  }

  private static double[] q(
      List<Copying.Tried> figures,
      List<UnitSlips.Tried> byContractor,
      List<UnitSlips.Tried> byInput) {
    double[] p = new double[figures.size() + byContractor.size() + byInput.size()];
    int at = 0;
    for (Copying.Tried each : figures) {
      p[at++] = each.p();
    }
    for (UnitSlips.Tried each : byContractor) {
      p[at++] = each.p();
    }
    for (UnitSlips.Tried each : byInput) {
      p[at++] = each.p();
    }
    return FalseDiscovery.q(p);
  }

  private List<CrossResult.FigureHint> hints(List<Copying.Tried> tried, double[] q)
      throws IOException {
    List<CrossResult.FigureHint> hints = new ArrayList<>();
    for (int i = 0; i < tried.size(); i++) {
      Copying.Tried each = tried.get(i);
      if (each.isMarked() && q[i] <= CrossResult.ACCEPTED) {
        hints.add(
            new CrossResult.FigureHint(
                survey.contractors().get(each.contractor()),
                survey.zones().get(each.zone()),
                each.field(),
                each.kind(),
                each.figure(),
                each.hits(),
                each.own(),
                Share.of(each.hits(), each.own()),
                each.othersShare(),
                each.p(),
                q[i],
                seen(each)));
      }
    }
    hints.sort(
        Comparator.comparingDouble(CrossResult.FigureHint::q)
            .thenComparingDouble(CrossResult.FigureHint::p)
            .thenComparing(CrossResult.FigureHint::licence));
    return hints;
  }

  /** Some of the records that a hint is about. */
  private List<Seen> seen(Copying.Tried hint) throws IOException {
    float[] written = written(hint.field());
    int[] contractor = survey.ints(SurveyRow.CONTRACTOR);
    int[] zone = survey.ints(SurveyRow.ZONE);
    List<Seen> seen = new ArrayList<>();
    for (int i = 0; i < written.length && seen.size() < NAMED; i++) {
      if (contractor[i] == hint.contractor()
          && zone[i] == hint.zone()
          && Copying.isAbout(hint, written[i])) {
        seen.add(survey.seen(i));
      }
    }
    return seen;
  }

  private void slips(
      List<CrossResult.SlipHint> into,
      List<UnitSlips.Tried> tried,
      boolean isInput,
      double[] q,
      int from,
      UnitSlips all)
      throws IOException {
    List<String> names = isInput ? survey.files() : survey.contractors();
    for (int i = 0; i < tried.size(); i++) {
      UnitSlips.Tried each = tried.get(i);
      if (each.isMarked() && q[from + i] <= CrossResult.ACCEPTED) {
        int[] groups = survey.ints(isInput ? SurveyRow.FILE : SurveyRow.CONTRACTOR);
        List<Seen> seen = new ArrayList<>();
        for (int place : all.records(groups, each.group(), each.isShallow(), NAMED)) {
          seen.add(survey.seen(place));
        }
        into.add(
            new CrossResult.SlipHint(
                names.get(each.group()),
                isInput,
                each.hits(),
                Share.of(each.hits(), each.of()),
                each.ratio(),
                each.p(),
                q[from + i],
                seen));
      }
    }
  }

  /** Depths as shares of the median; water in metres above the sea; yields in logarithms. */
  private long neighbours(List<Neighbours.Unlike> into) throws IOException {
    Neighbours neighbours = new Neighbours(survey);
    float[] depth = survey.floats(SurveyRow.VALUES + 4 * Field.DEPTH.ordinal());
    Neighbours.Found depths = neighbours.find(Field.DEPTH, depth, 0.1, 0.25, true);
    float[] level = survey.floats(SurveyRow.VALUES + 4 * Field.STATIC_LEVEL.ordinal());
    float[] elevation = survey.floats(SurveyRow.ELEVATION);
    float[] yield = survey.floats(SurveyRow.VALUES + 4 * Field.YIELD.ordinal());
    for (int i = 0; i < level.length; i++) {
      level[i] = elevation[i] - level[i];
      yield[i] = yield[i] > 0 ? (float) Math.log10(yield[i]) : Float.NaN;
    }
    Neighbours.Found levels = neighbours.find(Field.STATIC_LEVEL, level, 1, 3, false);
    Neighbours.Found yields = neighbours.find(Field.YIELD, yield, 0.1, 0.2, false);
    into.addAll(depths.unlike());
    into.addAll(levels.unlike());
    into.addAll(yields.unlike());
    into.sort(
        Comparator.comparingDouble((Neighbours.Unlike each) -> -each.score())
            .thenComparingInt(Neighbours.Unlike::place));
    return depths.lookedAt() + levels.lookedAt() + yields.lookedAt();
  }
}
