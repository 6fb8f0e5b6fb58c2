package org.wellcurb.report;

import org.wellcurb.record.WellRecord;
import org.wellcurb.screening.UnfitWater;

/**
 * What must be done about the water before anything else: told by the sample itself, whatever rules
 * the pack has.
 */
public final class Urgent {
  private final UnfitWater water;

  public Urgent(WellRecord record) {
    water = new UnfitWater(record);
  }

  /** Key of the words that say what to do; empty where the sample asks for nothing. */
  public String key() {
    if (water.hasBacteria()) {
      return water.hasNitrate()
          ? "first.bacteria.nitrate"
          : water.hasArsenic() ? "first.bacteria.arsenic" : "first.bacteria";
    }
    if (water.hasNitrate()) {
      return water.hasArsenic() ? "first.nitrate.arsenic" : "first.nitrate";
    }
    return water.hasArsenic() ? "first.arsenic" : "";
  }

  /** Whether boiling, which helps against the one, would not help against the other. */
  boolean isOfBoth() {
    return water.hasBacteria() && (water.hasNitrate() || water.hasArsenic());
  }

  /** Whether an entry tells what may make the water unfit. */
  static boolean isOfWater(String entry) {
    return UnfitWater.isToldBy(entry) || entry.equals(UnfitWater.ARSENIC);
  }

  /** Whether a finding is about what the sample shows. */
  boolean isAbout(String entry) {
    return (water.hasBacteria() && UnfitWater.BACTERIA.contains(entry))
        || (water.hasNitrate() && entry.equals(UnfitWater.NITRATE))
        || (water.hasArsenic() && entry.equals(UnfitWater.ARSENIC));
  }
}
