package org.wellcurb.report.words;

import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.WellRecord;

/** In which system a record was written. */
public final class Recorded {
  private Recorded() {}

  /** What {@code record.units} says; where it is silent, the system of most of its amounts. */
  public static UnitSystem system(WellRecord record) {
    String said = record.choice(record.catalogue().index("record.units"));
    if (said != null) {
      return said.equals("metric") ? UnitSystem.METRIC : UnitSystem.US;
    }
    int metric = 0;
    int us = 0;
    for (int i = 0; i < record.catalogue().size(); i++) {
      if (record.isGiven(i)) {
        metric += record.system(i) == UnitSystem.METRIC ? 1 : 0;
        us += record.system(i) == UnitSystem.US ? 1 : 0;
      }
    }
    return metric > us ? UnitSystem.METRIC : UnitSystem.US;
  }
}
