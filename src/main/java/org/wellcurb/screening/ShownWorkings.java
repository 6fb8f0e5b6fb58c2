package org.wellcurb.screening;

import java.util.List;
import org.wellcurb.judgement.Explainer;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.workings.WorkingCatalogue;

/** The workings that a sheet shows: all that the entries give, and those that lack one entry. */
final class ShownWorkings {
  private ShownWorkings() {}

  static List<WorkingShown> of(Explainer explainer) {
    explainer.atFirstWay();
    return WorkingCatalogue.standard().workings().stream()
        .map(explainer::show)
        .filter(shown -> shown.lacking().size() <= 1)
        .toList();
  }
}
