package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.report.Cap;
import org.wellcurb.report.Cut;

/** Where a report shows less than there is, to be said wherever it does. */
final class Cuts {
  private final List<Cut> cuts = new ArrayList<>();

  /** Notes a cut, if there is more than is shown. */
  void note(Cap cap, long shown, long total) {
    if (total > shown) {
      cuts.add(new Cut(cap, shown, total));
    }
  }

  /** Notes a cut, if there is more than the cap lets be shown. */
  void note(Cap cap, long total) {
    note(cap, cap.most(), total);
  }

  /** All that were noted; grows while more are. */
  List<Cut> all() {
    return cuts;
  }
}
