package org.wellcurb.screening;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.judgement.Explainer;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.workings.Working;
import org.wellcurb.workings.WorkingCatalogue;

/** The workings that a sheet shows: all that the entries give, and those that lack one entry. */
final class ShownWorkings {
  private ShownWorkings() {}

  static List<WorkingShown> of(Explainer explainer) {
    explainer.atFirstWay();
    List<WorkingShown> all = new ArrayList<>();
    for (Working working : WorkingCatalogue.standard().workings()) {
      boolean isKnown = explainer.isKnown(working);
      WorkingShown shown = explainer.show(working);
      if (isKnown || shown.lacking().size() == 1) {
        all.add(shown);
      }
    }
    return all;
  }
}
