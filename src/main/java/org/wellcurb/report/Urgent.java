package org.wellcurb.report;

import java.util.List;
import org.wellcurb.record.WellRecord;

/**
 * What must be done about the water before anything else: told by the sample itself, whatever rules
 * the pack has.
 */
final class Urgent {
  /** As nitrogen, 10 mg/L: the federal limit for public systems (40 CFR 141.62), in kg/m3. */
  private static final double NITRATE = 0.010;

  /** 0.010 mg/L: the same limit for arsenic, in kg/m3. Boiling does not take it out. */
  private static final double ARSENIC = 1e-5;

  private static final List<String> BACTERIA =
      List.of("sample.e_coli", "sample.coliform_again", "sample.coliform");
  private static final String NITRATE_ENTRY = "sample.nitrate";
  private static final String ARSENIC_ENTRY = "sample.arsenic";

  private final WellRecord record;

  Urgent(WellRecord record) {
    this.record = record;
  }

  /** Key of the words that say what to do; empty where the sample asks for nothing. */
  String key() {
    if (hasBacteria()) {
      return hasNitrate()
          ? "first.bacteria.nitrate"
          : hasArsenic() ? "first.bacteria.arsenic" : "first.bacteria";
    }
    return hasNitrate() ? "first.nitrate" : hasArsenic() ? "first.arsenic" : "";
  }

  /** Whether boiling, which helps against the one, would not help against the other. */
  boolean isOfBoth() {
    return hasBacteria() && (hasNitrate() || hasArsenic());
  }

  /** Whether a finding is about what the sample shows. */
  boolean isAbout(String entry) {
    return (hasBacteria() && BACTERIA.contains(entry))
        || (hasNitrate() && entry.equals(NITRATE_ENTRY))
        || (hasArsenic() && entry.equals(ARSENIC_ENTRY));
  }

  /** A later sample that is clear counts for the first, but not for faecal bacteria. */
  private boolean hasBacteria() {
    boolean isCleared = is("sample.coliform_again", "absent");
    return is("sample.e_coli", "present")
        || is("sample.coliform_again", "present")
        || (is("sample.coliform", "present") && !isCleared);
  }

  private boolean hasNitrate() {
    return isOver(NITRATE_ENTRY, NITRATE);
  }

  private boolean hasArsenic() {
    return isOver(ARSENIC_ENTRY, ARSENIC);
  }

  /** Over the limit, or from it upwards: of more than 10 mg/L nobody waits for another figure. */
  private boolean isOver(String key, double limit) {
    int entry = record.catalogue().index(key);
    return record.isGiven(entry) && record.lo(entry) >= limit && record.hi(entry) > limit;
  }

  private boolean is(String entry, String choice) {
    return choice.equals(record.choice(record.catalogue().index(entry)));
  }
}
