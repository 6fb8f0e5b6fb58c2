package org.wellcurb.judgement;

import org.wellcurb.record.WellRecord;

/**
 * Inputs that would help a working, but for something else on the form, which takes their place or
 * says that there is nothing of the kind: nobody is to be asked for them.
 */
final class IdleInputs {
  /** No casing top lies deeper below ground (m): 10 ft, the end of its plausible range. */
  private static final double DEEPEST_TOP = 3.048;

  private IdleInputs() {}

  /** Whether a working that may use this entry has no use for it on this record. */
  static boolean has(String key, WellRecord record) {
    return switch (key) {
      case "well.casing_length" -> isGiven("well.casing_depth", record);
      case "well.stickup" ->
          isGiven("well.casing_depth", record) && isBelowAnyTop("water.static_level", record);
      case "grout.bags", "grout.bag_mass", "grout.water_per_bag" -> isGiven("grout.volume", record);
      case "well.casing_schedule" -> isGiven("well.casing_wall", record);
      default -> NotThere.has(key, record);
    };
  }

  /** Whether a level lies lower than any casing top does, in a pit too. */
  private static boolean isBelowAnyTop(String key, WellRecord record) {
    int entry = record.catalogue().index(key);
    return record.isGiven(entry) && record.lo(entry) >= DEEPEST_TOP;
  }

  private static boolean isGiven(String key, WellRecord record) {
    return record.isGiven(record.catalogue().index(key));
  }
}
