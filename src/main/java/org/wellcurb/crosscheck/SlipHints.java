package org.wellcurb.crosscheck;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The tests on units of contractors and inputs, and those of them that are worth a look. */
final class SlipHints {
  private final SurveyFile survey;
  private final List<UnitSlips.Tried> byContractor;
  private final List<UnitSlips.Tried> byInput;

  SlipHints(SurveyFile survey) throws IOException {
    this.survey = survey;
    UnitSlips slips = new UnitSlips(survey);
    byContractor = slips.tried(survey.ints(SurveyRow.CONTRACTOR), survey.contractors().indexOf(""));
    byInput = survey.files().size() < 2 ? List.of() : slips.tried(survey.ints(SurveyRow.FILE), -1);
  }

  /** The q of all tests together: those on figures first, then these. */
  double[] q(List<Copying.Tried> figures) {
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

  /** Those that are great enough, and rare enough by chance; least q first. */
  List<CrossResult.SlipHint> hints(double[] q, int from) throws IOException {
    List<CrossResult.SlipHint> hints = new ArrayList<>();
    add(hints, byContractor, false, q, from);
    add(hints, byInput, true, q, from + byContractor.size());
    hints.sort(
        Comparator.comparingDouble(CrossResult.SlipHint::q)
            .thenComparing(CrossResult.SlipHint::group));
    return hints;
  }

  private void add(
      List<CrossResult.SlipHint> into,
      List<UnitSlips.Tried> tried,
      boolean isInput,
      double[] q,
      int from)
      throws IOException {
    List<UnitSlips.Tried> marked = new ArrayList<>();
    List<Double> markedQ = new ArrayList<>();
    for (int i = 0; i < tried.size(); i++) {
      if (tried.get(i).isMarked() && q[from + i] <= CrossResult.ACCEPTED) {
        marked.add(tried.get(i));
        markedQ.add(q[from + i]);
      }
    }
    if (marked.isEmpty()) {
      return;
    }
    UnitSlips slips = new UnitSlips(survey);
    int[] groups = survey.ints(isInput ? SurveyRow.FILE : SurveyRow.CONTRACTOR);
    for (int i = 0; i < marked.size(); i++) {
      UnitSlips.Tried each = marked.get(i);
      List<Seen> seen = new ArrayList<>();
      for (int place : slips.records(groups, each.group(), each.isShallow(), CrossCheck.NAMED)) {
        seen.add(survey.seen(place));
      }
      into.add(
          new CrossResult.SlipHint(
              (isInput ? survey.files() : survey.contractors()).get(each.group()),
              isInput,
              each.hits(),
              Share.of(each.hits(), each.of()),
              each.ratio(),
              each.p(),
              markedQ.get(i),
              seen));
    }
  }
}
