package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The tests on units of contractors and inputs, and those of them that are worth a look. */
final class SlipHints {
  private final SurveyFile survey;
  private final UnitSlips.Found byContractor;
  private final UnitSlips.Found byInput;

  /** Records of licences whose depths are in another unit, as far as tests go. */
  private final BitSet off;

  SlipHints(SurveyFile survey) throws IOException {
    this.survey = survey;
    UnitSlips slips = new UnitSlips(survey);
    byContractor = slips.byLicence();
    off = slips.off();
    byInput =
        survey.files().size() < 2
            ? UnitSlips.Found.NOTHING
            : slips.byInput(survey.ints(SurveyRow.FILE));
  }

  /** Records of licences whose depths seem to be in another unit. */
  BitSet off() {
    return off;
  }

  /** Tests tried. */
  long tests() {
    return (long) byContractor.tried().size() + byInput.tried().size();
  }

  /** The p of one family of tests: those on figures first, then these. */
  double[] p(List<Copying.Tried> figures) {
    double[] p = new double[figures.size() + byContractor.tried().size() + byInput.tried().size()];
    int at = 0;
    for (Copying.Tried each : figures) {
      p[at++] = each.p();
    }
    for (UnitSlips.Tried each : byContractor.tried()) {
      p[at++] = each.p();
    }
    for (UnitSlips.Tried each : byInput.tried()) {
      p[at++] = each.p();
    }
    return p;
  }

  /** Those that are great enough, and rare enough by chance; least q first. */
  List<CrossResult.SlipHint> hints(double[] q, CrossResult.Rank[] ranks, int from)
      throws IOException {
    List<CrossResult.SlipHint> hints = new ArrayList<>();
    add(hints, byContractor, false, q, ranks, from);
    add(hints, byInput, true, q, ranks, from + byContractor.tried().size());
    hints.sort(
        Comparator.comparingDouble(CrossResult.SlipHint::q)
            .thenComparing(CrossResult.SlipHint::group));
    return hints;
  }

  private void add(
      List<CrossResult.SlipHint> into,
      UnitSlips.Found found,
      boolean isInput,
      double[] q,
      CrossResult.Rank[] ranks,
      int from)
      throws IOException {
    List<String> names = isInput ? survey.files() : survey.contractors();
    Map<Integer, List<Seen>> shallow = new HashMap<>();
    Map<Integer, List<Seen>> deep = new HashMap<>();
    for (int i = 0; i < found.tried().size(); i++) {
      UnitSlips.Tried each = found.tried().get(i);
      if (each.isMarked() && q[from + i] <= CrossResult.ACCEPTED) {
        List<Seen> seen = new ArrayList<>();
        (each.isShallow() ? shallow : deep).put(each.group(), seen);
      }
    }
    if (shallow.isEmpty() && deep.isEmpty()) {
      return;
    }
    IntBuffer groups = survey.ints(isInput ? SurveyRow.FILE : SurveyRow.CONTRACTOR);
    for (int i = 0; i < groups.capacity(); i++) {
      byte way = found.way(i);
      if (way != 0) {
        List<Seen> seen = (way == UnitSlips.SHALLOW ? shallow : deep).get(groups.get(i));
        if (seen != null && seen.size() < CrossCheck.NAMED) {
          seen.add(survey.seen(i));
        }
      }
    }
    for (int i = 0; i < found.tried().size(); i++) {
      UnitSlips.Tried each = found.tried().get(i);
      List<Seen> seen = (each.isShallow() ? shallow : deep).get(each.group());
      if (seen != null) {
        into.add(
            new CrossResult.SlipHint(
                names.get(each.group()),
                isInput,
                each.hits(),
                Share.of(each.hits(), each.of()),
                each.places(),
                each.ratio(),
                each.p(),
                q[from + i],
                ranks[from + i],
                seen));
      }
    }
  }
}
